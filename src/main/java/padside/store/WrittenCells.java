package padside.store;

import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;

/** Every cell ever written into records, read once a record. */
final class WrittenCells {
  private static final String CELLS =
      """
      SELECT field, run.name, n, value, typed, head FROM every_cell AS cell
      JOIN run ON run.id = cell.run
      WHERE cell.record = (SELECT id FROM record WHERE name = ?1) ORDER BY cell.t, run.name""";

  private final Database database;
  private final Map<String, List<Written>> cells = new HashMap<>();

  /** A cell as an operation wrote it; head while nobody has replaced it. */
  record Written(String field, OpId op, Facts.Cell cell, boolean head) {}

  WrittenCells(Database database) {
    this.database = database;
  }

  /** Those of one field by (t, run). */
  List<Written> of(String record, String field) throws SQLException {
    List<Written> all = cells.get(record);
    if (all == null) {
      all = database.list(WrittenCells::read, CELLS, record);
      cells.put(record, all);
    }
    return all.stream().filter(each -> each.field.equals(field)).toList();
  }

  /** Of several the one with the highest (t, run). */
  static Optional<Written> last(List<Written> cells) {
    return cells.isEmpty() ? Optional.empty() : Optional.of(cells.get(cells.size() - 1));
  }

  private static Written read(ResultSet row) throws SQLException {
    return new Written(
        row.getString(1),
        new OpId(row.getString(2), row.getLong(3)),
        cell(row.getString(4), row.getString(5)),
        row.getBoolean(6));
  }

  /** A cell as the tables hold it, either part absent as null. */
  static Facts.Cell cell(String value, String typed) throws SQLException {
    try {
      return new Facts.Cell(
          value == null ? Optional.empty() : Optional.of(Json.read(value)),
          Optional.ofNullable(typed));
    } catch (IOException e) {
      throw new SQLException("a cell that is no JSON", e);
    }
  }
}
