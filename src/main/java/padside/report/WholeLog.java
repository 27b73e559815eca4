package padside.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;

/** Every record that is not removed, by kind, as {@code padside add} reads it back. */
public final class WholeLog {
  /** Says that this is a whole log, and the version of its form. */
  public static final String VERSION = "padside_log";

  /** What the flier typed, by column, beside the values. */
  public static final String TYPED = "typed";

  private WholeLog() {}

  /** One list a kind, in the order the records were made. */
  public static Map<String, Object> of(FlightLog log) throws Fault {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(VERSION, 1);
    for (Kind kind : Kind.values()) {
      List<Object> records = new ArrayList<>();
      for (Stored record : log.list(kind)) {
        records.add(record(record));
      }
      json.put(kind.code(), records);
    }
    return json;
  }

  private static Map<String, Object> record(Stored record) {
    Map<String, Object> json = new LinkedHashMap<>();
    Map<String, Object> typed = new LinkedHashMap<>();
    json.put(Sheet.ID, record.id().text());
    for (Map.Entry<String, Facts.Cell> cell : record.facts().filled().cells().entrySet()) {
      cell.getValue().value().ifPresent(value -> json.put(cell.getKey(), value));
      cell.getValue().typed().ifPresent(text -> typed.put(cell.getKey(), text));
    }
    if (!typed.isEmpty()) {
      json.put(TYPED, typed);
    }
    return json;
  }
}
