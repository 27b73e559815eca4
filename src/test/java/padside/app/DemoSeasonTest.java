package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.OutcomeTable;
import padside.flight.Ruling;
import padside.flight.Weather;
import padside.motor.MotorStack;
import padside.plan.Plan;
import padside.store.LogFolder;

/** The made-up season has something for every screen and keeps its own books straight. */
class DemoSeasonTest {
  private static final MemoryFlightLog LOG = new MemoryFlightLog();
  private static Logbook book;

  @BeforeAll
  static void write() throws Fault {
    DemoSeason.write(LOG);
    book = Logbook.read(LOG, Shipped.motors());
  }

  @Test
  void at_least_forty_flights_were_flown_on_six_days() {
    List<Flight> flown = with(Flight.Status.FLOWN);

    assertThat(flown).hasSizeGreaterThanOrEqualTo(40);
    assertThat(flown.stream().map(Flight::day).distinct()).hasSize(6);
    assertThat(book.days().subList(0, 6))
        .allSatisfy(day -> assertThat(readings(day)).hasSizeGreaterThanOrEqualTo(3));
  }

  @Test
  void the_last_day_waits_for_the_flier() {
    Day last = book.days().get(5);

    assertThat(last.date()).contains(LocalDate.of(2026, 10, 17));
    assertThat(book.flightsOf(last.id()).stream().map(Flight::status))
        .containsSubsequence(Flight.Status.FLOWN, Flight.Status.CARD, Flight.Status.DRAFT)
        .contains(Flight.Status.SCRUBBED);
    assertThat(readings(last).map(each -> each.wind().orElseThrow().gust().metresPerSecond()))
        .as("the wind rises")
        .isSorted();
  }

  @Test
  void a_day_to_come_is_planned_and_short_of_one_motor() {
    Plan plan = Plan.of(book.latestDay().orElseThrow(), book);

    assertThat(book.days()).hasSize(7);
    assertThat(plan.lines()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(plan.lines().stream().map(line -> line.flight().place().orElseThrow()))
        .isSorted()
        .doesNotHaveDuplicates();
    // One E12-4 is left of lot E121 and two flights want it.
    assertThat(plan.lacking()).isEqualTo(1);
    assertThat(plan.lines().get(plan.lines().size() - 1).lacks()).contains("short 1 E12-4");
  }

  @Test
  void each_way_of_an_outcome_to_go_wrong_shows_somewhere() {
    OutcomeTable table = Shipped.outcomes();
    Set<String> aspects =
        table.outcomes().stream()
            .map(OutcomeTable.Outcome::aspect)
            .filter(aspect -> Kind.FLIGHT.column(aspect).isPresent())
            .collect(Collectors.toSet());

    assertThat(aspects)
        .allSatisfy(
            aspect ->
                assertThat(with(Flight.Status.FLOWN))
                    .anyMatch(flight -> mark(table, aspect, flight).equals("MALFUNCTION"))
                    .anyMatch(flight -> mark(table, aspect, flight).equals("NOMINAL"))
                    .noneMatch(flight -> mark(table, aspect, flight).equals("not in the table")));
  }

  @Test
  void every_answer_of_the_check_shows_and_one_was_flown_against() {
    assertThat(verdicts(book.flights())).containsAll(EnumSet.allOf(Ruling.Verdict.class));
    assertThat(with(Flight.Status.FLOWN))
        .filteredOn(flight -> flight.verdict().equals(Optional.of(Ruling.Verdict.NO_GO)))
        .hasSize(1)
        .allMatch(flight -> flight.facts().get(Flight.AGAINST).isPresent());
    assertThat(book.flights())
        .filteredOn(flight -> flight.facts().get(Flight.AGAINST).isPresent())
        .hasSize(1);
    assertThat(with(Flight.Status.DRAFT)).allMatch(flight -> flight.verdict().isEmpty());
  }

  @Test
  void fixes_are_open_and_done_and_one_grounds_a_rocket() {
    assertThat(book.fixes()).anyMatch(fix -> !fix.open());
    assertThat(book.fixes())
        .filteredOn(Fix::open)
        .anyMatch(fix -> fix.severity() == Fix.Severity.GROUNDS_IT)
        .anyMatch(fix -> fix.severity() == Fix.Severity.LOOK_AT);
  }

  @Test
  void a_misfire_conditions_and_dates_of_mending_are_told() {
    assertThat(book.attempts()).hasSize(1);
    assertThat(book.attemptsOf(book.attempts().get(0).flight().orElseThrow())).hasSize(1);
    assertThat(with(Flight.Status.FLOWN))
        .filteredOn(flight -> flight.facts().get(Flight.CONDITION).isPresent())
        .hasSize(5);
    assertThat(book.fixes())
        .filteredOn(fix -> !fix.open())
        .allMatch(fix -> fix.facts().get(Fix.DONE_ON).isPresent());
  }

  @Test
  void nothing_refers_to_what_is_not_there() {
    Set<String> ids = records(LOG).map(record -> record.id().text()).collect(Collectors.toSet());

    assertThat(Stream.of(Kind.values()).flatMap(kind -> references(LOG, kind)))
        .hasSizeGreaterThan(200)
        .allMatch(ids::contains);
  }

  @Test
  void every_motor_is_in_the_table_and_was_left_in_its_lot() {
    Map<RecordId, Integer> fired = new HashMap<>();
    for (Action action : LOG.actions()) {
      for (Action.Change change : action.changes()) {
        if (change.kind() == Kind.FLIGHT
            && change.facts().get(Flight.STATUS).equals(Optional.of(Flight.Status.FLOWN))) {
          Flight flight = book.flight(change.record().orElseThrow()).orElseThrow();
          MotorStack motors =
              book.motors().chooseAll(flight.motor().orElseThrow()).value().orElseThrow();
          assertThat(flight.lot()).hasValueSatisfying(lot -> isOf(lot, motors.top()));
          assertThat(flight.boosterLot().isPresent()).isEqualTo(motors.isStaged());
          flight.boosterLot().ifPresent(lot -> isOf(lot, motors.booster().orElseThrow()));
          flight.fired().forEach((lot, count) -> fired.merge(lot, count, Integer::sum));
        }
      }
    }
    assertThat(fired)
        .allSatisfy((lot, count) -> assertThat(count).isLessThanOrEqualTo(bought(lot)));
    assertThat(book.lots())
        .allMatch(lot -> book.left(lot).orElseThrow() >= 0)
        .allMatch(lot -> book.motors().choose(lot.motor()).value().isPresent());
  }

  private static void isOf(RecordId lot, MotorStack.Stage stage) {
    assertThat(book.lot(lot).orElseThrow().motor()).isEqualTo(stage.motor().designation());
  }

  private static int bought(RecordId lot) {
    return book.lot(lot).orElseThrow().facts().get(Lot.BOUGHT).orElseThrow();
  }

  @Test
  void a_cluster_and_a_stack_were_flown_as_well() {
    List<MotorStack> several =
        with(Flight.Status.FLOWN).stream()
            .map(flight -> book.motors().chooseAll(flight.motor().orElseThrow()).value())
            .flatMap(Optional::stream)
            .filter(MotorStack::isComplex)
            .toList();

    assertThat(several).anyMatch(MotorStack::isStaged);
    assertThat(several).anyMatch(stack -> stack.top().count() == 3);
  }

  @Test
  void every_field_has_its_place_named_edges_and_something_beyond_them() {
    assertThat(book.fields())
        .hasSize(3)
        .allSatisfy(
            field -> {
              assertThat(field.facts().get(Field.LATITUDE)).isPresent();
              assertThat(field.facts().get(Field.LONGITUDE)).isPresent();
              assertThat(field.edges())
                  .hasSizeGreaterThan(3)
                  .allMatch(edge -> !edge.name().isEmpty());
              assertThat(field.edges()).anyMatch(edge -> !edge.beyond().isEmpty());
            });
    assertThat(book.fields()).anyMatch(field -> !field.hazards().isEmpty());
  }

  @Test
  void everything_happens_in_the_order_it_is_kept() {
    assertThat(book.days().stream().map(day -> day.date().orElseThrow())).isSorted();
    List<Instant> instants = new ArrayList<>();
    for (Day day : book.days()) {
      List<Instant> liftoffs =
          book.flightsOf(day.id()).stream()
              .flatMap(flight -> flight.facts().get(Flight.LIFTOFF_AT).stream())
              .toList();
      List<Instant> looks = readings(day).map(each -> each.at().orElseThrow()).toList();
      assertThat(looks).isSorted();
      assertThat(Stream.concat(liftoffs.stream(), looks.stream()))
          .allMatch(at -> Optional.of(at.atZone(ZoneOffset.UTC).toLocalDate()).equals(day.date()));
      instants.addAll(liftoffs);
    }
    assertThat(instants).isSorted();
  }

  @Test
  void what_was_typed_stands_beside_the_value() {
    Flight third = book.flightsOf(book.days().get(0).id()).get(2);

    assertThat(third.facts().typed(Flight.MASS)).contains("1.2oz");
    // The avoirdupois ounce is 28.349523125 g: international yard and pound agreement, 1959.
    assertThat(third.facts().get(Flight.MASS).orElseThrow().inGrams())
        .isCloseTo(34.01942775, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(third.facts().typed(Flight.WIND_MEAN)).contains("2g4 SW");
    assertThat(third.facts().typed(Flight.ALTITUDE))
        .hasValueSatisfying(text -> assertThat(text).endsWith(" ft"));
  }

  @Test
  void it_says_that_it_is_made_up() {
    assertThat(book.days())
        .allSatisfy(
            day ->
                assertThat(day.facts().get(Day.NOTE).orElse(""))
                    .startsWith("Made-up day")
                    .contains("flight model", "scatter"));
  }

  @Test
  void a_second_writing_is_the_same() throws Fault {
    MemoryFlightLog again = new MemoryFlightLog();
    DemoSeason.write(again);

    assertThat(again.actions()).isEqualTo(LOG.actions());
  }

  @Test
  void the_log_in_a_folder_gives_it_back(@TempDir Path folder) throws Fault {
    try (LogFolder log = LogFolder.open(folder, new ThisMachine())) {
      DemoSeason.write(log);
    }
    try (LogFolder log = LogFolder.open(folder, new ThisMachine())) {
      for (Kind kind : Kind.values()) {
        assertThat(withoutIds(log, kind)).as(kind.code()).isEqualTo(withoutIds(LOG, kind));
      }
      assertThat(Logbook.read(log, Shipped.motors()).flights().stream().map(Flight::altitude))
          .as("newest first")
          .isEqualTo(book.flights().stream().map(Flight::altitude).toList());
    }
  }

  /** The facts of every record of a kind, references by what they name in order of creation. */
  private static List<Map<String, Facts.Cell>> withoutIds(FlightLog log, Kind kind) throws Fault {
    Map<Object, Integer> order = new HashMap<>();
    records(log).forEach(record -> order.put(record.id().text(), order.size()));
    List<Map<String, Facts.Cell>> all = new ArrayList<>();
    for (FlightLog.Stored record : log.list(kind)) {
      Map<String, Facts.Cell> cells = new HashMap<>(record.facts().cells());
      cells.values().removeIf(Facts.Cell.emptied()::equals);
      cells.replaceAll(
          (name, cell) ->
              new Facts.Cell(
                  cell.value().map(value -> order.containsKey(value) ? order.get(value) : value),
                  cell.typed()));
      all.add(cells);
    }
    return all;
  }

  private static Stream<FlightLog.Stored> records(FlightLog log) {
    return Stream.of(Kind.values()).flatMap(kind -> list(log, kind));
  }

  private static Stream<String> references(FlightLog log, Kind kind) {
    return list(log, kind)
        .flatMap(
            record ->
                kind.columns().stream()
                    .filter(column -> column.storage() == Column.Storage.REFERENCE)
                    .map(column -> record.facts().get(column).orElse(null))
                    .filter(Objects::nonNull)
                    .map(Object::toString));
  }

  private static Stream<FlightLog.Stored> list(FlightLog log, Kind kind) {
    try {
      return log.list(kind).stream();
    } catch (Fault e) {
      throw new AssertionError(e);
    }
  }

  private static List<Flight> with(Flight.Status status) {
    return book.flights().stream().filter(flight -> flight.status() == status).toList();
  }

  private static Stream<Weather> readings(Day day) {
    return book.weather().stream().filter(each -> each.day().equals(Optional.of(day.id())));
  }

  private static Set<Ruling.Verdict> verdicts(List<Flight> flights) {
    return flights.stream()
        .flatMap(flight -> flight.verdict().stream())
        .collect(Collectors.toSet());
  }

  /** How the table judges what a flight's record says; empty where it says nothing. */
  private static String mark(OutcomeTable table, String aspect, Flight flight) {
    Optional<String> code =
        Optional.ofNullable(flight.facts().cells().get(aspect))
            .flatMap(Facts.Cell::value)
            .map(Object::toString);
    return code.map(
            each ->
                table
                    .find(aspect, each)
                    .map(outcome -> outcome.mark().name())
                    .orElse("not in the table"))
        .orElse("");
  }
}
