package padside.insight;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
   * @param held whether the interval told at the time held it; absent where none was told
   */
  public record Miss(double share, Optional<Boolean> held) {}

  /**
   * Several of them.
   *
   * @param median of the sizes, whatever their sign
   * @param bias the median with the sign
   * @param told how many were told with an interval
   * @param held how many of those intervals held what was measured
   */
  public record Summary(int count, double median, double bias, int told, int held) {}

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
    List<Boolean> told = misses.stream().flatMap(miss -> miss.held().stream()).toList();
    return Optional.of(
        new Summary(
            misses.size(),
            median(misses.stream().mapToDouble(miss -> Math.abs(miss.share())).toArray()),
            median(misses.stream().mapToDouble(Miss::share).toArray()),
            told.size(),
            (int) told.stream().filter(held -> held).count()));
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
            both -> miss(both.predicted.metres(), both.measured.metres(), held(facts, both))),
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

  private static Optional<Miss> miss(double predicted, double measured, Optional<Boolean> held) {
    return predicted > 0 ? Optional.of(new Miss(measured / predicted - 1, held)) : Optional.empty();
  }

  private static Optional<Boolean> held(Facts facts, Top top) {
    Optional<Length> low = facts.get(Flight.PREDICTED_TOP_LOW);
    Optional<Length> high = facts.get(Flight.PREDICTED_TOP_HIGH);
    double metres = top.measured.metres();
    return low.flatMap(from -> high.map(to -> metres >= from.metres() && metres <= to.metres()));
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

  /** Whether the ellipse told at the time holds it. */
  private static Optional<Boolean> inside(Facts facts, double east, double north) {
    Optional<Length> along = facts.get(Flight.PREDICTED_SPREAD_LONG);
    Optional<Length> across = facts.get(Flight.PREDICTED_SPREAD_SHORT);
    if (along.isEmpty() || across.isEmpty()) {
      return Optional.empty();
    }
    double turn = facts.get(Flight.PREDICTED_SPREAD_ALONG).map(Bearing::inRadians).orElse(0.0);
    double far = east * Math.sin(turn) + north * Math.cos(turn);
    double aside = east * Math.cos(turn) - north * Math.sin(turn);
    return Optional.of(Math.hypot(far / along.get().metres(), aside / across.get().metres()) <= 1);
  }
}
