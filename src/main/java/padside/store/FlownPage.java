package padside.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.FlightLog;

/**
 * Reads flown flights in the order of their rows, which needs no index: a flight costs ten
 * microseconds, most of them for the database to take its values out of the record.
 */
record FlownPage(Database database) {
  private static final List<Column<?>> WANTED =
      List.of(
          Flight.ROCKET,
          Flight.MOTOR,
          Flight.LOT,
          Flight.BOOSTER_LOT,
          Flight.BURN,
          Flight.EJECTION,
          Flight.MEASURED_DELAY,
          Flight.PREDICTED_BEST_DELAY);

  /** The first four are columns of the table; of the rest a record is taken apart once. */
  private static final String SQL =
      """
      SELECT id, name, rocket, motor, lot, booster_lot, doc ->> '$.burn.v', doc ->> '$.ejection.v',
        doc ->> '$.measured_delay_s.v', doc ->> '$.predicted_best_delay_s.v'
      FROM record NOT INDEXED
      WHERE id > ?1 AND kind = 'flight' AND removed = 0 AND status = 'flown' ORDER BY id LIMIT ?2""";

  /** A flight and its row. */
  private record Row(long id, Flight flight) {}

  FlightLog.Page read(long after, int most) throws SQLException {
    List<Row> rows = database.list(FlownPage::row, SQL, after, most);
    return new FlightLog.Page(
        rows.stream().map(Row::flight).toList(),
        rows.size() < most ? OptionalLong.empty() : OptionalLong.of(rows.get(most - 1).id()));
  }

  private static Row row(ResultSet row) throws SQLException {
    Map<String, Facts.Cell> cells = new LinkedHashMap<>();
    cells.put(Flight.STATUS.name(), Facts.Cell.of(Flight.Status.FLOWN.code()));
    for (int i = 0; i < WANTED.size(); i++) {
      Object value = row.getObject(i + 3);
      if (value != null) {
        cells.put(WANTED.get(i).name(), Facts.Cell.of(value));
      }
    }
    return new Row(row.getLong(1), new Flight(new RecordId(row.getString(2)), new Facts(cells)));
  }
}
