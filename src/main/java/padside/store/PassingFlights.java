package padside.store;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.FlightLog.Passing;
import padside.flight.FlightLog.Sought;
import padside.flight.FlightLog.Stretch;

/**
 * Flights with some of their values, oldest first. The database takes the values out of the
 * records; those in which flights are alike come in one text, which is taken apart once for all
 * that have the same.
 */
final class PassingFlights {
  private static final String ORDER = "t, run, part, name";

  /** What the table has as columns of its own. */
  private static final Set<String> KEPT =
      Set.of("rocket", "day", "lot", "booster_lot", "device", "altimeter", "motor", "status");

  private final Database database;
  private final Sought sought;
  private final List<Column<?>> kept;
  private final List<Column<?>> rest;
  private final Map<String, Facts> alike = new HashMap<>();

  PassingFlights(Database database, Sought sought) {
    this.database = database;
    this.sought = sought;
    this.kept = sought.alike().stream().filter(each -> KEPT.contains(each.name())).toList();
    this.rest = sought.alike().stream().filter(each -> !KEPT.contains(each.name())).toList();
  }

  Stretch read(Optional<RecordId> after, int most) throws SQLException {
    List<Object> values = new ArrayList<>();
    StringBuilder sql = new StringBuilder("SELECT name, ").append(wanted()).append(" FROM record");
    sql.append(sought.rocket().isPresent() ? " INDEXED BY flight_of_rocket" : "");
    sql.append(" WHERE kind = 'flight' AND removed = 0");
    if (sought.rocket().isPresent()) {
      sql.append(" AND rocket = ?");
      values.add(sought.rocket().get().text());
    }
    if (after.isPresent()) {
      sql.append(" AND (" + ORDER + ") > (?, ?, ?, ?)");
      values.addAll(place(after.get()));
    }
    sql.append(" ORDER BY " + ORDER + " LIMIT ?");
    values.add(most);
    List<Passing> flights = database.list(this::flight, sql.toString(), values.toArray());
    return new Stretch(
        flights,
        flights.size() < most ? Optional.empty() : Optional.of(flights.get(most - 1).id()));
  }

  /** Where a flight stands in the order of all. */
  private List<Object> place(RecordId flight) throws SQLException {
    return database
        .first(
            row ->
                List.<Object>of(row.getLong(1), row.getString(2), row.getLong(3), row.getString(4)),
            "SELECT " + ORDER + " FROM record WHERE name = ?1",
            flight.text())
        .orElseThrow(() -> new SQLException("a flight that was read is gone: " + flight));
  }

  /**
   * A list of what the table has as columns, then within it one of what only the record's text has;
   * of a single path the database would make none, so one stands before the others.
   */
  private String wanted() {
    String own = sought.own().stream().map(column -> ", " + value(column)).collect(joining());
    return "json_array("
        + kept.stream().map(column -> column.name() + ", ").collect(joining())
        + "json_extract(doc, '$.status.v'"
        + rest.stream().map(column -> ", " + path(column)).collect(joining())
        + ", '$.status.v'))"
        + own;
  }

  private static String value(Column<?> column) {
    return KEPT.contains(column.name()) ? column.name() : "doc ->> " + path(column);
  }

  private static String path(Column<?> column) {
    return "'$." + column.name() + ".v'";
  }

  private Passing flight(ResultSet row) throws SQLException {
    String text = row.getString(2);
    Facts same = alike.get(text);
    if (same == null) {
      same = apart(text);
      alike.put(text, same);
    }
    return new Passing(new RecordId(row.getString(1)), same, own(row));
  }

  private Facts apart(String text) throws SQLException {
    List<?> values = (List<?>) list(text);
    List<?> within = (List<?>) values.get(kept.size());
    Map<String, Facts.Cell> cells = new LinkedHashMap<>();
    for (int i = 0; i < kept.size(); i++) {
      put(cells, kept.get(i), values.get(i));
    }
    for (int i = 0; i < rest.size(); i++) {
      put(cells, rest.get(i), within.get(i + 1));
    }
    return new Facts(cells);
  }

  private static void put(Map<String, Facts.Cell> cells, Column<?> column, Object value) {
    if (value != null) {
      cells.put(column.name(), Facts.Cell.of(value));
    }
  }

  private Facts own(ResultSet row) throws SQLException {
    Map<String, Facts.Cell> cells = new LinkedHashMap<>();
    for (int i = 0; i < sought.own().size(); i++) {
      Object value = row.getObject(i + 3);
      Column<?> column = sought.own().get(i);
      put(cells, column, value == null ? null : asKept(column, value));
    }
    return new Facts(cells);
  }

  /** As the record's text has it: SQLite knows neither yes and no nor lists. */
  private static Object asKept(Column<?> column, Object value) throws SQLException {
    return switch (column.storage()) {
      case FLAG -> value instanceof Number number ? number.intValue() != 0 : value;
      case INTEGER -> value instanceof Integer number ? number.longValue() : value;
      case LIST -> list((String) value);
      case TEXT, NUMBER, REFERENCE -> value;
    };
  }

  private static Object list(String json) throws SQLException {
    try {
      return Json.read(json);
    } catch (IOException e) {
      throw new SQLException("a list that is no JSON", e);
    }
  }
}
