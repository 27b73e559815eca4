package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import padside.store.JournalLine.CellChange;

/** The cells one journal line has of one record on their way into the tables, many at once. */
final class CellRows {
  /** Rows of one statement. */
  private static final int MOST = 16;

  private static final String CELL = "(?, ?, ?)";

  private static final String INSERT =
      """
      INSERT OR IGNORE INTO cell (record, field, run, n, t, value, typed, head)
      SELECT ?1, column1, ?2, ?3, ?4, column2, column3, NOT EXISTS (
        SELECT 1 FROM replaced WHERE record = ?1 AND field = column1 AND run = ?2 AND n = ?3)
      FROM (VALUES\s""";

  /** Cells that only show become rows of their own before something else is said of the record. */
  private static final String UNFOLD =
      """
      INSERT INTO cell (record, field, run, n, t, value, typed, head)
      SELECT record, field, run, n, (SELECT t FROM op WHERE op.run = each.run AND op.n = each.n),
        value, typed, head
      FROM every_cell AS each WHERE record = ?1""";

  private final Database database;
  private final LogTables tables;
  private final ReadyLine line;
  private final long run;

  /**
   * Of a line.
   *
   * @param run the row of its run
   */
  CellRows(Database database, LogTables tables, ReadyLine line, long run) {
    this.database = database;
    this.tables = tables;
    this.line = line;
    this.run = run;
  }

  /** Gives a record that was made whole the rows of its cells. */
  static void unfold(Database database, long record) throws SQLException {
    database.run(UNFOLD, record);
    database.run("UPDATE record SET whole = 0 WHERE id = ?1", record);
  }

  /** Puts the cells in, and what that replaces. */
  void put(long record, List<CellChange> cells) throws SQLException {
    for (int from = 0; from < cells.size(); from += MOST) {
      List<CellChange> some = cells.subList(from, Math.min(cells.size(), from + MOST));
      List<Object> bound = new ArrayList<>(List.of(record, run, line.op().n(), line.t()));
      for (CellChange cell : some) {
        bound.add(cell.field().orElseThrow());
        bound.add(cell.cell().value().map(Json::write).orElse(null));
        bound.add(cell.cell().typed().orElse(null));
      }
      database.run(INSERT + rows(some.size()) + ")", bound.toArray());
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
    long oldRun = old.run().equals(line.op().run()) ? run : tables.run(old.run());
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
