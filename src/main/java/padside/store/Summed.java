package padside.store;

import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Map;
import java.util.zip.CRC32C;
import padside.units.Reading;

/**
 * A JSON object on one line whose last field is the CRC-32C, in hex, of all bytes before it. It
 * tells what came to harm, not who wrote it.
 */
public final class Summed {
  private static final String BEFORE_SUM = ",\"crc\":\"";
  private static final String AFTER_SUM = "\"}";
  private static final char REPLACED = '\uFFFD';
  private static final int TAIL = BEFORE_SUM.length() + 8 + AFTER_SUM.length();

  private Summed() {}

  /** The line without its end. */
  public static String write(Map<String, Object> json) {
    String whole = Json.write(json);
    // What UTF-8 cannot hold must not differ between the sum and the file.
    String body =
        new String(
            whole.substring(0, whole.length() - 1).getBytes(StandardCharsets.UTF_8),
            StandardCharsets.UTF_8);
    return body + BEFORE_SUM + sum(body) + AFTER_SUM;
  }

  /**
   * Reads the bytes of a line; the objection says what is wrong with it.
   *
   * @param most bytes it may have
   */
  public static Reading<Map<?, ?>> read(ByteBuffer bytes, int most) {
    if (bytes.remaining() > most) {
      return Reading.refused("longer than " + most + " bytes");
    }
    byte[] whole = new byte[bytes.remaining()];
    bytes.get(whole);
    String raw = new String(whole, StandardCharsets.UTF_8);
    return raw.indexOf(REPLACED) >= 0 && !isText(whole)
        ? Reading.refused("not UTF-8 text")
        : read(raw, whole);
  }

  static Reading<Map<?, ?>> read(String raw) {
    return read(raw, raw.getBytes(StandardCharsets.UTF_8));
  }

  /** What stands for bytes that are no text may also be meant. */
  private static boolean isText(byte[] bytes) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  private static Reading<Map<?, ?>> read(String raw, byte[] bytes) {
    int end = raw.length() - TAIL;
    if (end <= 0 || !raw.startsWith(BEFORE_SUM, end) || !raw.endsWith(AFTER_SUM)) {
      return Reading.refused("no checksum at its end");
    }
    if (!raw.startsWith(sum(bytes, bytes.length - TAIL), end + BEFORE_SUM.length())) {
      return Reading.refused("its checksum does not fit");
    }
    try {
      return Reading.of(Json.readMap(raw.substring(0, end) + "}"));
    } catch (StreamConstraintsException e) {
      return Reading.refused(
          "a text longer than " + Json.MAX_TEXT + " characters or too many things inside another");
    } catch (IOException e) {
      return Reading.refused("not JSON: " + firstLine(e));
    }
  }

  /** CRC-32C of the bytes in UTF-8, in hex. */
  static String sum(String body) {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    return sum(bytes, bytes.length);
  }

  private static String sum(byte[] bytes, int length) {
    CRC32C crc = new CRC32C();
    crc.update(bytes, 0, length);
    return HexFormat.of().toHexDigits((int) crc.getValue());
  }

  static String firstLine(Throwable e) {
    return e.getMessage() == null
        ? "unreadable"
        : e.getMessage().lines().findFirst().orElse("unreadable");
  }
}
