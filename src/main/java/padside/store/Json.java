package padside.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** JSON within the bounds the log sets: depth, lengths, no key twice, nothing behind the value. */
final class Json {
  static final int MAX_DEPTH = 16;

  /** Largest text in UTF-16 units. */
  static final int MAX_TEXT = 20_000;

  private static final JSON JR =
      JSON.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(MAX_DEPTH)
                          .maxStringLength(MAX_TEXT)
                          .maxNameLength(200)
                          .maxNumberLength(100)
                          .build())
                  .build())
          .build();

  private Json() {}

  /** Text, boolean, list, map, whole numbers as Long where they fit, others as Double. */
  static Object read(String text) throws IOException {
    try (JsonParser parser = JR.createParser(text)) {
      Object value = value(parser, parser.nextToken());
      if (parser.nextToken() != null) {
        throw new IOException("something follows the JSON value");
      }
      return value;
    }
  }

  static Map<?, ?> readMap(String text) throws IOException {
    if (read(text) instanceof Map<?, ?> map) {
      return map;
    }
    throw new IOException("not a JSON object");
  }

  static String write(Object value) {
    if (value instanceof String text && isPlain(text)) {
      return "\"" + text + "\"";
    }
    boolean number = value instanceof Double real && Double.isFinite(real);
    if (number || value instanceof Long || value instanceof Boolean) {
      return value.toString();
    }
    try {
      return JR.asString(value);
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON for " + value, e);
    }
  }

  /** True when nothing in a text is written otherwise in JSON. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c == '"' || c == '\\') {
        return false;
      }
    }
    return true;
  }

  private static Object value(JsonParser parser, JsonToken token) throws IOException {
    if (token == null) {
      throw new IOException("no JSON value");
    }
    return switch (token) {
      case START_OBJECT -> map(parser);
      case START_ARRAY -> list(parser);
      case VALUE_STRING -> parser.getText();
      case VALUE_NUMBER_INT -> whole(parser);
      case VALUE_NUMBER_FLOAT -> number(parser.getDoubleValue());
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> null;
      case END_OBJECT, END_ARRAY, FIELD_NAME, NOT_AVAILABLE, VALUE_EMBEDDED_OBJECT ->
          throw new IOException("no JSON value");
    };
  }

  private static Map<String, Object> map(JsonParser parser) throws IOException {
    Map<String, Object> entries = new LinkedHashMap<>();
    for (String key = parser.nextFieldName(); key != null; key = parser.nextFieldName()) {
      int before = entries.size();
      entries.put(key, value(parser, parser.nextToken()));
      if (entries.size() == before) {
        throw new IOException("Duplicate field '" + key + "'");
      }
    }
    return entries;
  }

  private static List<Object> list(JsonParser parser) throws IOException {
    List<Object> items = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      items.add(value(parser, t));
    }
    return items;
  }

  private static Number whole(JsonParser parser) throws IOException {
    return parser.getNumberType() == JsonParser.NumberType.BIG_INTEGER
        ? parser.getBigIntegerValue()
        : (Number) parser.getLongValue();
  }

  private static Double number(double number) throws IOException {
    if (!Double.isFinite(number)) {
      throw new IOException("a number too large");
    }
    return number;
  }
}
