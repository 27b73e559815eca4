package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.insight.Traced;
import padside.trace.Found;
import padside.trace.TraceFinding;
import padside.units.Length;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** What was found in a trace beside what the flight says, in words. */
public final class TraceWords {
  private static final double LEAST_WARMTH = 0.01;
  private static final Pattern NONE = Pattern.compile("-?0(?:\\.0+)?( .*)");
  private static final Pattern DECIMALS = Pattern.compile("[0-9]\\.([0-9]+)");

  private final TraceFinding trace;
  private final Traced traced;
  private final UnitSystem units;
  private final List<Row> rows = new ArrayList<>();

  /**
   * One thing looked for.
   *
   * @param found its value and how far it may be off, or why it is not there
   * @param said what the flight says and what becomes of that; perhaps empty
   */
  public record Row(String label, String found, String said) {
    /** In one line, its parts below each other in a column of rows. */
    public String line() {
      String more = said.isEmpty() ? "" : "  (" + said + ")";
      return String.format(Locale.ROOT, "%-15s %s%s", label, found, more);
    }
  }

  private TraceWords(TraceFinding trace, Traced traced, UnitSystem units) {
    this.trace = trace;
    this.traced = traced;
    this.units = units;
  }

  /** One row for each thing looked for. */
  public static List<Row> rows(TraceFinding trace, Traced traced, UnitSystem units) {
    TraceWords words = new TraceWords(trace, traced, units);
    words.write();
    return List.copyOf(words.rows);
  }

  private void write() {
    offered("Altitude", traced.altitude(), this::height);
    offered("Ejection at", traced.ejection(), TraceWords::seconds);
    offered("Measured delay", traced.delay(), TraceWords::seconds);
    offered("Touchdown at", traced.touchdown(), TraceWords::seconds);
    rows.add(new Row("Apogee at", told(trace.apogeeTime(), TraceWords::seconds), ""));
    String[] names = {"Descent", "then"};
    for (int i = 0; i < trace.descents().size(); i++) {
      TraceFinding.Rate rate = trace.descents().get(i);
      rows.add(new Row(names[i], told(Found.of(rate.rate(), rate.within()), this::down), ""));
    }
    rows.add(new Row("Fastest climb", told(trace.fastest(), this::fast), ""));
  }

  private <T> void offered(String label, Traced.Offer<T> offer, Function<T, String> show) {
    String said =
        offer
            .said()
            .map(show)
            .map(text -> offer.typed() ? "typed " + text : "was " + text)
            .orElse("");
    rows.add(new Row(label, told(offer.found(), show), said));
  }

  private static <T> String told(Found<T> found, Function<T, String> show) {
    return found
        .value()
        .map(show)
        .map(v -> v + found.within().map(w -> " ± " + atLeast(v, show.apply(w))).orElse(""))
        .orElse("not found: " + found.why());
  }

  /** Nothing is surer than the last digit shown of it. */
  private static String atLeast(String value, String within) {
    Matcher none = NONE.matcher(within);
    if (!none.matches()) {
      return within;
    }
    Matcher decimals = DECIMALS.matcher(value);
    int places = decimals.find() ? decimals.group(1).length() : 0;
    return String.format(Locale.ROOT, "%." + places + "f", Math.pow(10, -places)) + none.group(1);
  }

  private String height(Length height) {
    UnitSystem system = units;
    double small = system == UnitSystem.US ? height.inFeet() : height.metres();
    return Math.abs(small) < 10
        ? String.format(Locale.ROOT, "%.1f ", small) + Notations.altitude(system).symbol()
        : Notations.altitude(system).show(height);
  }

  private static String seconds(TimeSpan time) {
    return Notations.timeSpan().show(time);
  }

  private String down(Speed speed) {
    return Notations.descentRate(units).show(speed);
  }

  private String fast(Speed speed) {
    return Notations.flightSpeed(units).show(speed);
  }

  /** What is to be known of it, in sentences. */
  public static List<String> remarks(TraceFinding trace, UnitSystem units) {
    List<String> remarks = new ArrayList<>(trace.told());
    Notation<Length> heights = Notations.altitude(units);
    trace.apogee().value().flatMap(read -> warmth(trace, read, heights)).ifPresent(remarks::add);
    trace
        .ejection()
        .value()
        .map(any -> trace.spike() ? "a spike of the pressure" : "a bend of the line, no spike")
        .ifPresent(how -> remarks.add("The ejection shows as " + how + "."));
    return remarks;
  }

  private static Optional<String> warmth(
      TraceFinding trace, Length read, Notation<Length> heights) {
    return trace
        .warmed()
        .filter(w -> Math.abs(w.metres() - read.metres()) > LEAST_WARMTH * read.metres())
        .map(
            other ->
                trace.source().pressures()
                    ? "Reckoned in the air of the day; an altimeter fixed to 15 °C would show "
                        + heights.show(other)
                        + "."
                    : "If the altimeter is fixed to 15 °C, as most are, "
                        + heights.show(read)
                        + " were really "
                        + heights.show(other)
                        + " in the day's air; the altitude is kept as it was read.");
  }
}
