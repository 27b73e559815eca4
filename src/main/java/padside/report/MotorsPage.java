package padside.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.insight.Experience;
import padside.motor.MotorText;
import padside.page.Block;
import padside.page.Page;
import padside.page.Prose;
import padside.page.Table;
import padside.plan.Plan;
import padside.plan.PlanDays;
import padside.plan.Taken;
import padside.units.Reading;

/** Which motors were fired, what is left of each lot, and what the plan still needs. */
final class MotorsPage {
  private static final FlightLog.Sought WANTED =
      FlightLog.Sought.of(Taught.ALIKE, Taught.and(List.of(Flight.DAY), Taught.OWN));

  private final Logbook book;
  private final Dates dates;
  private final PageSource source;
  private final Predicate<Facts> failed;
  private final ByLikeness<Fired> shared = new ByLikeness<>(this::fired);
  private final Map<String, Count> types = new TreeMap<>();
  private final Map<RecordId, Count> lots = new HashMap<>();
  private final Taught taught = new Taught();

  /**
   * Motors of one kind.
   *
   * @param some of them: those that failed, or those that are lacking
   */
  private record Count(int motors, int some) {
    static final Count NONE = new Count(0, 0);

    Count and(Count more) {
      return new Count(motors + more.motors, some + more.some);
    }
  }

  private MotorsPage(Logbook book, Dates dates, PageSource source) {
    this.book = book;
    this.dates = dates;
    this.source = source;
    this.failed = FailurePage.failure(source.outcomes());
  }

  static Reading<Page> of(String which, PageSource source) throws Fault {
    Reading<Dates> dates = which.isEmpty() ? Reading.of(Dates.ALL) : Dates.read(which);
    if (dates.value().isEmpty()) {
      return Reading.refused(dates.objection().orElseThrow());
    }
    MotorsPage page = new MotorsPage(source.book(), dates.value().get(), source);
    Register register = Register.of(source.log());
    source.log().each(WANTED, flight -> page.take(flight, register));
    return Reading.of(page.page());
  }

  /** What flights that say the same have fired. */
  private record Fired(
      boolean flown, List<MotorText.Part> parts, Map<RecordId, Integer> lots, int failures) {}

  private Fired fired(Facts alike) {
    return new Fired(
        alike.get(Flight.STATUS).filter(Flight.Status.FLOWN::equals).isPresent(),
        alike.get(Flight.MOTOR).map(line -> MotorText.of(line).parts()).orElse(List.of()),
        MotorText.fired(
            alike.get(Flight.MOTOR), alike.get(Flight.LOT), alike.get(Flight.BOOSTER_LOT)),
        failed.test(alike) ? 1 : 0);
  }

  private void take(FlightLog.Passing flight, Register register) {
    Fired alike = shared.of(flight.alike());
    if (!alike.flown || !dates.holds(register.date(flight.own().get(Flight.DAY)))) {
      return;
    }
    for (MotorText.Part part : alike.parts) {
      add(types, part.motor(), new Count(part.count(), alike.failures));
    }
    alike.lots.forEach((lot, motors) -> add(lots, lot, new Count(motors, alike.failures)));
    taught.take(flight);
  }

  private static <K> void add(Map<K, Count> counts, K key, Count more) {
    counts.merge(key, more, Count::and);
  }

  private Page page() {
    return new Page(
        "Motors and restock · " + dates.words(),
        source.made("Fired in these dates; what is left and planned, as it stands today."),
        Stream.concat(
                Stream.of(
                    new Page.Section("Needed for the plan", plan()),
                    new Page.Section("Fired", fired()),
                    new Page.Section("In the range box", box())),
                new Lessons(Experience.of(book.with(taught.past())), source.outcomes())
                    .sections().stream())
            .toList());
  }

  private List<Block> fired() {
    List<List<String>> lines =
        types.entrySet().stream()
            .map(
                each ->
                    List.of(
                        each.getKey(),
                        String.valueOf(each.getValue().motors),
                        String.valueOf(each.getValue().some)))
            .toList();
    return new Table(
            "Motors fired by type",
            List.of(
                Table.Column.of("Motor"),
                Table.Column.ofNumbers("Fired"),
                Table.Column.ofNumbers("Flights on which one failed")),
            lines)
        .or(Prose.of("No motor was fired in these dates."));
  }

  private List<Block> box() {
    List<List<String>> lines =
        book.lots().stream()
            .sorted(Comparator.comparing(Lot::motor).thenComparing(Lot::code))
            .map(this::line)
            .toList();
    return new Table(
            "Lots",
            List.of(
                Table.Column.of("Motor"),
                Table.Column.of("Lot"),
                Table.Column.of("Bought on"),
                Table.Column.of("Place"),
                Table.Column.ofNumbers("Bought"),
                Table.Column.ofNumbers("Fired"),
                Table.Column.ofNumbers("Left"),
                Table.Column.ofNumbers("Failed"),
                Table.Column.of("Note")),
            lines)
        .withoutBlankColumns()
        .or(Prose.of("No lot was entered yet."));
  }

  private List<String> line(Lot lot) {
    Count count = lots.getOrDefault(lot.id(), Count.NONE);
    return List.of(
        lot.motor(),
        lot.code(),
        lot.facts().get(Lot.BOUGHT_ON).orElse(""),
        lot.facts().get(Lot.PLACE).orElse(""),
        lot.facts().get(Lot.BOUGHT).map(String::valueOf).orElse(""),
        String.valueOf(count.motors),
        book.left(lot).map(String::valueOf).orElse("not counted"),
        String.valueOf(count.some),
        lot.facts().get(Lot.NOTE).orElse(""));
  }

  /** Every day there is something to plan for, one after the other out of the same box. */
  private List<Block> plan() {
    List<Day> days = PlanDays.of(book, source.today()).days();
    List<Flight> planned =
        days.stream().flatMap(day -> book.plannedFor(day.id()).stream()).toList();
    if (planned.isEmpty()) {
      return List.of(Prose.of("Nothing is planned."));
    }
    Map<String, Count> needs = new TreeMap<>();
    List<Taken> taken =
        Plan.of(days.get(0), planned, book).lines().stream()
            .flatMap(line -> line.motors().stream())
            .toList();
    taken.forEach(each -> add(needs, each.motor(), new Count(each.count(), each.lacking())));
    List<List<String>> lines =
        needs.entrySet().stream()
            .map(
                each ->
                    List.of(
                        each.getKey(),
                        String.valueOf(each.getValue().motors),
                        String.valueOf(each.getValue().motors - each.getValue().some),
                        String.valueOf(each.getValue().some)))
            .toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Table(
            "Restock for " + planned.size() + " planned flights",
            Stream.concat(
                    Stream.of(Table.Column.of("Motor")),
                    Stream.of("Planned", "From the box", "To buy").map(Table.Column::ofNumbers))
                .toList(),
            lines));
    if (book.lots().isEmpty()) {
      blocks.add(Prose.of("No lots are kept, so nothing is known to be lacking."));
    }
    return blocks;
  }
}
