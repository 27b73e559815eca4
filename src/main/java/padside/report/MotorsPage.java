package padside.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
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
  private static final List<Column<?>> WANTED =
      List.of(
          Flight.STATUS,
          Flight.DAY,
          Flight.MOTOR,
          Flight.LOT,
          Flight.BOOSTER_LOT,
          Flight.BURN,
          Flight.EJECTION);

  private final Logbook book;
  private final Dates dates;
  private final PageSource source;
  private final Predicate<Facts> failed;
  private final Map<String, int[]> types = new TreeMap<>();
  private final Map<RecordId, int[]> lots = new HashMap<>();

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
    source
        .log()
        .each(WANTED, stored -> page.take(new Flight(stored.id(), stored.facts()), register));
    return Reading.of(page.page());
  }

  private void take(Flight flight, Register register) {
    if (flight.status() != Flight.Status.FLOWN || !dates.holds(register.date(flight.day()))) {
      return;
    }
    int failures = failed.test(flight.facts()) ? 1 : 0;
    flight.motor().map(line -> MotorText.of(line).parts()).orElse(List.of()).stream()
        .forEach(part -> add(types, part.motor(), part.count(), failures));
    flight.fired().forEach((lot, motors) -> add(lots, lot, motors, failures));
  }

  private static <K> void add(Map<K, int[]> counts, K key, int motors, int failures) {
    int[] count = counts.computeIfAbsent(key, any -> new int[2]);
    count[0] += motors;
    count[1] += failures;
  }

  private Page page() {
    return new Page(
        "Motors and restock · " + dates.words(),
        source.made("Fired in these dates; what is left and planned, as it stands today."),
        List.of(
            new Page.Section("Needed for the plan", plan()),
            new Page.Section("Fired", fired()),
            new Page.Section("In the range box", box())));
  }

  private List<Block> fired() {
    List<List<String>> lines =
        types.entrySet().stream()
            .map(
                each ->
                    List.of(
                        each.getKey(),
                        String.valueOf(each.getValue()[0]),
                        String.valueOf(each.getValue()[1])))
            .toList();
    return lines.isEmpty()
        ? List.of(Prose.of("No motor was fired in these dates."))
        : List.of(
            new Table(
                "Motors fired by type",
                List.of(
                    Table.Column.of("Motor"),
                    Table.Column.ofNumbers("Fired"),
                    Table.Column.ofNumbers("Flights on which one failed")),
                lines));
  }

  private List<Block> box() {
    List<List<String>> lines =
        book.lots().stream()
            .sorted(Comparator.comparing(Lot::motor).thenComparing(Lot::code))
            .map(this::line)
            .toList();
    return lines.isEmpty()
        ? List.of(Prose.of("No lot was entered yet."))
        : List.of(
            new Table(
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
                .withoutBlankColumns());
  }

  private List<String> line(Lot lot) {
    int[] count = lots.getOrDefault(lot.id(), new int[2]);
    return List.of(
        lot.motor(),
        lot.code(),
        lot.facts().get(Lot.BOUGHT_ON).orElse(""),
        lot.facts().get(Lot.PLACE).orElse(""),
        lot.facts().get(Lot.BOUGHT).map(String::valueOf).orElse(""),
        String.valueOf(count[0]),
        book.left(lot).map(String::valueOf).orElse("not counted"),
        String.valueOf(count[1]),
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
    Map<String, int[]> needs = new TreeMap<>();
    List<Taken> taken =
        Plan.of(days.get(0), planned, book).lines().stream()
            .flatMap(line -> line.motors().stream())
            .toList();
    taken.forEach(each -> add(needs, each.motor(), each.count(), each.lacking()));
    List<List<String>> lines =
        needs.entrySet().stream()
            .map(
                each ->
                    List.of(
                        each.getKey(),
                        String.valueOf(each.getValue()[0]),
                        String.valueOf(each.getValue()[0] - each.getValue()[1]),
                        String.valueOf(each.getValue()[1])))
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
