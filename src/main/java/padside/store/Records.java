package padside.store;

import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    sql.append(NEWEST_FIRST).append(" LIMIT ?");
    values.add(query.limit());
    return database.list(Records::stored, sql.toString(), values.toArray());
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
