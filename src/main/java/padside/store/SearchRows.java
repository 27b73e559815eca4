package padside.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.flight.Kind;
import padside.flight.OutcomeTable;

/**
 * Keeps the tables a search looks through up with the records, when it is asked to: nothing is done
 * for them while a line is kept. First every record is taken up, then what operations named that
 * came since. Within whatever transaction is open.
 */
final class SearchRows {
  private static final int RECORDS = 200;
  private static final int OPERATIONS = 100;

  /** Meta key: a sum over the outcome table whose words the rows have. */
  private static final String WORDS = "find_words";

  /** Meta key: the row of the operation up to which records are as the rows have them. */
  private static final String UP_TO = "find_op";

  /** Meta key: the row of the record down to which all were taken up; gone once all are. */
  private static final String TAKEN = "find_record";

  private static final String KINDS = "('flight', 'fix', 'attempt')";

  private static final String NEXT =
      SearchText.SELECT
          + " NOT INDEXED WHERE id < ?1 AND kind IN "
          + KINDS
          + " ORDER BY id DESC LIMIT ?2";

  private static final String ONE = SearchText.SELECT + " WHERE name = ?1 AND kind IN " + KINDS;

  private static final String NAMED =
      """
      SELECT DISTINCT change.value ->> '$.e' FROM op, json_each(op.raw, '$.ch') AS change
      WHERE op.rowid > ?1 AND op.rowid <= ?2 AND change.value ->> '$.k' IN\s"""
          + KINDS;

  private static final String NAME =
      "INSERT INTO find_name (name) VALUES (?1) ON CONFLICT (name) DO NOTHING RETURNING id";

  private static final String FLIGHT =
      """
      INSERT INTO find_flight (t, run, part, flight, rocket, day, lot, booster_lot, device,
        altimeter, motor, outcome, text)
      VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13)""";

  private static final String NOTE =
      "INSERT INTO find_note (record, flight, open, text) VALUES (?1, ?2, ?3, ?4)";

  /** Column of the first reference in what is read of a record. */
  private static final int ROCKET = 8;

  private static final int ALTIMETER = 13;
  private static final int OF_FLIGHT = 16;
  private static final int DONE = 17;
  private static final int MOST_KEPT = 5000;

  private final Database database;
  private final OutcomeTable outcomes;
  private final String words;
  private final SearchText text;
  private final Map<String, Long> names = new HashMap<>();

  /** Rows of that database, in the words of that table. */
  SearchRows(Database database, OutcomeTable outcomes) {
    this.database = database;
    this.outcomes = outcomes;
    this.words = Summed.sum(outcomes.toString());
    this.text = new SearchText(outcomes);
  }

  /** Whether they are in the words of a table. */
  boolean areIn(OutcomeTable other) {
    return outcomes.equals(other);
  }

  /** Whether all records are as the rows have them. */
  boolean areWhole() throws SQLException {
    return areKnown() && number(TAKEN).isEmpty() && number(UP_TO).orElse(0L) == last();
  }

  private boolean areKnown() throws SQLException {
    return LogTables.meta(database, WORDS).equals(Optional.of(words));
  }

  /** Takes up a part of what is new; false where nothing was. */
  boolean more() throws SQLException {
    if (areWhole()) {
      return false;
    }
    database.script("SAVEPOINT find");
    try {
      if (!areKnown()) {
        begin();
      }
      Optional<Long> taken = number(TAKEN);
      if (taken.isPresent()) {
        take(taken.get());
      } else {
        follow(number(UP_TO).orElse(0L));
      }
      database.script("RELEASE find");
      return true;
    } catch (SQLException | RuntimeException e) {
      names.clear();
      giveUp();
      throw e;
    }
  }

  /** A full medium may have ended the transaction already. */
  private void giveUp() {
    try {
      database.script("ROLLBACK TO find");
      database.script("RELEASE find");
    } catch (SQLException e) {
      // The failure that led here is the one to tell.
    }
  }

  /** The operation put in last; no line is ever taken out. */
  private long last() throws SQLException {
    return database.number("SELECT max(rowid) FROM op");
  }

  private Optional<Long> number(String key) throws SQLException {
    return LogTables.meta(database, key).map(Long::valueOf);
  }

  private void begin() throws SQLException {
    names.clear();
    empty(database);
    LogTables.setMeta(database, WORDS, words);
    LogTables.setMeta(database, UP_TO, String.valueOf(last()));
    LogTables.setMeta(
        database, TAKEN, String.valueOf(1 + database.number("SELECT max(id) FROM record")));
  }

  /** Nothing is taken up any more; within the caller's transaction. */
  static void empty(Database database) throws SQLException {
    for (String table : List.of("find_note", "find_flight", "find_name")) {
      database.run("DELETE FROM " + table);
    }
    database.run("DELETE FROM meta WHERE key IN (?1, ?2, ?3)", WORDS, UP_TO, TAKEN);
  }

  /** The newest first: what is found among them is wanted most. */
  private void take(long before) throws SQLException {
    long[] end = {before};
    int rows =
        database.each(
            row -> {
              end[0] = row.getLong(1);
              put(row);
            },
            NEXT,
            before,
            RECORDS);
    if (rows < RECORDS) {
      database.run("DELETE FROM meta WHERE key = ?1", TAKEN);
    } else {
      LogTables.setMeta(database, TAKEN, String.valueOf(end[0]));
    }
  }

  private void follow(long before) throws SQLException {
    long end = Math.min(last(), before + OPERATIONS);
    for (String name : database.list(row -> row.getString(1), NAMED, before, end)) {
      long id = name(name);
      database.run("DELETE FROM find_flight WHERE flight = ?1", id);
      database.run("DELETE FROM find_note WHERE record = ?1", id);
      database.each(this::put, ONE, name);
    }
    LogTables.setMeta(database, UP_TO, String.valueOf(end));
  }

  private void put(ResultSet row) throws SQLException {
    if (row.getBoolean("removed")) {
      return;
    }
    String own = row.getString("name");
    if (!row.getString("kind").equals(Kind.FLIGHT.code())) {
      boolean open = row.getString("kind").equals(Kind.FIX.code()) && !row.getBoolean(DONE);
      database.run(NOTE, name(own), reference(row, OF_FLIGHT), open ? 1 : 0, text.text(row));
      return;
    }
    Object[] values = new Object[13];
    values[0] = row.getLong("t");
    values[1] = row.getString("run");
    values[2] = row.getLong("part");
    values[3] = name(own);
    for (int column = ROCKET; column <= ALTIMETER; column++) {
      values[4 + column - ROCKET] = reference(row, column);
    }
    values[10] = SearchText.motor(row);
    values[11] = text.outcome(row);
    values[12] = text.text(row);
    database.run(FLIGHT, values);
  }

  /** As SQLite takes it: NULL where none is named. */
  private Long reference(ResultSet row, int column) throws SQLException {
    String named = row.getString(column);
    return named == null || named.isBlank() ? null : name(named);
  }

  private long name(String name) throws SQLException {
    Long known = names.get(name);
    if (known != null) {
      return known;
    }
    Optional<Long> fresh = database.first(row -> row.getLong(1), NAME, name);
    long id =
        fresh.isPresent()
            ? fresh.get()
            : database.number("SELECT id FROM find_name WHERE name = ?1", name);
    if (names.size() > MOST_KEPT) {
      names.clear(); // each flight has one of its own
    }
    names.put(name, id);
    return id;
  }
}
