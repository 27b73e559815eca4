package padside.store;

import java.sql.SQLException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import padside.fact.Column;
import padside.flight.Kind;

/**
 * One view for each kind of record, named as the kind, with its columns as SQL values, so that any
 * SQLite tool can read the log. They are made from {@link Kind#columns()}: a new column needs no
 * new table.
 */
final class KindViews {
  private static final String KEY = "views";

  private KindViews() {}

  /** Makes the views anew when they are not those of this version; within a transaction. */
  static void refresh(Database database) throws SQLException {
    String wanted = mark();
    if (LogTables.meta(database, KEY).filter(wanted::equals).isPresent()) {
      return;
    }
    List<String> names =
        database.list(
            row -> row.getString(1),
            "SELECT name FROM sqlite_schema WHERE type = 'view' AND name NOT IN ('every_cell', 'head')");
    for (String name : names) {
      database.script("DROP VIEW \"" + name.replace("\"", "\"\"") + "\"");
    }
    for (Kind kind : Kind.values()) {
      database.script(view(kind.code(), kind.columns()));
    }
    LogTables.setMeta(database, KEY, wanted);
  }

  /**
   * Tells views of this version from others: what is in them, and how a view with a column of each
   * storage is written. Their whole text would take long to make at every start.
   */
  private static String mark() {
    StringBuilder made = new StringBuilder();
    Map<Column.Storage, Column<?>> each = new EnumMap<>(Column.Storage.class);
    for (Kind kind : Kind.values()) {
      made.append('\n').append(kind.code());
      for (Column<?> column : kind.columns()) {
        made.append(' ').append(column.name()).append(':').append(column.storage().name());
        each.putIfAbsent(column.storage(), column);
      }
    }
    return Summed.sum(view("", List.copyOf(each.values())) + made);
  }

  private static String view(String kind, List<Column<?>> shown) {
    String columns = shown.stream().map(KindViews::column).collect(Collectors.joining(",\n  "));
    return """
        CREATE VIEW "%s" AS SELECT name AS id,
          %s
        FROM record WHERE kind = '%s' AND removed = 0;
        """
        .formatted(kind, columns, kind);
  }

  /** A value of the wrong form shows as NULL rather than as what a cast would make of it. */
  private static String column(Column<?> column) {
    String path = "'$." + column.name() + ".v'";
    String form = "json_type(doc, " + path + ")";
    String value = "doc ->> " + path;
    String shown =
        switch (column.storage()) {
          case TEXT, REFERENCE -> "CASE WHEN " + form + " = 'text' THEN " + value + " END";
          case NUMBER ->
              "CASE WHEN " + form + " IN ('integer', 'real') THEN CAST(" + value + " AS REAL) END";
          case INTEGER -> "CASE WHEN " + form + " = 'integer' THEN " + value + " END";
          case FLAG -> "CASE " + form + " WHEN 'true' THEN 1 WHEN 'false' THEN 0 END";
          case LIST -> "CASE WHEN " + form + " = 'array' THEN doc -> " + path + " END";
        };
    return shown + " AS \"" + column.name() + "\"";
  }
}
