package padside.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * Holds the tables of a log against the lines they were built from: the lines are put, in memory,
 * into empty tables once more. Takes about a millisecond a flight.
 */
final class Rebuild {
  /** What is to be the same, free of row numbers. */
  private static final List<String> EVERYTHING =
      List.of(
          "SELECT name, kind, t, run, part, removed, doc FROM record ORDER BY name",
          """
          SELECT record.name, field, run.name, n, cell.t, value, typed, head FROM cell
          JOIN record ON record.id = cell.record JOIN run ON run.id = cell.run
          ORDER BY record.name, field, run.name, n""",
          """
          SELECT record.name, field, run.name, n FROM replaced
          JOIN record ON record.id = replaced.record JOIN run ON run.id = replaced.run
          ORDER BY record.name, field, run.name, n""",
          """
          SELECT run.name, n, t, state, raw FROM op JOIN run ON run.id = op.run
          ORDER BY run.name, n""");

  private static final String RAW = "SELECT coalesce(raw, '') FROM op";

  private Rebuild() {}

  /** The first thing in which the tables are not what their lines say. */
  static Optional<String> difference(Database database) throws SQLException {
    try (Database again = Database.inMemory()) {
      Schema.make(again);
      LogTables tables = new LogTables(again);
      again.begin();
      for (String raw : database.list(row -> row.getString(1), RAW)) {
        Optional<JournalLine> line = LineForm.read(raw).value();
        if (line.isEmpty()) {
          return Optional.of("a line in it cannot be read");
        }
        tables.take(line.get(), raw);
      }
      tables.show();
      again.commit();
      return compared(database, again);
    }
  }

  private static Optional<String> compared(Database database, Database again) throws SQLException {
    for (String query : EVERYTHING) {
      if (!database.list(Rebuild::whole, query).equals(again.list(Rebuild::whole, query))) {
        return Optional.of("what it shows is not what its lines say");
      }
    }
    return Optional.empty();
  }

  /** The row as one text, values apart. */
  private static String whole(ResultSet row) throws SQLException {
    StringJoiner values = new StringJoiner("\n");
    for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
      values.add(row.getString(i));
    }
    return values.toString();
  }
}
