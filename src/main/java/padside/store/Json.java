package padside.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
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
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
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
      parser.nextToken();
      Object value = JR.anyFrom(parser);
      if (parser.nextToken() != null) {
        throw new IOException("something follows the JSON value");
      }
      return plain(value);
    }
  }

  static Map<?, ?> readMap(String text) throws IOException {
    if (read(text) instanceof Map<?, ?> map) {
      return map;
    }
    throw new IOException("not a JSON object");
  }

  static String write(Object value) {
    try {
      return JR.asString(value);
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON for " + value, e);
    }
  }

  private static Object plain(Object value) throws IOException {
    if (value instanceof Integer whole) {
      return whole.longValue();
    }
    if (value instanceof Double number && !Double.isFinite(number)) {
      throw new IOException("a number too large");
    }
    if (value instanceof List<?> list) {
      List<Object> items = new ArrayList<>();
      for (Object item : list) {
        items.add(plain(item));
      }
      return items;
    }
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> entries = new LinkedHashMap<>();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        entries.put((String) entry.getKey(), plain(entry.getValue()));
      }
      return entries;
    }
    return value;
  }
}
