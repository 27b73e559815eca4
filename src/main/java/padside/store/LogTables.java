package padside.store;

import java.sql.SQLException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.flight.Kind;
import padside.store.JournalLine.CellChange;

/**
 * The tables a journal line is put into. Lines may come in any order and more than once; the tables
 * end up the same. The caller opens and ends the transaction.
 */
final class LogTables {
  /** A Lamport number above this is kept but never enters our own count. */
  static final long LARGEST_COUNTED = 1L << 50;

  private static final Pattern MADE_BY_OPERATION =
      Pattern.compile("([0-9a-f]{20})\\.[0-9]{1,15}(?:\\.([0-9]{1,9}))?");

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

  private static final String RAW =
      "SELECT raw FROM op JOIN run ON run.id = op.run WHERE run.name = ?1 AND n = ?2";

  private final Database database;
  private final Set<Long> changed = new LinkedHashSet<>();
  private long largestT;
  private Optional<JournalLine> newest;

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
            .flatMap(raw -> LineForm.read(raw).value());
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
    return newest;
  }

  /**
   * Puts a line in; its records show it after {@link #show}.
   *
   * @return false when the operation was there already
   */
  boolean take(JournalLine line, String raw) throws SQLException {
    long run = run(line.op().run());
    String state = line.fromNewerVersion() ? "future" : "applied";
    if (database.run(
            "INSERT OR IGNORE INTO op (run, n, t, raw, state) VALUES (?1, ?2, ?3, ?4, ?5)",
            run,
            line.op().n(),
            line.t(),
            raw,
            state)
        == 0) {
      return false;
    }
    if (line.t() <= LARGEST_COUNTED) {
      largestT = Math.max(largestT, line.t());
      newest =
          newest.filter(known -> line.op().n() == 0 || isNewer(known, line)).or(() -> newest(line));
    }
    List<CellChange> changes = line.changes();
    for (int from = 0, to = 0; from < changes.size(); from = to) {
      while (to < changes.size() && isOfSame(changes.get(from), changes.get(to))) {
        to++;
      }
      takeIn(line, run, changes.subList(from, to));
    }
    return true;
  }

  private static boolean isOfSame(CellChange one, CellChange other) {
    return one.record().equals(other.record()) && one.kind().equals(other.kind());
  }

  /** Changes of one record: one made here whole shows at once. */
  private void takeIn(JournalLine line, long run, List<CellChange> changes) throws SQLException {
    CellRows rows = new CellRows(database, line, run, changes);
    CellChange first = changes.get(0);
    Matcher made = MADE_BY_OPERATION.matcher(first.record());
    boolean named = made.matches();
    Object[] key = {
      first.record(),
      first.kind(),
      line.t(),
      named ? made.group(1) : "",
      named && made.group(2) != null ? Integer.parseInt(made.group(2)) : 1
    };
    Optional<Long> whole =
        isMadeBy(line, first) && !saysRemoved(changes) && rows.isPlain()
            ? rows.make(key)
            : Optional.empty();
    long record = whole.isPresent() ? whole.get() : upsert(key);
    rows.put(record, whole.isPresent());
    if (whole.isEmpty()) {
      changed.add(record);
    }
  }

  private static boolean isMadeBy(JournalLine line, CellChange change) {
    String op = line.op().toString();
    return change.record().startsWith(op)
        && (change.record().length() == op.length() || change.record().charAt(op.length()) == '.');
  }

  private static Optional<JournalLine> newest(JournalLine line) {
    return Optional.of(line).filter(any -> line.op().n() > 0);
  }

  private static boolean isNewer(JournalLine one, JournalLine other) {
    return one.t() > other.t()
        || (one.t() == other.t() && one.op().run().compareTo(other.op().run()) > 0);
  }

  private static boolean saysRemoved(List<CellChange> changes) {
    return changes.stream()
        .anyMatch(change -> change.field().filter(Kind.REMOVED.name()::equals).isPresent());
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
        SELECT run.name, cell.n FROM cell JOIN record ON record.id = cell.record
        JOIN run ON run.id = cell.run
        WHERE record.name = ?1 AND field = ?2 AND head = 1 ORDER BY cell.t, run.name""",
        record,
        field);
  }

  /** The operations whose cells stand in any field of a record. */
  List<OpId> heads(String record) throws SQLException {
    return database.list(
        row -> new OpId(row.getString(1), row.getLong(2)),
        """
        SELECT DISTINCT run.name, cell.n FROM cell JOIN record ON record.id = cell.record
        JOIN run ON run.id = cell.run
        WHERE record.name = ?1 AND head = 1 ORDER BY cell.t, run.name""",
        record);
  }

  private long upsert(Object... key) throws SQLException {
    return database.number(
        """
        INSERT INTO record (name, kind, t, run, part) VALUES (?1, ?2, ?3, ?4, ?5)
        ON CONFLICT (name) DO UPDATE SET t = min(t, excluded.t), kind = min(kind, excluded.kind)
        RETURNING id""",
        key);
  }

  private long run(String name) throws SQLException {
    return run(database, name);
  }

  /** The row of a run, made when it is new. */
  static long run(Database database, String name) throws SQLException {
    Optional<Long> known =
        database.first(row -> row.getLong(1), "SELECT id FROM run WHERE name = ?1", name);
    return known.isPresent()
        ? known.get()
        : database.number("INSERT INTO run (name) VALUES (?1) RETURNING id", name);
  }
}
