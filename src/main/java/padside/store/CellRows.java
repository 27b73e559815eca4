package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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

  /** Of a record the tables did not have, nothing can have been replaced. */
  private static final String OF_A_NEW_RECORD = " 1 FROM (VALUES ";

  private static final String OF_A_KNOWN_RECORD =
      """
       NOT EXISTS (
        SELECT 1 FROM replaced WHERE record = ?1 AND field = column1 AND run = ?2 AND n = ?3)
      FROM (VALUES\s""";

  private static final String MAKE =
      """
      INSERT INTO record (name, kind, t, run, part, doc) VALUES (?1, ?2, ?3, ?4, ?5, ?6)
      ON CONFLICT (name) DO NOTHING RETURNING id""";

  private static final Predicate<String> PLAIN_NAME =
      Pattern.compile("[a-z0-9_]+").asMatchPredicate();
  private static final Predicate<String> CONTROL = Pattern.compile("[\\x00-\\x1f]").asPredicate();

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
   * @param key its name, kind, t, run and part
   */
  Optional<Long> make(Object... key) throws SQLException {
    List<Object> bound = new ArrayList<>(Arrays.asList(key));
    bound.add(doc());
    return database.first(row -> row.getLong(1), MAKE, bound.toArray());
  }

  /** True where {@link #doc} is to the letter what SQLite would make of the cells. */
  boolean isPlain() {
    Set<String> fields = new HashSet<>();
    return !cells.isEmpty()
        && cells.stream()
            .allMatch(
                each ->
                    each.field().filter(PLAIN_NAME).filter(fields::add).isPresent()
                        && each.cell().typed().filter(CONTROL).isEmpty());
  }

  /** The cells as the record shows them, all of them heads. */
  private String doc() {
    Map<String, String> shown = new TreeMap<>();
    for (int i = 0; i < values.size(); i += 3) {
      Object typed = values.get(i + 2);
      shown.put(
          "\"" + values.get(i) + "\":",
          "{\"v\":"
              + values.get(i + 1)
              + ",\"y\":"
              + (typed == null ? "null" : Json.write(typed))
              + "}");
    }
    return shown.entrySet().stream()
        .map(entry -> entry.getKey() + entry.getValue())
        .collect(Collectors.joining(",", "{", "}"));
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
