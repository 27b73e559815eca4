package padside.report;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import padside.units.PrintableText;

/**
 * JSON in which a character that could drive a terminal is written as its escape, so that nothing
 * is lost and nothing raw passes (RFC 8259, section 7).
 */
public final class JsonText {
  private JsonText() {}

  /** For people too: a member a line. */
  public static String pretty(Object value) {
    return text(JSON.std.with(JSON.Feature.PRETTY_PRINT_OUTPUT), value);
  }

  /** In one line. */
  static String line(Object value) {
    return text(JSON.std, value);
  }

  private static String text(JSON json, Object value) {
    try {
      return escaped(json.with(JSON.Feature.WRITE_NULL_PROPERTIES).asString(value));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Outside its texts JSON has no such character but the line feed. */
  private static String escaped(String json) {
    StringBuilder safe = new StringBuilder(json.length());
    json.codePoints()
        .forEach(
            point -> {
              if (point == '\n' || PrintableText.isPrintable(point)) {
                safe.appendCodePoint(point);
              } else {
                for (char unit : Character.toChars(point)) {
                  safe.append("\\u%04x".formatted((int) unit));
                }
              }
            });
    return safe.toString();
  }
}
