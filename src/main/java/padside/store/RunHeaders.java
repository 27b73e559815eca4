package padside.store;

import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padside.clock.Moment;
import padside.units.TimeSpan;

/** What the headers of the runs tell of the machine each ran on, read once. */
final class RunHeaders {
  /**
   * The headers of all runs, with the table {@code run}. Crossed, so that each is searched for: in
   * a large log SQLite would else read every line for the few that are headers.
   */
  static final String ALL = " run CROSS JOIN op ON op.run = run.id AND n = 0 ";

  private static final String RUNS =
      "SELECT run.name FROM" + ALL + "WHERE raw ->> '$.head.boot' = ?1 ORDER BY t, run.name";

  private final Database database;
  private final Map<String, Map<String, Object>> heads = new HashMap<>();

  RunHeaders(Database database) {
    this.database = database;
  }

  /** The runs of one start of a machine. */
  List<String> runs(String boot) throws SQLException {
    return database.list(row -> row.getString(1), RUNS, boot);
  }

  /** What the machine of a run is called; empty when nobody knows. */
  String label(String run) throws SQLException {
    return text(run, "label");
  }

  /** The id of the machine of a run; empty when nobody knows. */
  String device(String run) throws SQLException {
    return text(run, "dev");
  }

  ZoneId zone(String run) throws SQLException {
    try {
      return ZoneId.of(text(run, "zone"));
    } catch (DateTimeException e) {
      return ZoneOffset.UTC; // of a machine that knows other zones, or of a header that is lost
    }
  }

  /** When a line was written, by the clocks of its machine. */
  Moment moment(JournalLine line) throws SQLException {
    return new Moment(
        Instant.ofEpochMilli(line.wall()),
        new TimeSpan(line.uptime()),
        text(line.op().run(), "boot"),
        Moment.Trust.NONE);
  }

  private String text(String run, String key) throws SQLException {
    Map<String, Object> head = heads.get(run);
    if (head == null) {
      head =
          LogTables.raw(database, new OpId(run, 0))
              .flatMap(raw -> LineForm.read(raw).value())
              .map(JournalLine::head)
              .orElse(Map.of());
      heads.put(run, head);
    }
    return head.get(key) instanceof String text ? text : "";
  }
}
