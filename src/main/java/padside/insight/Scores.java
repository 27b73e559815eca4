package padside.insight;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.motor.MotorTable;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * How good predictions were: of every flight what was kept with its card before it flew, beside
 * what was measured. Nothing is predicted anew, so that no flight is scored by what it taught.
 */
public record Scores(List<Scored> flights) {
  /**
   * One flight; what was not predicted or not measured is absent.
   *
   * @param top altitude as predicted and as measured
   */
  public record Scored(
      RecordId flight,
      Optional<RecordId> rocket,
      Optional<Top> top,
      Optional<Miss> altitude,
      Optional<Miss> delay,
      Optional<Miss> descent,
      Optional<Miss> landing) {
    private Stream<Optional<Miss>> misses() {
      return Stream.of(altitude, delay, descent, landing);
    }
  }

  /** The highest point as predicted and as measured. */
  public record Top(Length predicted, Length measured) {}

  /**
   * What was measured less what was predicted, as a share of what was predicted.
   *
   * @param told the interval told at the time; absent where none was
   */
  public record Miss(double share, Optional<Told> told) {}

  /**
   * An interval or area told before a flight.
   *
   * @param share of flights that it was to hold, from 0 to 1
   * @param held whether it held this one
   */
  public record Told(double share, boolean held) {}

  /**
   * Several of them.
   *
   * @param median of the sizes, whatever their sign
   * @param bias the median with the sign
   * @param told the intervals they were told with, as far as they were
   */
  public record Summary(int count, double median, double bias, List<Told> told) {
    /** Keeps its own list. */
    public Summary {
      told = List.copyOf(told);
    }

    /** How many of those intervals held what was measured. */
    public int held() {
      return (int) told.stream().filter(Told::held).count();
    }
  }

  /** Keeps its own list. */
  public Scores {
    flights = List.copyOf(flights);
  }

  /** Of flights that were flown and measured in any way, in their order. */
  public static Scores of(List<Flight> flights, MotorTable motors) {
    return new Scores(
        flights.stream()
            .filter(flight -> flight.status() == Flight.Status.FLOWN)
            .map(flight -> scored(flight, motors))
            .filter(each -> each.misses().anyMatch(Optional::isPresent))
            .toList());
  }

  /** Those of one rocket. */
  public Scores of(RecordId rocket) {
    return new Scores(
        flights.stream().filter(each -> each.rocket().equals(Optional.of(rocket))).toList());
  }

  /** One kind of miss over all of them; absent where there is none. */
  public Optional<Summary> summary(Function<Scored, Optional<Miss>> kind) {
    List<Miss> misses = flights.stream().flatMap(each -> kind.apply(each).stream()).toList();
    if (misses.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Summary(
            misses.size(),
            median(misses.stream().mapToDouble(miss -> Math.abs(miss.share())).toArray()),
            median(misses.stream().mapToDouble(Miss::share).toArray()),
            misses.stream().flatMap(miss -> miss.told().stream()).toList()));
  }

  /** The shares that intervals told with them were to hold: each of them once. */
  public Set<Double> toldToHold() {
    return flights.stream()
        .flatMap(Scored::misses)
        .flatMap(miss -> miss.flatMap(Miss::told).stream())
        .map(Told::share)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    int half = values.length / 2;
    return values.length % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
  }

  private static Scored scored(Flight flight, MotorTable motors) {
    Facts facts = flight.facts();
    Measured measured = Measured.of(facts, motors);
    Optional<Top> top =
        facts
            .get(Flight.PREDICTED_TOP)
            .or(() -> facts.get(Flight.PREDICTED_APOGEE))
            .flatMap(predicted -> flight.altitude().map(altitude -> new Top(predicted, altitude)));
    Optional<TimeSpan> delay = facts.get(Flight.MEASURED_DELAY).or(measured::delay);
    return new Scored(
        flight.id(),
        flight.rocket(),
        top,
        top.flatMap(
            both -> miss(both.predicted.metres(), both.measured.metres(), told(facts, both))),
        measured
            .stamped()
            .flatMap(
                stamped ->
                    delay.flatMap(
                        span -> miss(stamped.seconds(), span.seconds(), Optional.empty()))),
        facts
            .get(Flight.PREDICTED_DESCENT)
            .map(Speed::metresPerSecond)
            .flatMap(
                rate ->
                    measured
                        .descent()
                        .flatMap(down -> miss(rate, down.metresPerSecond(), Optional.empty()))),
        landing(facts));
  }

  private static Optional<Miss> miss(double predicted, double measured, Optional<Told> told) {
    return predicted > 0 ? Optional.of(new Miss(measured / predicted - 1, told)) : Optional.empty();
  }

  private static Optional<Told> told(Facts facts, Top top) {
    Optional<Length> low = facts.get(Flight.PREDICTED_TOP_LOW);
    Optional<Length> high = facts.get(Flight.PREDICTED_TOP_HIGH);
    double metres = top.measured.metres();
    return low.flatMap(
        from -> high.map(to -> told(facts, metres >= from.metres() && metres <= to.metres())));
  }

  /** How far from the expected place it lay, as a share of that place's distance from the pad. */
  private static Optional<Miss> landing(Facts facts) {
    Optional<double[]> expected =
        place(facts.get(Flight.PREDICTED_BEARING), facts.get(Flight.PREDICTED_DISTANCE));
    Optional<double[]> found =
        place(facts.get(Flight.LANDING_BEARING), facts.get(Flight.LANDING_DISTANCE));
    if (expected.isEmpty() || found.isEmpty()) {
      return Optional.empty();
    }
    double far = Math.hypot(expected.get()[0], expected.get()[1]);
    double east = found.get()[0] - expected.get()[0];
    double north = found.get()[1] - expected.get()[1];
    return far > 0
        ? Optional.of(new Miss(Math.hypot(east, north) / far, inside(facts, east, north)))
        : Optional.empty();
  }

  private static Optional<double[]> place(Optional<Bearing> toward, Optional<Length> distance) {
    return toward.flatMap(
        bearing ->
            distance.map(
                far ->
                    new double[] {
                      far.metres() * Math.sin(bearing.inRadians()),
                      far.metres() * Math.cos(bearing.inRadians())
                    }));
  }

  private static Told told(Facts facts, boolean held) {
    return new Told(Confidence.told(facts), held);
  }

  /** Whether the ellipse told at the time holds it. */
  private static Optional<Told> inside(Facts facts, double east, double north) {
    Optional<Length> along = facts.get(Flight.PREDICTED_SPREAD_LONG);
    Optional<Length> across = facts.get(Flight.PREDICTED_SPREAD_SHORT);
    if (along.isEmpty() || across.isEmpty()) {
      return Optional.empty();
    }
    double turn = facts.get(Flight.PREDICTED_SPREAD_ALONG).map(Bearing::inRadians).orElse(0.0);
    double far = east * Math.sin(turn) + north * Math.cos(turn);
    double aside = east * Math.cos(turn) - north * Math.sin(turn);
    double out = Math.hypot(far / along.get().metres(), aside / across.get().metres());
    return Optional.of(told(facts, out <= 1));
  }
}
