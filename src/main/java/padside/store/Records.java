package padside.store;

import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.FlightLog.FlightQuery;
import padside.flight.FlightLog.Stored;
import padside.flight.FlightLog.Use;
import padside.flight.Kind;
import padside.motor.MotorText;

/** Records as they show, read from the tables. */
final class Records {
  private static final String SHOWN = " WHERE kind = ?1 AND removed = 0";
  private static final String NEWEST_FIRST = " ORDER BY t DESC, run DESC, part DESC, name DESC";

  /** Steps from rocket to rocket along the index, so that its cost grows with the rockets only. */
  private static final String LAST_OF_EACH_ROCKET =
      """
      WITH RECURSIVE each (rocket) AS (
        SELECT min(rocket) FROM record INDEXED BY flight_told_of_rocket
          WHERE kind = 'flight' AND removed = 0 AND status <> 'draft' AND status <> 'planned'
        UNION ALL
        SELECT (SELECT min(r.rocket) FROM record AS r INDEXED BY flight_told_of_rocket
          WHERE r.kind = 'flight' AND r.removed = 0 AND r.status <> 'draft'
            AND r.status <> 'planned' AND r.rocket > each.rocket)
        FROM each WHERE each.rocket IS NOT NULL)
      SELECT name, doc FROM each JOIN record AS last ON last.id = (
        SELECT id FROM record AS r INDEXED BY flight_told_of_rocket
          WHERE r.kind = 'flight' AND r.removed = 0 AND r.status <> 'draft'
            AND r.status <> 'planned' AND r.rocket = each.rocket
          ORDER BY r.t DESC, r.run DESC, r.part DESC LIMIT 1)
      ORDER BY last.t DESC, last.run DESC, last.part DESC""";

  private final Database database;

  Records(Database database) {
    this.database = database;
  }

  List<Stored> list(Kind kind) throws SQLException {
    return database.list(
        Records::stored,
        "SELECT name, doc FROM record" + SHOWN + " ORDER BY t, run, part, name",
        kind.code());
  }

  List<Stored> removed(Kind kind) throws SQLException {
    return database.list(
        Records::stored,
        "SELECT name, doc FROM record WHERE kind = ?1 AND removed = 1" + NEWEST_FIRST,
        kind.code());
  }

  Optional<Stored> find(Kind kind, RecordId id) throws SQLException {
    return database.first(
        Records::stored,
        "SELECT name, doc FROM record WHERE name = ?1 AND kind = ?2",
        id.text(),
        kind.code());
  }

  List<Stored> flights(FlightQuery query) throws SQLException {
    StringBuilder sql = new StringBuilder("SELECT name, doc FROM record").append(index(query));
    sql.append(" WHERE kind = 'flight' AND removed = 0");
    List<Object> values = new ArrayList<>();
    query.rocket().ifPresent(rocket -> narrow(sql, "rocket = ?", values, rocket.text()));
    query.day().ifPresent(day -> narrow(sql, "day = ?", values, day.text()));
    List<String> words = words(query);
    words.stream()
        .filter(word -> word.matches("[a-z0-9]+"))
        .forEach(word -> narrow(sql, "doc LIKE ?", values, "%" + word + "%"));
    sql.append(NEWEST_FIRST);
    // The database narrows down, letters outside ASCII and field names are looked at here.
    return database.search(
        query.limit(),
        row -> Optional.of(stored(row)).filter(flight -> says(flight.facts(), words)),
        sql.toString(),
        values.toArray());
  }

  List<Stored> measuredFlights(RecordId rocket, int most) throws SQLException {
    return database.list(
        Records::stored,
        """
        SELECT name, doc FROM record INDEXED BY flight_of_rocket
        WHERE kind = 'flight' AND removed = 0 AND rocket = ?1 AND status = 'flown'
          AND typeof(doc ->> '$.altitude_m.v') IN ('real', 'integer')
          AND doc ->> '$.altitude_m.v' > 0
        ORDER BY t DESC, run DESC, part DESC, name DESC LIMIT ?2""",
        rocket.text(),
        most);
  }

  /**
   * Some values of every flight, oldest first; the database takes them out of the records, which
   * costs a tenth of reading those here. Answers how many there were.
   */
  int each(List<Column<?>> wanted, Consumer<Stored> reader) throws SQLException {
    String values =
        wanted.stream()
            .map(column -> ", doc ->> '$." + column.name() + ".v'")
            .collect(Collectors.joining());
    return database.each(
        row -> reader.accept(new Stored(new RecordId(row.getString(1)), some(wanted, row))),
        "SELECT name"
            + values
            + " FROM record WHERE kind = 'flight' AND removed = 0 ORDER BY t, run, part, name");
  }

  private static Facts some(List<Column<?>> wanted, ResultSet row) throws SQLException {
    Map<String, Facts.Cell> cells = new LinkedHashMap<>();
    for (int i = 0; i < wanted.size(); i++) {
      Object value = row.getObject(i + 2);
      if (value != null) {
        cells.put(wanted.get(i).name(), Facts.Cell.of(asKept(wanted.get(i), value)));
      }
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

  List<Stored> lastFlightOfEachRocket() throws SQLException {
    return database.list(Records::stored, LAST_OF_EACH_ROCKET);
  }

  Map<RecordId, Integer> firedByLot() throws SQLException {
    Map<RecordId, Integer> fired = new LinkedHashMap<>();
    database
        .list(
            row -> Map.entry(new RecordId(row.getString(1)), row.getInt(2)),
            """
            SELECT lot, count(*) FROM record INDEXED BY flight_flown_of_lot
            WHERE kind = 'flight' AND removed = 0 AND status = 'flown' AND several IS NOT 1
              AND typeof(lot) = 'text' AND trim(lot) <> ''
            GROUP BY lot""")
        .forEach(entry -> fired.put(entry.getKey(), entry.getValue()));
    firedInSeveral()
        .forEach(each -> each.forEach((lot, motors) -> fired.merge(lot, motors, Integer::sum)));
    return fired;
  }

  /** Motors of each lot fired in flights on more than one; how many a line names is read here. */
  private List<Map<RecordId, Integer>> firedInSeveral() throws SQLException {
    return database.list(
        row -> {
          int flights = row.getInt(4);
          Map<RecordId, Integer> each =
              MotorText.fired(Optional.of(row.getString(3)), lot(row, 1), lot(row, 2));
          each.replaceAll((lot, motors) -> motors * flights);
          return each;
        },
        """
        SELECT iif(typeof(lot) = 'text', lot, ''), iif(typeof(booster_lot) = 'text', booster_lot, ''),
          motor, count(*) FROM record INDEXED BY flight_flown_on_several
        WHERE kind = 'flight' AND removed = 0 AND status = 'flown' AND several IS 1
        GROUP BY lot, booster_lot, motor""");
  }

  private static Optional<RecordId> lot(ResultSet row, int column) throws SQLException {
    return Optional.of(row.getString(column)).filter(id -> !id.isBlank()).map(RecordId::new);
  }

  List<Use> uses() throws SQLException {
    List<Use> uses = new ArrayList<>(uses("device", "flight_flown_under_device"));
    uses.addAll(uses("altimeter", "flight_flown_with_altimeter"));
    return List.copyOf(uses);
  }

  private List<Use> uses(String gear, String index) throws SQLException {
    return database.list(
        row ->
            new Use(
                new RecordId(row.getString(1)),
                Optional.ofNullable(row.getString(2)).map(RecordId::new),
                row.getInt(3)),
        """
        SELECT %1$s, iif(typeof(day) = 'text' AND trim(day) <> '', day, NULL), count(*)
        FROM record INDEXED BY %2$s
        WHERE kind = 'flight' AND removed = 0 AND status = 'flown'
          AND typeof(%1$s) = 'text' AND trim(%1$s) <> ''
        GROUP BY %1$s, day"""
            .formatted(gear, index));
  }

  /** Left to itself SQLite would take the index of all records. */
  private static String index(FlightQuery query) {
    if (query.rocket().isPresent()) {
      return " INDEXED BY flight_of_rocket";
    }
    return query.day().isPresent() ? " INDEXED BY flight_of_day" : "";
  }

  private static void narrow(
      StringBuilder sql, String condition, List<Object> values, String value) {
    sql.append(" AND ").append(condition);
    values.add(value);
  }

  private static List<String> words(FlightQuery query) {
    return query.words().stream()
        .flatMap(text -> Stream.of(text.toLowerCase(Locale.ROOT).split("\\s+")))
        .filter(word -> !word.isEmpty())
        .toList();
  }

  /** True when every word stands in a text of the flight, or in what was typed for any field. */
  private static boolean says(Facts facts, List<String> words) {
    List<String> texts =
        facts.cells().entrySet().stream()
            .flatMap(entry -> texts(entry.getKey(), entry.getValue()))
            .map(text -> text.toLowerCase(Locale.ROOT))
            .toList();
    return words.stream().allMatch(word -> texts.stream().anyMatch(text -> text.contains(word)));
  }

  private static Stream<String> texts(String field, Facts.Cell cell) {
    boolean reference =
        Kind.FLIGHT
            .column(field)
            .filter(column -> column.storage() == Column.Storage.REFERENCE)
            .isPresent();
    Stream<String> value =
        cell
            .value()
            .filter(String.class::isInstance)
            .map(String.class::cast)
            .filter(text -> !reference)
            .stream();
    return Stream.concat(value, cell.typed().stream());
  }

  private static Stored stored(ResultSet row) throws SQLException {
    return new Stored(new RecordId(row.getString(1)), facts(row.getString(2)));
  }

  /** The cells that show, as a record's row holds them. */
  static Facts facts(String doc) throws SQLException {
    try {
      Map<String, Facts.Cell> cells = new LinkedHashMap<>();
      Json.readMap(doc).forEach((field, cell) -> cells.put((String) field, cell((Map<?, ?>) cell)));
      return new Facts(cells);
    } catch (IOException e) {
      throw new SQLException("a record that is no JSON", e);
    }
  }

  private static Facts.Cell cell(Map<?, ?> cell) {
    return new Facts.Cell(
        Optional.ofNullable(cell.get("v")), Optional.ofNullable((String) cell.get("y")));
  }
}
