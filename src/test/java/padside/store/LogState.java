package padside.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/** What a closed log holds, read by plain SQL and free of row numbers, to compare two logs. */
public final class LogState {
  private static final List<String> EVERYTHING =
      List.of(
          "SELECT name, kind, t, run, part, removed, doc FROM record ORDER BY name",
          """
          SELECT record.name, field, run.name, n, cell.t, value, typed, head FROM %s AS cell
          JOIN record ON record.id = cell.record JOIN run ON run.id = cell.run
          ORDER BY record.name, field, run.name, n""",
          """
          SELECT record.name, field, run.name, n FROM replaced
          JOIN record ON record.id = replaced.record JOIN run ON run.id = replaced.run
          ORDER BY record.name, field, run.name, n""",
          """
          SELECT run.name, n, t, raw, state FROM op JOIN run ON run.id = op.run
          ORDER BY run.name, n""");

  private LogState() {}

  public static List<String> of(Path folder) throws SQLException {
    List<String> rows = new ArrayList<>();
    boolean older =
        rows(folder, "SELECT name FROM sqlite_schema WHERE name = 'every_cell'").isEmpty();
    for (String query : EVERYTHING) {
      rows.addAll(rows(folder, query.formatted(older ? "cell" : "every_cell")));
    }
    return rows;
  }

  /** The rows of a query, values joined by a bar. */
  public static List<String> rows(Path folder, String query) throws SQLException {
    try (Connection connection = connect(folder);
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(query)) {
      List<String> rows = new ArrayList<>();
      while (row.next()) {
        StringJoiner values = new StringJoiner("|");
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
          values.add(row.getString(i));
        }
        rows.add(values.toString());
      }
      return rows;
    }
  }

  /** Does something to a closed log behind its back. */
  static void tamper(Path folder, String... statements) throws SQLException {
    try (Connection connection = connect(folder);
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.executeUpdate(sql);
      }
    }
  }

  private static Connection connect(Path folder) throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("padside.sqlite"));
  }
}
