package padside.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.page.Bars;
import padside.page.Block;
import padside.page.Form;
import padside.page.Page;
import padside.page.Prose;
import padside.page.Table;
import padside.units.Length;
import padside.units.Reading;

/** What a year, or any stretch of dates, has come to. */
final class SeasonPage {
  /** What is rarer stands in the whole counts alone. */
  private static final int MOST_KINDS = 40;

  private final Register register;
  private final Dates dates;
  private final PageSource source;
  private final SeasonCount count;
  private final Measure<Length> altitude;

  private SeasonPage(Register register, Dates dates, PageSource source) {
    this.register = register;
    this.dates = dates;
    this.source = source;
    this.count = new SeasonCount(register, source, dates);
    this.altitude = Measure.altitude(source.units());
  }

  static Reading<Page> of(String which, PageSource source) throws Fault {
    Register register = Register.of(source.log());
    Reading<Dates> dates =
        which.isEmpty() ? Reading.of(lastYear(register, source)) : Dates.read(which);
    if (dates.value().isEmpty()) {
      return Reading.refused(dates.objection().orElseThrow());
    }
    SeasonPage season = new SeasonPage(register, dates.value().get(), source);
    source.log().each(SeasonCount.WANTED, season.count::take);
    return Reading.of(season.page());
  }

  /** Of the days that have come; those planned ahead are no season yet. */
  private static Dates lastYear(Register register, PageSource source) {
    return Dates.lastYear(
        register.dates().stream().filter(date -> !date.isAfter(source.today())).toList());
  }

  private Page page() throws Fault {
    return new Page(
        "Season · " + dates.words(),
        source.made("Every flight of these dates that the log has."),
        count.all.flown == 0
            ? List.of(Page.Section.of("", Prose.of("Nothing was flown in these dates.")))
            : sections());
  }

  private List<Page.Section> sections() throws Fault {
    List<Page.Section> sections = new ArrayList<>();
    sections.add(new Page.Section("", List.of(figures())));
    sections.add(new Page.Section("By motor class", List.of(classes())));
    sections.add(new Page.Section("Altitudes", altitudes()));
    sections.add(new Page.Section("Flown days", List.of(days())));
    sections.add(new Page.Section("Rockets", List.of(rockets())));
    sections.add(new Page.Section("Malfunctions", amiss()));
    sections.addAll(new Lessons(source.after(count.taught.past()), source.outcomes()).sections());
    return sections;
  }

  private Form figures() {
    List<Form.Entry> entries = new ArrayList<>();
    entries.add(entry("Flights", count.all.flown));
    entries.add(
        entry("Days flown", (int) count.byDay.keySet().stream().flatMap(Optional::stream).count()));
    entries.add(entry("Rockets flown", count.byRocket.size()));
    entries.add(
        entry("Motors fired", count.motors.values().stream().mapToInt(Integer::intValue).sum()));
    entries.add(entry("With a malfunction", count.all.amiss));
    entries.add(entry("Called off", count.scrubbed));
    count
        .all
        .highest()
        .map(altitude.notation()::show)
        .ifPresent(best -> entries.add(Form.Entry.of("Highest", best)));
    return new Form("In figures", entries, false);
  }

  private static Form.Entry entry(String label, int number) {
    return Form.Entry.of(label, String.valueOf(number));
  }

  private Bars classes() {
    List<Bars.Bar> bars =
        count.byClass.entrySet().stream()
            .map(
                each ->
                    new Bars.Bar(
                        each.getKey(),
                        List.of(
                            each.getValue().flown - each.getValue().amiss, each.getValue().amiss)))
            .toList();
    return new Bars(
        "Flights by motor class",
        "Of " + count.all.flown + " flights " + count.all.amiss + " had a malfunction.",
        "Class",
        List.of("without malfunction", "with a malfunction"),
        bars);
  }

  private List<Block> altitudes() {
    List<Block> blocks = new ArrayList<>();
    FlightRows rows = FlightRows.of(source);
    if (!count.shares.isEmpty()) {
      blocks.add(
          Prose.of(
              "Measured over predicted altitude: half of "
                  + count.shares.size()
                  + " flights lie below "
                  + Math.round(100 * middle(count.shares))
                  + " %."));
    }
    rows.altitudes(count.points).ifPresent(blocks::add);
    return blocks;
  }

  private static double middle(List<Double> values) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }

  private Table days() {
    List<Map.Entry<Optional<RecordId>, SeasonCount.Group>> days =
        new ArrayList<>(count.byDay.entrySet());
    days.sort(
        Comparator.comparing(
            (Map.Entry<Optional<RecordId>, SeasonCount.Group> day) ->
                register.date(day.getKey()).map(Object::toString).orElse("")));
    return table(
        "Days with a flight",
        List.of(Table.Column.of("Date"), Table.Column.of("Field")),
        days.stream()
            .map(
                day ->
                    line(
                        Stream.of(
                            register.date(day.getKey()).map(Object::toString).orElse("no date"),
                            register.field(day.getKey()).map(Field::name).orElse("")),
                        day.getValue()))
            .toList());
  }

  private Table rockets() {
    return table(
        "Rockets, the most flown first",
        List.of(Table.Column.of("Rocket")),
        count.byRocket.entrySet().stream()
            .sorted(
                Comparator.comparing(
                        (Map.Entry<Optional<RecordId>, SeasonCount.Group> each) ->
                            -each.getValue().flown)
                    .thenComparing(each -> register.rocket(each.getKey())))
            .map(each -> line(Stream.of(register.rocket(each.getKey())), each.getValue()))
            .toList());
  }

  private Table table(String caption, List<Table.Column> heads, List<List<String>> lines) {
    List<Table.Column> columns = new ArrayList<>(heads);
    columns.add(Table.Column.ofNumbers("Flights"));
    columns.add(Table.Column.ofNumbers("With a malfunction"));
    columns.add(Table.Column.ofNumbers(altitude.heading("Highest")));
    return new Table(caption, columns, lines).withoutBlankColumns();
  }

  private List<String> line(Stream<String> heads, SeasonCount.Group group) {
    return Stream.concat(
            heads,
            Stream.of(
                String.valueOf(group.flown),
                String.valueOf(group.amiss),
                altitude.cell(group.highest())))
        .toList();
  }

  private List<Block> amiss() {
    if (count.amiss.isEmpty()) {
      return List.of(Prose.of("None was told."));
    }
    List<List<String>> lines =
        count.amiss.entrySet().stream()
            .sorted(Comparator.comparing(each -> -each.getValue()))
            .limit(MOST_KINDS)
            .map(each -> List.of(each.getKey(), String.valueOf(each.getValue())))
            .toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Table(
            "What went wrong",
            List.of(Table.Column.of("Outcome"), Table.Column.ofNumbers("Flights")),
            lines));
    int more = count.amiss.size() - lines.size();
    if (more > 0) {
      blocks.add(Prose.of("And " + more + " further kinds, each rarer than these."));
    }
    return blocks;
  }
}
