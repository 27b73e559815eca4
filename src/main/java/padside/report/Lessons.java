package padside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.insight.Burns;
import padside.insight.Delays;
import padside.insight.Experience;
import padside.insight.Failures;
import padside.insight.Interval;
import padside.insight.Reliability;
import padside.page.Block;
import padside.page.Intervals;
import padside.page.Page;
import padside.page.Plot;
import padside.page.Prose;
import padside.page.Table;

/** What some flights teach of lots and delays: in words, as a chart, as a table. */
final class Lessons {
  private static final double PERCENT = 100;

  /** As many rows as fit on a printed page. */
  private static final int MOST_DRAWN = 24;

  private final Experience known;
  private final Reliability reliability;
  private final Delays delays;

  Lessons(Experience known, OutcomeTable outcomes) {
    this.known = known;
    this.reliability = new Reliability(known, outcomes);
    this.delays = Delays.of(known);
  }

  /** Both as sections of a page; empty where nothing is known. */
  List<Page.Section> sections() {
    return List.of(
        new Page.Section("How the lots did", lots()), new Page.Section("Delays", delays()));
  }

  private List<Block> lots() {
    List<Lot> fired = reliability.suspectFirst();
    if (fired.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    fired.stream()
        .filter(lot -> reliability.of(lot).isMarked())
        .map(this::marked)
        .forEach(blocks::add);
    if (blocks.isEmpty()) {
      blocks.add(Prose.of("No motor of a lot was told to have failed."));
    }
    List<Lot> told = fired.stream().filter(lot -> reliability.of(lot).told() > 0).toList();
    if (!told.isEmpty()) {
      blocks.add(chart(told));
    }
    blocks.add(table("Lots, suspect first", "Lot", fired.stream().map(this::line).toList()));
    List<List<String>> types = lines(reliability.byType());
    types.addAll(lines(reliability.byDateCode()));
    blocks.add(table("By type, and by the maker's date code", "Type", types));
    return blocks;
  }

  /** The sentences on a lot that has failed, the same as everywhere. */
  private Prose marked(Lot lot) {
    Burns burns = reliability.of(lot);
    return Prose.of(
        Stream.concat(
                Stream.of(
                    Reliability.name(lot) + ": " + burns.words() + ".", burns.failures().next()),
                reliability.contrast(lot).map(Reliability.Contrast::words).stream())
            .collect(Collectors.joining(" ")));
  }

  private Intervals chart(List<Lot> told) {
    List<Lot> drawn = told.subList(0, Math.min(MOST_DRAWN, told.size()));
    String which =
        drawn.size() < told.size()
            ? "The " + MOST_DRAWN + " most suspect of " + told.size() + " lots. "
            : "";
    return new Intervals(
        "Share of each lot that failed",
        which + "The square is the share seen, the line " + Failures.HELD + ".",
        "Lot",
        new Plot.Axis("failed", "%"),
        0,
        PERCENT,
        drawn.stream().map(this::share).toList());
  }

  private Intervals.Interval share(Lot lot) {
    Failures failures = reliability.of(lot).failures();
    Interval held = failures.exact();
    return new Intervals.Interval(
        Reliability.name(lot),
        PERCENT * held.low(),
        PERCENT * failures.failed() / failures.of(),
        PERCENT * held.high(),
        failures.failed() + " of " + failures.of());
  }

  private static Table table(String caption, String noun, List<List<String>> lines) {
    List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.of(noun)));
    columns.add(Table.Column.of("Date code"));
    Stream.of("Fired", "Told of", "Failed", "Burst", "At least %", "At most %", "Next works %")
        .map(Table.Column::ofNumbers)
        .forEach(columns::add);
    columns.add(Table.Column.of("In words"));
    return new Table(caption, columns, lines).withoutBlankColumns();
  }

  private List<String> line(Lot lot) {
    return line(Reliability.name(lot), lot.dateCode().orElse(""), reliability.of(lot));
  }

  private static List<List<String>> lines(Map<String, Burns> burns) {
    return burns.entrySet().stream()
        .map(each -> line(each.getKey(), "", each.getValue()))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  private static List<String> line(String name, String code, Burns burns) {
    Optional<Failures> failures = Optional.of(burns.failures()).filter(each -> each.of() > 0);
    return List.of(
        name,
        code,
        "" + burns.fired(),
        "" + burns.told(),
        "" + burns.failed(),
        "" + burns.burst(),
        percent(failures, each -> each.exact().low()),
        percent(failures, each -> each.exact().high()),
        percent(failures, each -> each.allWork(1)),
        burns.words());
  }

  private static String percent(Optional<Failures> of, ToDoubleFunction<Failures> share) {
    return of.map(each -> one(PERCENT * share.applyAsDouble(each))).orElse("");
  }

  private List<Block> delays() {
    List<Delays.AsFlown> motors = delays.byMotor();
    if (motors.isEmpty()) {
      return List.of();
    }
    List<Row> rows = new ArrayList<>();
    motors.forEach(motor -> rows.add(new Row(motor.motor(), motor)));
    for (Lot lot : known.lots()) {
      delays.of(lot).ifPresent(flown -> rows.add(new Row(Reliability.name(lot), flown)));
    }
    List<Block> blocks = new ArrayList<>();
    motors.stream()
        .map(Delays.AsFlown::words)
        .map(words -> Prose.of(words + "."))
        .forEach(blocks::add);
    blocks.add(offLabel(rows));
    blocks.add(measured(rows));
    return blocks;
  }

  /** Delays of a type or of a lot. */
  private record Row(String name, Delays.AsFlown flown) {
    double off() {
      return flown.measured().mean() - flown.label();
    }

    Interval mean() {
      double mean = flown.measured().mean();
      return flown.mean().orElse(new Interval(mean, mean));
    }

    Intervals.Interval drawn() {
      return new Intervals.Interval(
          name,
          mean().low() - flown.label(),
          off(),
          mean().high() - flown.label(),
          one(flown.measured().mean()) + " s for " + one(flown.label()));
    }

    List<String> cells() {
      return List.of(
          name,
          one(flown.label()),
          "" + flown.measured().count(),
          one(flown.measured().mean()),
          flown.mean().map(mean -> one(mean.low())).orElse(""),
          flown.mean().map(mean -> one(mean.high())).orElse(""),
          one(off()),
          flown.isBeyond() ? "beyond certification" : "");
    }
  }

  private static Intervals offLabel(List<Row> rows) {
    List<Row> drawn = rows.subList(0, Math.min(MOST_DRAWN, rows.size()));
    double most =
        drawn.stream()
            .mapToDouble(
                row -> Math.max(row.off(), Math.min(2, row.mean().high() - row.flown.label())))
            .max()
            .orElse(1);
    double least =
        drawn.stream()
            .mapToDouble(
                row -> Math.min(row.off(), Math.max(-2, row.mean().low() - row.flown.label())))
            .min()
            .orElse(-1);
    return new Intervals(
        "Delays measured against the label",
        "The square is the mean of those measured less the label, which is 0; the line its 95 %"
            + " interval, which may go on beyond the chart.",
        "Motor",
        new Plot.Axis("measured less label", "s"),
        Math.floor(Math.min(-1, least)),
        Math.ceil(Math.max(1, most)),
        drawn.stream().map(Row::drawn).toList());
  }

  private static Table measured(List<Row> rows) {
    List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.of("Motor")));
    Stream.of("Label s", "Flown", "Mean s", "From s", "To s", "Off label s")
        .map(Table.Column::ofNumbers)
        .forEach(columns::add);
    columns.add(Table.Column.of("Judged"));
    return new Table(
            "Delays as flown, by motor and by lot; " + Delays.REACTION,
            columns,
            rows.stream().map(Row::cells).toList())
        .withoutBlankColumns();
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value + 0.0);
  }
}
