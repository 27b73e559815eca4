package padside.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What differs between two databases that hold the same lines.
 *
 * @param lines how many lines only one of them has, or has otherwise
 * @param records the records that show otherwise, by id
 * @param tables the tables, indexes and views that differ, by name
 */
record Differences(long lines, List<String> records, List<String> tables) {
  private static final String CELLS =
      """
      SELECT record.name AS name, field, run.name AS of_run, n, cell.t, value, typed, head FROM %1$s.cell
      JOIN %1$s.record ON record.id = cell.record JOIN %1$s.run ON run.id = cell.run""";

  private static final String REPLACED =
      """
      SELECT record.name AS name, field, run.name AS of_run, n FROM %1$s.replaced
      JOIN %1$s.record ON record.id = replaced.record JOIN %1$s.run ON run.id = replaced.run""";

  private static final String LINES =
      """
      SELECT run.name AS of_run, n, t, raw, state FROM %1$s.op
      JOIN %1$s.run ON run.id = op.run""";

  private static final String TABLES = "SELECT name, type, sql FROM %1$s.sqlite_schema";

  Differences {
    records = List.copyOf(records);
    tables = List.copyOf(tables);
  }

  boolean none() {
    return lines == 0 && records.isEmpty() && tables.isEmpty();
  }

  /** Compares; nobody else may use the other file. */
  static Differences between(Database database, Path other) throws SQLException {
    database.run("ATTACH ?1 AS other", other.toString());
    try {
      return new Differences(
          lines(database),
          records(database),
          names(database, "SELECT DISTINCT name FROM (" + only(TABLES) + ")"));
    } finally {
      database.run("DETACH other");
    }
  }

  /** Compares lines and records only. */
  static Differences ofContent(Database database, Database other) throws SQLException {
    database.attach("other", other);
    try {
      return new Differences(lines(database), records(database), List.of());
    } finally {
      database.run("DETACH other");
    }
  }

  private static long lines(Database database) throws SQLException {
    return database.number("SELECT count(*) FROM (" + only(LINES) + ")");
  }

  private static List<String> records(Database database) throws SQLException {
    String shown =
        "SELECT %s FROM %%1$s.record"
            .formatted(
                database
                    .list(
                        row -> row.getString(1),
                        "SELECT name FROM pragma_table_xinfo('record') WHERE name <> 'id'")
                    .stream()
                    .collect(Collectors.joining(", ")));
    return names(
        database,
        "SELECT name FROM (%s) UNION SELECT name FROM (%s) UNION SELECT name FROM (%s)"
            .formatted(only(shown), only(CELLS), only(REPLACED)));
  }

  /** The rows only one of the two has. */
  private static String only(String rows) {
    String ours = rows.formatted("main");
    String theirs = rows.formatted("other");
    return "SELECT * FROM (%1$s EXCEPT %2$s) UNION ALL SELECT * FROM (%2$s EXCEPT %1$s)"
        .formatted(ours, theirs);
  }

  private static List<String> names(Database database, String sql) throws SQLException {
    return database.list(row -> String.valueOf(row.getString(1)), sql);
  }

  /** For the middle of a sentence. */
  String words() {
    return Stream.of(
            lines > 0 ? lines + " lines are not those of the journals" : "",
            records.isEmpty() ? "" : records.size() + " records do not show what their lines say",
            tables.isEmpty()
                ? ""
                : "tables are not as they were made: " + String.join(", ", tables))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining("; "));
  }
}
