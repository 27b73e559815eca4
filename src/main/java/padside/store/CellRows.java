package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import padside.store.JournalLine.CellChange;

/** The cells one journal line has of one record on their way into the tables, many at once. */
final class CellRows {
  /** Rows of one statement. */
  private static final int MOST = 16;

  private static final String CELL = "(?, ?, ?)";

  private static final String INSERT =
      """
      INSERT OR IGNORE INTO cell (record, field, run, n, t, value, typed, head)
      SELECT ?1, column1, ?2, ?3, ?4, column2, column3,\
      """;

  /** Of a record the tables did not have nothing can have been replaced. */
  private static final String OF_A_NEW_RECORD = " 1 FROM (VALUES ";

  private static final String OF_A_KNOWN_RECORD =
      """
       NOT EXISTS (
        SELECT 1 FROM replaced WHERE record = ?1 AND field = column1 AND run = ?2 AND n = ?3)
      FROM (VALUES\s""";

  /** As {@link LogTables} shows a record whose cells are all heads. */
  private static final String MAKE =
      """
      INSERT INTO record (name, kind, t, run, part, doc)
      SELECT ?1, ?2, ?3, ?4, ?5, json_group_object(column1,
        json_object('v', json(column2), 'y', column3))
      FROM (SELECT * FROM (VALUES %s) ORDER BY column1) WHERE true
      ON CONFLICT (name) DO NOTHING RETURNING id""";

  private final Database database;
  private final JournalLine line;
  private final long run;
  private final List<CellChange> cells;
  private final List<Object> values = new ArrayList<>();

  /**
   * Of some changes of one record those that write a cell.
   *
   * @param run the row of the line's run
   */
  CellRows(Database database, JournalLine line, long run, List<CellChange> changes) {
    this.database = database;
    this.line = line;
    this.run = run;
    this.cells = changes.stream().filter(change -> change.field().isPresent()).toList();
    for (CellChange cell : cells) {
      values.add(cell.field().orElseThrow());
      values.add(cell.cell().value().map(Json::write).orElse(null));
      values.add(cell.cell().typed().orElse(null));
    }
  }

  /**
   * Makes the record as these cells show it, where it is not there.
   *
   * @param name, kind, t, run and part of it
   */
  Optional<Long> make(Object... key) throws SQLException {
    List<Object> bound = new ArrayList<>(Arrays.asList(key));
    bound.addAll(values);
    return database.first(
        row -> row.getLong(1), MAKE.formatted(rows(cells.size())), bound.toArray());
  }

  /** Puts the cells in, and what that replaces. */
  void put(long record, boolean made) throws SQLException {
    for (int from = 0; from < cells.size(); from += MOST) {
      int rows = Math.min(MOST, cells.size() - from);
      List<Object> bound = new ArrayList<>(List.of(record, run, line.op().n(), line.t()));
      bound.addAll(values.subList(3 * from, 3 * (from + rows)));
      String source = made ? OF_A_NEW_RECORD : OF_A_KNOWN_RECORD;
      database.run(INSERT + source + rows(rows) + ")", bound.toArray());
    }
    for (CellChange change : cells) {
      for (OpId old : change.replaces()) {
        replace(record, change.field().orElseThrow(), old);
      }
    }
  }

  private static String rows(int count) {
    return CELL + (", " + CELL).repeat(count - 1);
  }

  private void replace(long record, String field, OpId old) throws SQLException {
    long oldRun = old.run().equals(line.op().run()) ? run : LogTables.run(database, old.run());
    database.run(
        "INSERT OR IGNORE INTO replaced (record, field, run, n) VALUES (?1, ?2, ?3, ?4)",
        record,
        field,
        oldRun,
        old.n());
    database.run(
        "UPDATE cell SET head = 0 WHERE record = ?1 AND field = ?2 AND run = ?3 AND n = ?4",
        record,
        field,
        oldRun,
        old.n());
  }
}
