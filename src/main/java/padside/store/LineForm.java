package padside.store;

import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32C;
import padside.fact.Facts;
import padside.units.Reading;

/** How a journal line is written and read; the package's documentation lays the form down. */
final class LineForm {
  /** Largest line in bytes, its end left out. */
  static final int MAX_BYTES = 256 * 1024;

  private static final String BEFORE_SUM = ",\"crc\":\"";
  private static final String AFTER_SUM = "\"}";
  private static final int TAIL = BEFORE_SUM.length() + 8 + AFTER_SUM.length();
  private static final int MAX_NAME = 120;

  private LineForm() {}

  /** The line without its end. */
  static String write(JournalLine line) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("v", line.version());
    json.put("run", line.op().run());
    json.put("n", line.op().n());
    json.put("t", line.t());
    json.put("up", line.uptime());
    json.put("wall", line.wall());
    if (line.head().isEmpty()) {
      json.put("a", line.label());
      json.put("ch", line.changes().stream().map(LineForm::change).toList());
    } else {
      json.put("head", line.head());
    }
    String whole = Json.write(json);
    // What UTF-8 cannot hold must not differ between the sum and the file.
    String body =
        new String(
            whole.substring(0, whole.length() - 1).getBytes(StandardCharsets.UTF_8),
            StandardCharsets.UTF_8);
    return body + BEFORE_SUM + sum(body) + AFTER_SUM;
  }

  private static Map<String, Object> change(JournalLine.CellChange change) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("k", change.kind());
    json.put("e", change.record());
    change.field().ifPresent(field -> json.put("f", field));
    change.cell().value().ifPresent(value -> json.put("v", value));
    change.cell().typed().ifPresent(typed -> json.put("y", typed));
    if (!change.replaces().isEmpty()) {
      json.put("b", change.replaces().stream().map(OpId::toString).toList());
    }
    return json;
  }

  /** Reads the bytes of a line; the objection says what is wrong with it. */
  static Reading<JournalLine> read(ByteBuffer bytes) {
    if (bytes.remaining() > MAX_BYTES) {
      return Reading.refused("longer than " + MAX_BYTES + " bytes");
    }
    try {
      return read(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString());
    } catch (CharacterCodingException e) {
      return Reading.refused("not UTF-8 text");
    }
  }

  static Reading<JournalLine> read(String raw) {
    int end = raw.length() - TAIL;
    if (end <= 0 || !raw.startsWith(BEFORE_SUM, end) || !raw.endsWith(AFTER_SUM)) {
      return Reading.refused("no checksum at its end");
    }
    String body = raw.substring(0, end);
    if (!raw.startsWith(sum(body), end + BEFORE_SUM.length())) {
      return Reading.refused("its checksum does not fit");
    }
    try {
      return Reading.of(line(Json.readMap(body + "}")));
    } catch (StreamConstraintsException e) {
      return Reading.refused(
          "a text longer than " + Json.MAX_TEXT + " characters or too many things inside another");
    } catch (IOException | IllegalArgumentException | ClassCastException e) {
      return Reading.refused("not a journal line: " + firstLine(e.getMessage()));
    }
  }

  private static JournalLine line(Map<?, ?> json) {
    int version = Math.toIntExact(Math.min(whole(json, "v"), Integer.MAX_VALUE));
    String run = text(json, "run");
    OpId op = new OpId(run, whole(json, "n"));
    if (version < 1 || OpId.read(op.toString()).isEmpty()) {
      throw new IllegalArgumentException("version " + version + ", operation " + op);
    }
    List<JournalLine.CellChange> changes = new ArrayList<>();
    if (version == JournalLine.VERSION && json.get("ch") instanceof List<?> list) {
      list.forEach(item -> changes.add(change((Map<?, ?>) item)));
    }
    return new JournalLine(
        version,
        op,
        whole(json, "t"),
        json.get("up") instanceof Number up ? up.doubleValue() : 0,
        json.get("wall") instanceof Number wall ? wall.longValue() : 0,
        json.get("a") instanceof String label ? label : "",
        changes,
        head(json));
  }

  private static Map<String, Object> head(Map<?, ?> json) {
    Map<String, Object> head = new LinkedHashMap<>();
    if (json.get("head") instanceof Map<?, ?> entries) {
      entries.forEach((key, value) -> head.put((String) key, value));
    }
    return head;
  }

  private static JournalLine.CellChange change(Map<?, ?> json) {
    List<OpId> replaces = new ArrayList<>();
    if (json.get("b") instanceof List<?> list) {
      list.forEach(item -> replaces.add(OpId.read((String) item).orElseThrow(LineForm::noOp)));
    }
    return new JournalLine.CellChange(
        name(text(json, "k")),
        name(text(json, "e")),
        Optional.ofNullable((String) json.get("f")).map(LineForm::name),
        new Facts.Cell(
            Optional.ofNullable(json.get("v")), Optional.ofNullable((String) json.get("y"))),
        replaces);
  }

  private static IllegalArgumentException noOp() {
    return new IllegalArgumentException("\"b\" names no operation");
  }

  private static String name(String text) {
    if (text.isBlank() || text.length() > MAX_NAME) {
      throw new IllegalArgumentException("a name of " + text.length() + " characters");
    }
    return text;
  }

  private static String text(Map<?, ?> json, String key) {
    if (json.get(key) instanceof String text) {
      return text;
    }
    throw new IllegalArgumentException("\"" + key + "\" is no text");
  }

  private static long whole(Map<?, ?> json, String key) {
    if (json.get(key) instanceof Long whole && whole >= 0) {
      return whole;
    }
    throw new IllegalArgumentException("\"" + key + "\" is no count");
  }

  /** CRC-32C of the bytes in UTF-8, in hex. */
  static String sum(String body) {
    CRC32C crc = new CRC32C();
    crc.update(body.getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().toHexDigits((int) crc.getValue());
  }

  private static String firstLine(String message) {
    return message == null ? "unreadable" : message.lines().findFirst().orElse("unreadable");
  }
}
