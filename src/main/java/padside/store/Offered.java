package padside.store;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/** Lines that stand outside a log, laid beside those it has. */
final class Offered {
  private static final String OTHERS =
      """
      SELECT raw FROM temp.offered AS other WHERE NOT EXISTS (
        SELECT 1 FROM op JOIN run ON run.id = op.run
        WHERE run.name = other.run AND op.n = other.n)""";

  /** A run of which the log has lines or names, or of a device whose runs it has. */
  private static final String RELATED =
      """
       AND (other.run IN (SELECT name FROM run) OR other.run IN (
        SELECT header.run FROM temp.offered AS header WHERE header.n = 0
          AND header.raw ->> '$.head.dev' IN (SELECT op.raw ->> '$.head.dev' FROM\
      """
          + RunHeaders.ALL
          + ")))";

  private static final int BATCH = 512;

  private final Rebuilt log;

  /**
   * So many lines.
   *
   * @param newest milliseconds since 1970 by the clock of the machine that wrote the newest
   */
  record Count(long lines, Optional<Long> newest) {}

  private Offered(Rebuilt log) {
    this.log = log;
  }

  static Offered to(Rebuilt log) throws SQLException {
    log.database()
        .script(
            "CREATE TEMP TABLE IF NOT EXISTS offered (run TEXT, n INTEGER, raw TEXT,"
                + " PRIMARY KEY (run, n)) WITHOUT ROWID");
    log.database().run("DELETE FROM temp.offered");
    return new Offered(log);
  }

  /** Lays sound lines beside and answers how many they are. */
  int take(List<String> raws) throws SQLException {
    int sound = 0;
    Database database = log.database();
    database.begin();
    for (String raw : raws) {
      Optional<JournalLine> line = LineForm.read(raw).value();
      if (line.isPresent()) {
        database.run(
            "INSERT OR IGNORE INTO temp.offered (run, n, raw) VALUES (?1, ?2, ?3)",
            line.get().op().run(),
            line.get().op().n(),
            raw);
        sound++;
      }
    }
    database.commit();
    return sound;
  }

  /** Takes into the log what it lacks of its own runs and devices. */
  void takeRelated() throws SQLException {
    take(OTHERS + (log.lines() == 0 ? "" : RELATED));
  }

  /** Takes into the log all it lacks. */
  void takeAll() throws SQLException {
    take(OTHERS);
  }

  private void take(String sql) throws SQLException {
    List<String> lacked = log.database().list(row -> row.getString(1), sql);
    for (int from = 0; from < lacked.size(); from += BATCH) {
      log.take(lacked.subList(from, Math.min(lacked.size(), from + BATCH)));
    }
  }

  /** What is offered. */
  Count all() throws SQLException {
    return count("SELECT raw FROM temp.offered");
  }

  /** What of it the log lacks. */
  Count lacked() throws SQLException {
    return count(OTHERS);
  }

  /** What the log has and is not offered. */
  Count hadAlone() throws SQLException {
    return count(
        "SELECT raw FROM op JOIN run ON run.id = op.run WHERE NOT EXISTS ("
            + "SELECT 1 FROM temp.offered AS other"
            + " WHERE other.run = run.name AND other.n = op.n)");
  }

  private Count count(String lines) throws SQLException {
    return log.database()
        .first(
            row -> new Count(row.getLong(1), Optional.of(row.getLong(2)).filter(wall -> wall > 0)),
            "SELECT count(*), max(raw ->> '$.wall') FROM (" + lines + ")")
        .orElseThrow();
  }
}
