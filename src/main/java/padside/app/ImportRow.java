package padside.app;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.OutcomeTable;
import padside.form.FormField;
import padside.motor.MotorStack;
import padside.motor.MotorTable;
import padside.motor.MotorText;
import padside.report.Cells;
import padside.report.Sheet;
import padside.units.Reading;

/** Reads rows of a spreadsheet as flights, as the forms read what is typed into them. */
final class ImportRow {
  private final ImportColumns columns;
  private final TypedDates dates;
  private final MotorTable motors;
  private final OutcomeTable outcomes;
  private final boolean decimalComma;

  /** What came of one row. */
  record Read(int number, Facts facts, Map<String, String> names, List<String> objections) {}

  ImportRow(
      ImportColumns columns,
      TypedDates dates,
      MotorTable motors,
      OutcomeTable outcomes,
      boolean decimalComma) {
    this.columns = columns;
    this.dates = dates;
    this.motors = motors;
    this.outcomes = outcomes;
    this.decimalComma = decimalComma;
  }

  /** The row with what it refers to still by name; the date as ISO 8601 among the names. */
  Read read(Spreadsheet.Row row, List<ImportColumns.Match> matches) {
    Map<String, String> names = new HashMap<>();
    List<String> objections = new ArrayList<>();
    Facts facts = Facts.none();
    for (ImportColumns.Match match : matches) {
      String cell = row.cell(match.column());
      if (cell.isBlank()) {
        continue;
      }
      if (isName(match.name())) {
        names.put(match.name(), cell);
        continue;
      }
      Reading<Facts> reading = value(match, cell);
      facts = facts.with(reading.value().orElse(Facts.none()));
      reading.objection().ifPresent(why -> objections.add(match.header() + ": " + why));
    }
    facts = facts.with(motor(names, objections));
    date(names, objections);
    if (names.getOrDefault(Flight.ROCKET.name(), "").isBlank()) {
      objections.add("No rocket is named; fill it in.");
    }
    Facts flown = Facts.none().with(Flight.STATUS, Flight.Status.FLOWN).with(facts);
    return new Read(row.number(), flown, names, objections);
  }

  private static boolean isName(String name) {
    return List.of(Sheet.DATE, Sheet.FIELD, ImportColumns.DELAY, Flight.MOTOR.name()).contains(name)
        || column(name).filter(each -> each.storage() == Column.Storage.REFERENCE).isPresent();
  }

  private static Optional<Column<?>> column(String name) {
    return Kind.FLIGHT.column(name);
  }

  private void date(Map<String, String> names, List<String> objections) {
    if (!names.containsKey(Sheet.DATE)) {
      objections.add("It has no date; fill it in.");
      return;
    }
    Reading<LocalDate> date = dates.read(names.get(Sheet.DATE));
    date.objection().ifPresent(objections::add);
    date.value().ifPresent(read -> names.put(Sheet.DATE, read.toString()));
  }

  private Facts motor(Map<String, String> names, List<String> objections) {
    String motor = names.getOrDefault(Flight.MOTOR.name(), "");
    String delay = names.getOrDefault(ImportColumns.DELAY, "").replaceFirst("(?i) ?s(ec)?$", "");
    if (motor.isBlank()) {
      return Facts.none();
    }
    boolean apart = MotorText.of(motor).top().motor().indexOf('-') < 0 && !delay.isBlank();
    Reading<MotorStack> stack = motors.chooseAll(apart ? motor + "-" + delay : motor);
    stack.objection().ifPresent(objections::add);
    stack
        .value()
        .ifPresent(
            read -> {
              names.put(Flight.LOT.name() + " motor", read.top().motor().designation());
              read.booster()
                  .ifPresent(
                      booster ->
                          names.put(
                              Flight.BOOSTER_LOT.name() + " motor", booster.motor().designation()));
            });
    return Facts.none().with(Flight.MOTOR, stack.value().map(MotorStack::designation));
  }

  private Reading<Facts> value(ImportColumns.Match match, String cell) {
    Optional<Facts> stored = match.exact() ? stored(match.name(), cell) : Optional.empty();
    if (stored.isPresent()) {
      return Reading.of(stored.get());
    }
    Optional<FormField<?>> field = columns.field(match.name());
    if (field.isEmpty()) {
      return Reading.refused(Reading.echo(cell) + " is no value for it; correct or empty it.");
    }
    if (decimalComma && cell.matches("[1-9][0-9]{0,2}\\.[0-9]{3}\\D*")) {
      return Reading.refused(
          Reading.echo(cell)
              + " could mean thousands where commas part decimals; write it without the point.");
    }
    String typed = Cells.isNumber(cell) ? cell + match.unit() : cell;
    return field
        .get()
        .objection(typed)
        .map(Reading::<Facts>refused)
        .orElseGet(() -> Reading.of(field.get().facts(typed)));
  }

  /** A cell under the column's own name, as an export writes it. */
  private Optional<Facts> stored(String name, String cell) {
    Column<?> column = column(name).orElseThrow();
    Optional<Object> value =
        switch (column.storage()) {
          case NUMBER -> number(cell);
          case INTEGER -> number(cell).map(whole -> (Object) Math.round((Double) whole));
          case FLAG ->
              cell.matches("true|false") ? Optional.of(Boolean.valueOf(cell)) : Optional.empty();
          case LIST -> list(cell);
          case TEXT, REFERENCE -> text(name, cell);
        };
    return value
        .map(present -> Facts.none().with(name, Facts.Cell.of(present)))
        .filter(facts -> facts.get(column).isPresent());
  }

  private static Optional<Object> number(String cell) {
    return Cells.isNumber(cell) && cell.indexOf(',') < 0
        ? Optional.of(Double.valueOf(cell))
        : Optional.empty();
  }

  private Optional<Object> text(String name, String cell) {
    boolean isWord = !outcomes.of(name).isEmpty();
    return !isWord || outcomes.find(name, cell).isPresent() ? Optional.of(cell) : Optional.empty();
  }

  private static Optional<Object> list(String cell) {
    try {
      return cell.startsWith("[") ? Optional.of(JSON.std.listFrom(cell)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** The flight with its references, by the ids of the log or by the names of new records. */
  static Facts referring(Read row, ImportedNames names) {
    Facts facts = row.facts;
    Map<String, String> told = row.names;
    String day =
        names.day(LocalDate.parse(told.get(Sheet.DATE)), told.getOrDefault(Sheet.FIELD, ""));
    facts = facts.with(Flight.DAY, new RecordId(day));
    facts = facts.with(Flight.ROCKET, new RecordId(names.rocket(told.get(Flight.ROCKET.name()))));
    for (Column<RecordId> lot : List.of(Flight.LOT, Flight.BOOSTER_LOT)) {
      String motor = told.getOrDefault(lot.name() + " motor", "?");
      facts =
          facts.with(lot, named(told, lot).map(code -> names.lot(motor, code)).map(RecordId::new));
    }
    return facts
        .with(Flight.DEVICE, named(told, Flight.DEVICE).map(names::device).map(RecordId::new))
        .with(
            Flight.ALTIMETER,
            named(told, Flight.ALTIMETER).map(names::altimeter).map(RecordId::new));
  }

  private static Optional<String> named(Map<String, String> told, Column<?> column) {
    return Optional.ofNullable(told.get(column.name()));
  }
}
