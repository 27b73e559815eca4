package padside.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Fault;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.insight.Delays;
import padside.page.Block;
import padside.page.Form;
import padside.page.Page;
import padside.page.Plot;
import padside.page.Prose;
import padside.page.Table;
import padside.units.Length;
import padside.units.Notations;
import padside.units.Reading;
import padside.units.UnitSystem;

/** Everything one rocket has flown, and what was mended on it. */
final class RocketPage {
  private static final List<Column<?>> OWN =
      Taught.and(
          FlightRows.TOLD,
          List.of(
              Flight.DAY,
              Flight.CONDITION,
              Flight.DAMAGE,
              Flight.TRACE,
              Flight.MEASURED_DELAY,
              Flight.PREDICTED_BEST_DELAY));

  private final Rocket rocket;
  private final Register register;
  private final PageSource source;
  private final FlightRows rows;
  private final List<Flight> flights = new ArrayList<>();

  private RocketPage(Rocket rocket, Register register, PageSource source) throws Fault {
    this.rocket = rocket;
    this.register = register;
    this.source = source;
    this.rows = FlightRows.of(source);
    FlightLog.Sought own = new FlightLog.Sought(Taught.ALIKE, OWN, Optional.of(rocket.id()));
    source
        .log()
        .each(
            own,
            passing -> {
              Flight flight = passing.flight();
              if (flight.status() == Flight.Status.FLOWN) {
                flights.add(flight);
              }
            });
  }

  static Reading<Page> of(String which, PageSource source) throws Fault {
    Register register = Register.of(source.log());
    Optional<Rocket> rocket =
        register.rockets().stream()
            .filter(each -> each.name().equalsIgnoreCase(which) || each.id().text().equals(which))
            .findFirst();
    if (rocket.isEmpty()) {
      String names =
          register.rockets().stream().map(Rocket::name).collect(Collectors.joining(", "));
      return Reading.refused(
          (which.isEmpty()
                  ? "A rocket history is of one rocket"
                  : "There is no rocket called " + Reading.echo(which) + " in this log")
              + (names.isEmpty() ? "; there are none yet." : "; name one of " + names + "."));
    }
    return Reading.of(new RocketPage(rocket.get(), register, source).page());
  }

  private Page page() throws Fault {
    return new Page(
        "Rocket history · " + rocket.name(),
        source.made("Every flight that the log has of it."),
        List.of(
            new Page.Section("", List.of(facts())),
            new Page.Section("Flights", flown()),
            new Page.Section("Altitudes", altitudes()),
            new Page.Section("Flown on", motors()),
            new Page.Section("Delays that suited", suited()),
            new Page.Section("Altitude traces", traces()),
            new Page.Section("Mended and to mend", fixes())));
  }

  private Form facts() {
    UnitSystem units = source.units();
    List<Form.Entry> entries = new ArrayList<>();
    told(entries, "Flier", rocket.flier());
    told(entries, "Mass without motor", rocket.mass().map(Notations.mass(units)::show));
    told(entries, "Tube", rocket.diameter().map(Notations.bodyLength(units)::show));
    told(entries, "Mount", rocket.mount().map(Notations.bodyLength(UnitSystem.METRIC)::show));
    told(entries, "Drag coefficient", rocket.dragCoefficient().map(Notations.number()::show));
    told(entries, "Rod", rocket.rod().map(Notations.rodLength(units)::show));
    told(entries, "Own wind limit", rocket.ownLimit().map(Notations.windSpeed(units)::show));
    told(entries, "Flights", Optional.of(String.valueOf(flights.size())));
    told(entries, "With a malfunction", Optional.of(String.valueOf(amiss(flights))));
    rocket
        .facts()
        .get(Rocket.NOTE)
        .filter(note -> !note.isBlank())
        .ifPresent(note -> entries.add(Form.Entry.wide("Note", note)));
    return new Form(rocket.name(), entries, false);
  }

  private static void told(List<Form.Entry> entries, String label, Optional<String> value) {
    value.ifPresent(text -> entries.add(Form.Entry.of(label, text)));
  }

  private long amiss(List<Flight> some) {
    var malfunction = source.outcomes().anyMalfunction();
    return some.stream().filter(flight -> malfunction.test(flight.facts())).count();
  }

  private List<Block> flown() {
    if (flights.isEmpty()) {
      return List.of(Prose.of("It has not flown yet."));
    }
    List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.of("Date")));
    columns.addAll(rows.columns());
    columns.add(Table.Column.of("Came back"));
    List<List<String>> lines = new ArrayList<>();
    for (Flight flight : flights) {
      List<String> line = new ArrayList<>(List.of(date(flight)));
      line.addAll(rows.cells(flight));
      line.add(condition(flight));
      lines.add(line);
    }
    return List.of(new Table("Flights, oldest first", columns, lines).withoutBlankColumns());
  }

  private String date(Flight flight) {
    return register.date(flight.day()).map(Object::toString).orElse("no date");
  }

  private String condition(Flight flight) {
    List<Flight.PartState> parts = flight.facts().get(Flight.CONDITION).orElse(List.of());
    Stream<String> told =
        parts.stream()
            .map(
                each ->
                    source.outcomes().words("part", each.part())
                        + " "
                        + source.outcomes().words("state", each.state()));
    return Stream.concat(flight.facts().get(Flight.DAMAGE).stream(), told)
        .collect(Collectors.joining("; "));
  }

  private List<Block> altitudes() {
    Measure<Length> altitude = Measure.altitude(source.units());
    List<Plot.Point> measured = new ArrayList<>();
    List<Plot.Point> predicted = new ArrayList<>();
    for (int i = 0; i < flights.size(); i++) {
      int at = i + 1;
      flights.get(i).altitude().ifPresent(h -> measured.add(Plot.Point.of(at, altitude.number(h))));
      flights
          .get(i)
          .facts()
          .get(Flight.PREDICTED_APOGEE)
          .ifPresent(h -> predicted.add(Plot.Point.of(at, altitude.number(h))));
    }
    if (measured.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Plot(
            "Altitude flight by flight",
            measured.size() + " of " + flights.size() + " flights were measured.",
            new Plot.Axis("flight, oldest first", ""),
            altitude.axis("altitude"),
            false,
            List.of(
                new Plot.Series("measured", Plot.Mark.DOT, measured),
                new Plot.Series("predicted", Plot.Mark.CROSS, predicted))));
    rows.altitudes(flights.stream().flatMap(flight -> rows.point(flight, "").stream()).toList())
        .ifPresent(blocks::add);
    return blocks;
  }

  private List<Block> motors() {
    Map<String, List<Flight>> byMotor = new TreeMap<>();
    flights.forEach(
        flight ->
            byMotor
                .computeIfAbsent(flight.motor().orElse("?"), m -> new ArrayList<>())
                .add(flight));
    Measure<Length> altitude = Measure.altitude(source.units());
    List<List<String>> lines =
        byMotor.entrySet().stream()
            .map(
                each ->
                    List.of(
                        each.getKey(),
                        String.valueOf(each.getValue().size()),
                        String.valueOf(amiss(each.getValue())),
                        altitude.cell(highest(each.getValue()))))
            .toList();
    return new Table(
            "Flights by motor",
            List.of(
                Table.Column.of("Motor"),
                Table.Column.ofNumbers("Flights"),
                Table.Column.ofNumbers("With a malfunction"),
                Table.Column.ofNumbers(altitude.heading("Highest"))),
            lines)
        .or();
  }

  /** By its own flights alone. */
  private List<Block> suited() throws Fault {
    FlightLog.Past past = FlightLog.Past.of(flights, true);
    List<Delays.Suits> suits = Delays.of(source.after(past)).suits();
    List<Block> blocks = new ArrayList<>();
    suits.stream().map(each -> Prose.of(each.words() + ".")).forEach(blocks::add);
    Table table =
        new Table(
            "The delay that suits, by motor",
            Stream.concat(
                    Stream.of(Table.Column.of("Motor")),
                    Stream.of("Delay s", "Flights that say so", "Of", "Predicted short by s")
                        .map(Table.Column::ofNumbers))
                .toList(),
            suits.stream().map(RocketPage::cells).toList());
    blocks.addAll(table.withoutBlankColumns().or());
    return blocks;
  }

  private static List<String> cells(Delays.Suits suits) {
    return List.of(
        suits.motors(),
        Notations.number().show(suits.delay()),
        String.valueOf(suits.says()),
        String.valueOf(suits.of()),
        suits.off().count() == 0 ? "" : String.format(Locale.ROOT, "%.1f", suits.off().mean()));
  }

  private List<Block> traces() {
    return new TracePlot(source.units())
        .of(flights.stream().map(flight -> new TracePlot.Named(named(flight), flight)).toList());
  }

  /** {@code 2026-05-30 on C6-5}. */
  private String named(Flight flight) {
    return date(flight) + flight.motor().map(motor -> " on " + motor).orElse("");
  }

  private static Optional<Length> highest(List<Flight> some) {
    return some.stream()
        .flatMap(flight -> flight.altitude().stream())
        .max(Comparator.comparing(Length::metres));
  }

  private List<Block> fixes() throws Fault {
    List<List<String>> lines = new ArrayList<>();
    for (Stored stored : source.log().list(Kind.FIX)) {
      Fix fix = new Fix(stored.id(), stored.facts());
      if (fix.rocket().equals(Optional.of(rocket.id()))) {
        String done = fix.facts().get(Fix.DONE_ON).map(Object::toString).orElse("done");
        lines.add(
            List.of(
                fix.words(),
                fix.open() ? "open" : done,
                fix.facts().get(Fix.DONE_NOTE).orElse("")));
      }
    }
    return new Table(
            "Fixes", Stream.of("To mend", "Done", "How").map(Table.Column::of).toList(), lines)
        .withoutBlankColumns()
        .or();
  }
}
