package padside.store;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;
import padside.units.Reading;

/** How a journal line is written and read; the package's documentation lays the form down. */
final class LineForm {
  /** Largest line in bytes, its end left out. */
  static final int MAX_BYTES = 256 * 1024;

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
    return Summed.write(json);
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
    return line(Summed.read(bytes, MAX_BYTES));
  }

  static Reading<JournalLine> read(String raw) {
    return line(Summed.read(raw));
  }

  private static Reading<JournalLine> line(Reading<Map<?, ?>> json) {
    if (json.value().isEmpty()) {
      return Reading.refused(json.objection().orElseThrow());
    }
    try {
      return Reading.of(line(json.value().get()));
    } catch (IllegalArgumentException | ClassCastException e) {
      return Reading.refused("not a journal line: " + Summed.firstLine(e));
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
}
