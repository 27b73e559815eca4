package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import padside.store.JournalLine.CellChange;

/** The cells of one journal line on their way into the tables, those of a record many at once. */
final class CellRows {
  /** Rows of one statement. */
  private static final int MOST = 16;

  private static final String FIRST =
      """
      INSERT OR IGNORE INTO cell (record, field, run, n, t, value, typed, head)
      SELECT ?1, column1, ?2, ?3, ?4, column2, column3, NOT EXISTS (
        SELECT 1 FROM replaced WHERE record = ?1 AND field = column1 AND run = ?2 AND n = ?3)
      FROM (VALUES (?, ?, ?)""";

  private final Database database;
  private final JournalLine line;
  private final long run;
  private final List<CellChange> cells = new ArrayList<>();
  private long record;

  /**
   * For the cells of a line.
   *
   * @param run the row of its run
   */
  CellRows(Database database, JournalLine line, long run) {
    this.database = database;
    this.line = line;
    this.run = run;
  }

  /** Adds a cell of the record in that row. */
  void add(long row, CellChange change) throws SQLException {
    if (row != record || cells.size() == MOST) {
      put();
    }
    record = row;
    if (change.field().isPresent()) {
      cells.add(change);
    }
  }

  /** Puts in what was added, and what that replaces. */
  void put() throws SQLException {
    if (cells.isEmpty()) {
      return;
    }
    List<Object> values = new ArrayList<>(List.of(record, run, line.op().n(), line.t()));
    for (CellChange change : cells) {
      values.add(change.field().orElseThrow());
      values.add(change.cell().value().map(Json::write).orElse(null));
      values.add(change.cell().typed().orElse(null));
    }
    database.run(FIRST + ", (?, ?, ?)".repeat(cells.size() - 1) + ")", values.toArray());
    for (CellChange change : cells) {
      for (OpId old : change.replaces()) {
        replace(change.field().orElseThrow(), old);
      }
    }
    cells.clear();
  }

  private void replace(String field, OpId old) throws SQLException {
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
