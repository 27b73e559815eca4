package padside.store;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The tables a journal line is put into. Lines may come in any order and more than once; the tables
 * end up the same. The caller opens and ends the transaction.
 */
final class LogTables {
  /** A Lamport number above this is kept but never enters our own count. */
  static final long LARGEST_COUNTED = 1L << 50;

  /** A record of which no field has several heads. */
  private static final String SHOW =
      """
      UPDATE record SET doc = (
        SELECT coalesce(json_group_object(field, json_object('v', json(value), 'y', typed)), '{}')
        FROM cell WHERE cell.record = ?1 AND head = 1)
      WHERE id = ?1""";

  private static final String SEVERAL_HEADS =
      """
      SELECT 1 FROM cell WHERE record = ?1 AND head = 1
      GROUP BY field HAVING count(*) > 1 LIMIT 1""";

  /** Of several heads the one with the highest (t, run) shows. */
  private static final String SHOW_HIGHEST =
      """
      UPDATE record SET doc = (
        SELECT coalesce(json_group_object(field, json(cell)), '{}') FROM (
          SELECT field, json_object('v', json(value), 'y', typed) AS cell, row_number() OVER (
            PARTITION BY field ORDER BY cell.t DESC, run.name DESC) AS place
          FROM cell JOIN run ON run.id = cell.run WHERE cell.record = ?1 AND head = 1)
        WHERE place = 1)
      WHERE id = ?1""";

  /** Marked as removed, unless a head stands that no removal had seen. */
  private static final String MARK_REMOVED =
      """
      WITH removal AS (
        SELECT cell.run, cell.n FROM cell WHERE record = ?1 AND field = 'removed' AND head = 1
          AND value = 'true'),
      seen AS (
        SELECT run.name || '.' || removal.n AS op FROM removal JOIN run ON run.id = removal.run
        UNION
        SELECT b.value FROM removal JOIN op ON op.run = removal.run AND op.n = removal.n,
          json_each(op.raw, '$.ch') AS ch, json_each(ch.value, '$.b') AS b
        WHERE ch.value ->> '$.f' = 'removed'
          AND ch.value ->> '$.e' = (SELECT name FROM record WHERE id = ?1))
      UPDATE record SET removed = json_type(doc, '$.removed.v') IS 'true' AND NOT EXISTS (
        SELECT 1 FROM cell JOIN run ON run.id = cell.run
        WHERE record = ?1 AND head = 1 AND field <> 'removed'
          AND run.name || '.' || cell.n NOT IN (SELECT op FROM seen))
      WHERE id = ?1
        AND (removed = 1 OR EXISTS (SELECT 1 FROM removal))""";

  private static final String MAKE =
      """
      INSERT INTO record (name, kind, t, run, part, doc, whole) VALUES (?1, ?2, ?3, ?4, ?5, ?6, 1)
      ON CONFLICT (name) DO NOTHING""";

  private static final String UPSERT =
      """
      INSERT INTO record (name, kind, t, run, part) VALUES (?1, ?2, ?3, ?4, ?5)
      ON CONFLICT (name) DO UPDATE SET t = min(t, excluded.t), kind = min(kind, excluded.kind)
      RETURNING id, whole""";

  private static final String RAW =
      "SELECT raw FROM op JOIN run ON run.id = op.run WHERE run.name = ?1 AND n = ?2";

  private final Database database;
  private final Set<Long> changed = new LinkedHashSet<>();
  private final Map<String, Long> runs = new HashMap<>();
  private long largestT;

  /** The row of a record, and whether its cells are in what it shows only. */
  private record Row(long id, boolean whole) {}

  private Optional<ReadyLine> newest;

  LogTables(Database database) throws SQLException {
    this.database = database;
    this.largestT = database.number("SELECT max(t) FROM op WHERE t <= ?1", LARGEST_COUNTED);
    this.newest =
        database
            .first(
                row -> row.getString(1),
                """
                SELECT raw FROM op JOIN run ON run.id = op.run
                WHERE n > 0 AND t = (SELECT max(t) FROM op WHERE n > 0 AND t <= ?1)
                ORDER BY run.name DESC LIMIT 1""",
                LARGEST_COUNTED)
            .flatMap(raw -> ReadyLine.read(raw).value());
  }

  static Optional<String> meta(Database database, String key) throws SQLException {
    return database.first(row -> row.getString(1), "SELECT value FROM meta WHERE key = ?1", key);
  }

  static void setMeta(Database database, String key, String value) throws SQLException {
    database.run("INSERT OR REPLACE INTO meta (key, value) VALUES (?1, ?2)", key, value);
  }

  /** The largest Lamport number seen. */
  long largestT() {
    return largestT;
  }

  /** The newest operation by its Lamport number, the headers of runs apart. */
  Optional<JournalLine> newest() {
    return newest.flatMap(line -> LineForm.read(line.raw()).value());
  }

  /**
   * Puts a line in; its records show it after {@link #show}.
   *
   * @return false when the operation was there already
   */
  boolean take(ReadyLine ready) throws SQLException {
    long run = run(ready.op().run());
    String state = ready.later() ? "future" : "applied";
    if (database.run(
            "INSERT OR IGNORE INTO op (run, n, t, raw, state) VALUES (?1, ?2, ?3, ?4, ?5)",
            run,
            ready.op().n(),
            ready.t(),
            ready.raw(),
            state)
        == 0) {
      return false;
    }
    if (ready.t() <= LARGEST_COUNTED) {
      largestT = Math.max(largestT, ready.t());
      newest =
          newest
              .filter(known -> ready.op().n() == 0 || isNewer(known, ready))
              .or(() -> newest(ready));
    }
    for (int i = 0; i < ready.parts().size(); i++) {
      RecordPart part = ready.parts().get(i);
      if (part.doc().isEmpty()) {
        change(ready, run, part);
      } else if (!make(ready, part)) {
        change(ready, run, ready.inFull().get(i));
      }
    }
    return true;
  }

  /** Makes a record that shows at once, its cells in what it shows; false where it is there. */
  private boolean make(ReadyLine line, RecordPart part) throws SQLException {
    return database.run(
            MAKE,
            part.record(),
            part.kind(),
            line.t(),
            part.run(),
            part.part(),
            part.doc().orElseThrow())
        > 0;
  }

  private void change(ReadyLine line, long run, RecordPart part) throws SQLException {
    Row row = upsert(part.record(), part.kind(), line.t(), part.run(), part.part());
    if (row.whole()) {
      CellRows.unfold(database, row.id());
    }
    new CellRows(database, this, line, run).put(row.id(), part.cells());
    changed.add(row.id());
  }

  private static Optional<ReadyLine> newest(ReadyLine line) {
    return Optional.of(line).filter(any -> line.op().n() > 0);
  }

  private static boolean isNewer(ReadyLine one, ReadyLine other) {
    return one.t() > other.t()
        || (one.t() == other.t() && one.op().run().compareTo(other.op().run()) > 0);
  }

  /** Brings the records changed since the last call up to date. */
  void show() throws SQLException {
    for (Long record : changed) {
      boolean several = database.number(SEVERAL_HEADS, record) > 0;
      database.run(several ? SHOW_HIGHEST : SHOW, record);
      database.run(MARK_REMOVED, record);
      Conflicts.mark(database, record, several);
    }
    changed.clear();
  }

  /** The line of an operation as it stands in a journal. */
  static Optional<String> raw(Database database, OpId op) throws SQLException {
    return database.first(row -> row.getString(1), RAW, op.run(), op.n());
  }

  /** The heads of one field of a record. */
  List<OpId> heads(String record, String field) throws SQLException {
    return database.list(
        row -> new OpId(row.getString(1), row.getLong(2)),
        """
        SELECT run.name, cell.n FROM every_cell AS cell JOIN run ON run.id = cell.run
        WHERE cell.record = (SELECT id FROM record WHERE name = ?1) AND field = ?2 AND head = 1 ORDER BY cell.t, run.name""",
        record,
        field);
  }

  /** The operations whose cells stand in any field of a record. */
  List<OpId> heads(String record) throws SQLException {
    return database.list(
        row -> new OpId(row.getString(1), row.getLong(2)),
        """
        SELECT DISTINCT run.name, cell.n FROM every_cell AS cell JOIN run ON run.id = cell.run
        WHERE cell.record = (SELECT id FROM record WHERE name = ?1) AND head = 1 ORDER BY cell.t, run.name""",
        record);
  }

  private Row upsert(Object... key) throws SQLException {
    return database.first(row -> new Row(row.getLong(1), row.getBoolean(2)), UPSERT, key).get();
  }

  /** The row of a run, made when it is new. */
  long run(String name) throws SQLException {
    Optional<Long> known = known(name);
    if (known.isPresent()) {
      return known.get();
    }
    long fresh = database.number("INSERT INTO run (name) VALUES (?1) RETURNING id", name);
    runs.put(name, fresh);
    return fresh;
  }

  /** The row of a run the tables have. */
  private Optional<Long> known(String name) throws SQLException {
    Optional<Long> row = Optional.ofNullable(runs.get(name));
    if (row.isEmpty()) {
      row = database.first(found -> found.getLong(1), "SELECT id FROM run WHERE name = ?1", name);
      row.ifPresent(found -> runs.put(name, found));
    }
    return row;
  }

  /** The operations of a run the tables have, from one count to another. */
  List<OpId> had(String run, long first, long last) throws SQLException {
    Optional<Long> row = known(run);
    return row.isEmpty()
        ? List.of()
        : database.list(
            found -> new OpId(run, found.getLong(1)),
            "SELECT n FROM op WHERE run = ?1 AND n BETWEEN ?2 AND ?3",
            row.get(),
            first,
            last);
  }

  /** What was put in since a transaction or its mark was begun is in the tables no more. */
  void forget() {
    runs.clear();
    changed.clear();
  }
}
