package padside.report;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Attempt;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.FlightLog.FlightQuery;
import padside.flight.Logbook;
import padside.flight.Rocket;
import padside.page.Block;
import padside.page.Page;
import padside.page.Prose;
import padside.page.Table;
import padside.units.Reading;

/** All that is worth keeping of one day. */
final class DayPage {
  private final Day day;
  private final List<Flight> flights;
  private final Logbook book;
  private final PageSource source;
  private final FlightRows rows;

  private DayPage(Day day, Logbook book, PageSource source) throws Fault {
    this.day = day;
    this.book = book;
    this.source = source;
    this.rows = FlightRows.of(source);
    this.flights =
        source
            .log()
            .flights(new FlightQuery(Optional.empty(), Optional.of(day.id()), Integer.MAX_VALUE))
            .stream()
            .map(stored -> new Flight(stored.id(), stored.facts()))
            .filter(flight -> !flight.isPlanned())
            .collect(Collectors.collectingAndThen(Collectors.toList(), DayPage::inOrder));
  }

  /** Those of old logs have no place: the first came first. */
  private static List<Flight> inOrder(List<Flight> newestFirst) {
    List<Flight> order = new ArrayList<>();
    newestFirst.forEach(flight -> order.add(0, flight));
    order.sort(Comparator.comparing(flight -> flight.place().orElse(0)));
    return order;
  }

  static Reading<Page> of(String which, PageSource source) throws Fault {
    Logbook book = source.book();
    Reading<Day> day = day(which, book, source.today());
    return day.value().isEmpty()
        ? Reading.refused(day.objection().orElseThrow())
        : Reading.of(new DayPage(day.value().get(), book, source).page());
  }

  private static Reading<Day> day(String which, Logbook book, LocalDate today) {
    if (which.isEmpty()) {
      return book.latestDay(day -> isFlown(day, book))
          .or(() -> book.latestDay(day -> day.date().filter(d -> !d.isAfter(today)).isPresent()))
          .or(book::latestDay)
          .map(Reading::of)
          .orElseGet(() -> Reading.refused("There is no day in this log yet; o opens one."));
    }
    Optional<Day> named = book.day(new RecordId(which));
    return named.map(Reading::of).orElseGet(() -> dated(which, book));
  }

  private static boolean isFlown(Day day, Logbook book) {
    return book.flightsOf(day.id()).stream()
        .anyMatch(flight -> flight.status() == Flight.Status.FLOWN);
  }

  /** A date, and behind it part of the field's name where there were several that day. */
  private static Reading<Day> dated(String which, Logbook book) {
    String[] parts = which.split("\\s+", 2);
    LocalDate date;
    try {
      date = LocalDate.parse(parts[0]);
    } catch (DateTimeParseException e) {
      return Reading.refused(
          Reading.echo(which) + " is no date; write it like 2026-05-02, or leave it out.");
    }
    String place = parts.length == 1 ? "" : parts[1].toLowerCase(Locale.ROOT);
    List<Day> days =
        book.days().stream()
            .filter(day -> day.date().equals(Optional.of(date)))
            .filter(day -> field(day, book).toLowerCase(Locale.ROOT).contains(place))
            .toList();
    if (days.size() > 1 && place.isEmpty()) {
      return Reading.refused(
          "There are several days on "
              + date
              + ": "
              + days.stream().map(day -> field(day, book)).collect(Collectors.joining(", "))
              + ". Write the field behind the date.");
    }
    return days.stream()
        .reduce((first, second) -> second)
        .map(Reading::of)
        .orElseGet(
            () ->
                Reading.refused(
                    "There is no day "
                        + Reading.echo(which)
                        + " in this log; leave it out for the"
                        + " last one."));
  }

  private static String field(Day day, Logbook book) {
    return day.field().flatMap(book::field).map(Field::name).orElse("field not named");
  }

  private Page page() {
    String date = day.date().map(FlightWords::date).orElse("day without a date");
    return new Page(
        "Day sheet · " + date + ", " + field(day, book),
        source.made("What was flown that day, as the log has it."),
        List.of(
            new Page.Section("", head()),
            new Page.Section("Weather", new DayWeather(source).of(book.weatherOf(day.id()))),
            new Page.Section("Flights", flown()),
            new Page.Section("Landings", landings()),
            new Page.Section("Predicted and measured", compared()),
            new Page.Section("Altitude traces", traces()),
            new Page.Section("To mend", fixes())));
  }

  private List<Block> head() {
    List<Block> blocks = new ArrayList<>();
    day.fireBan().filter(ban -> ban).ifPresent(ban -> blocks.add(Prose.notice("FIRE BAN.")));
    day.permission()
        .ifPresent(given -> blocks.add(Prose.of(given ? "Permission given." : "No permission.")));
    note(day.facts().get(Day.NOTE)).ifPresent(blocks::add);
    DayTally.of(flights, source.outcomes()).lines(book, source.units()).stream()
        .filter(line -> !line.isBlank())
        .map(Prose::of)
        .forEach(blocks::add);
    return blocks;
  }

  private static Optional<Block> note(Optional<String> text) {
    return text.filter(note -> !note.isBlank()).map(Prose::of);
  }

  private List<Block> flown() {
    if (flights.isEmpty()) {
      return List.of(Prose.of("Nothing was flown or begun."));
    }
    List<Table.Column> columns =
        new ArrayList<>(
            List.of(
                Table.Column.ofNumbers("No"),
                Table.Column.of("Rocket"),
                Table.Column.of("Flier"),
                Table.Column.of("Lot")));
    columns.addAll(rows.columns());
    List<List<String>> lines = new ArrayList<>();
    for (Flight flight : flights) {
      List<String> line =
          new ArrayList<>(
              List.of(
                  String.valueOf(lines.size() + 1),
                  rocket(flight),
                  flight.flier().orElse(""),
                  flight.lot().flatMap(book::lot).map(lot -> lot.code()).orElse("")));
      line.addAll(rows.cells(flight));
      lines.add(line);
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Table("Flights in order", columns, lines).withoutBlankColumns());
    blocks.addAll(remarks());
    return blocks;
  }

  private String rocket(Flight flight) {
    return flight.rocket().flatMap(book::rocket).map(Rocket::name).orElse("no rocket named");
  }

  /** What was flown against the check, and what would not light. */
  private List<Block> remarks() {
    List<Block> remarks = new ArrayList<>();
    for (Flight flight : flights) {
      flight
          .facts()
          .get(Flight.AGAINST)
          .ifPresent(
              why -> remarks.add(Prose.of(rocket(flight) + " was flown against NO-GO: " + why)));
      for (Attempt misfire : book.attemptsOf(flight.id())) {
        String cause =
            misfire
                .facts()
                .get(Attempt.CAUSE)
                .map(code -> source.outcomes().words(Attempt.CAUSE.name(), code))
                .orElse("cause not told");
        remarks.add(Prose.of(rocket(flight) + " misfired: " + cause));
      }
    }
    return remarks;
  }

  private List<Block> landings() {
    Optional<Field> field = day.field().flatMap(book::field);
    return LandingMap.of(field, flights, source.units())
        .<List<Block>>map(List::of)
        .orElse(List.of());
  }

  private List<Block> compared() {
    List<List<String>> lines = new ArrayList<>();
    for (int i = 0; i < flights.size(); i++) {
      String name = (i + 1) + " " + rocket(flights.get(i));
      Comparison.of(flights.get(i).facts(), book.motors(), source.units()).stream()
          .filter(each -> each.measured().isPresent())
          .forEach(
              each ->
                  lines.add(
                      List.of(
                          name,
                          each.label(),
                          each.predicted().orElse(""),
                          each.measured().orElse(""),
                          each.difference().strip())));
    }
    List<Block> blocks = new ArrayList<>();
    if (!lines.isEmpty()) {
      blocks.add(
          new Table(
              "What was measured",
              Stream.of("Flight", "What", "Predicted", "Measured", "Difference")
                  .map(Table.Column::of)
                  .toList(),
              lines));
    }
    List<padside.page.Plot.Point> points = new ArrayList<>();
    for (int i = 0; i < flights.size(); i++) {
      rows.point(flights.get(i), String.valueOf(i + 1)).ifPresent(points::add);
    }
    rows.altitudes(points).ifPresent(blocks::add);
    return blocks;
  }

  private List<Block> traces() {
    List<TracePlot.Named> named = new ArrayList<>();
    for (Flight flight : flights) {
      named.add(
          new TracePlot.Named("flight " + (named.size() + 1) + ", " + rocket(flight), flight));
    }
    return new TracePlot(source.units()).of(named);
  }

  private List<Block> fixes() {
    List<List<String>> lines =
        book.fixes().stream()
            .filter(fix -> flights.stream().anyMatch(flight -> raised(fix, flight)))
            .map(
                fix ->
                    List.of(
                        fix.rocket().flatMap(book::rocket).map(Rocket::name).orElse(""),
                        fix.words(),
                        fix.open() ? "open" : "done"))
            .toList();
    return new Table(
            "What the day left to mend",
            Stream.of("Rocket", "To mend", "Now").map(Table.Column::of).toList(),
            lines)
        .or();
  }

  private static boolean raised(Fix fix, Flight flight) {
    return fix.facts().get(Fix.FLIGHT).equals(Optional.of(flight.id()));
  }
}
