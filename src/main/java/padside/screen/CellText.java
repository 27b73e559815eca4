package padside.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;

/**
 * What stands in a cell that no form has a field for.
 *
 * @param column the cell's; absent when this version does not know it
 */
record CellText(Optional<Column<?>> column, Logbook log) {
  static final String BLANK = "blank";

  /** As typed; else a record by its name and any other value as it is kept, in SI. */
  String of(Facts.Cell cell) {
    return cell.typed().orElseGet(() -> cell.value().map(this::shown).orElse(""));
  }

  private String shown(Object value) {
    boolean reference =
        column.filter(known -> known.storage() == Column.Storage.REFERENCE).isPresent();
    return reference ? name(new RecordId(String.valueOf(value))) : plain(value);
  }

  private static String plain(Object value) {
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof List<?> items) {
      return items.stream().map(CellText::plain).collect(Collectors.joining(", "));
    }
    if (value instanceof Map<?, ?> entries) {
      return entries.values().stream().map(CellText::plain).collect(Collectors.joining(" "));
    }
    return String.valueOf(value);
  }

  private String name(RecordId id) {
    return Stream.of(
            log.rocket(id).map(Rocket::name),
            log.day(id).flatMap(Day::date).map(DayWords::of),
            log.lot(id).map(Lot::code),
            log.device(id).map(RecoveryDevice::name),
            log.altimeter(id).map(Altimeter::name),
            log.field(id).map(Field::name),
            log.flight(id).flatMap(Flight::motor).map(motor -> "the flight on " + motor))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse("one no longer listed");
  }
}
