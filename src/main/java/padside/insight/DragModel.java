package padside.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import padside.physics.Flight;
import padside.units.Length;

/**
 * What is taken for granted of a rocket's drag before it has flown, and of what comes between drag
 * and altitude; what altitudes then say about it.
 *
 * @param middle the coefficient as likely too large as too small
 * @param priorShare one standard deviation of its logarithm
 * @param flightShare the usual size of one standard deviation of the drag from flight to flight
 * @param impulseShare one standard deviation of one motor's impulse
 * @param oddShare of how many altitudes of one something is wrong
 */
public record DragModel(
    double middle, double priorShare, double flightShare, double impulseShare, double oddShare) {
  private static final double EVEN_ODDS = 0.5;

  /** A cause is named where so many standard deviations explain what it leaves. */
  private static final double FITS = 2;

  private static final Memo<Question, Drag> ANSWERED = new Memo<>(64);

  private record Question(
      DragModel model, List<DragPosterior.Reading> readings, Confidence confidence) {}

  /** How an altitude may have come to be noted wrong: what it then has to be divided by. */
  private enum Misreading {
    METRES_FOR_FEET(0.3048, "reads as if metres were typed as feet"),
    FEET_FOR_METRES(1 / 0.3048, "reads as if feet were typed as metres"),
    TENFOLD(10, "reads ten times too high, as with a slipped point"),
    TENTH(0.1, "reads ten times too low, as with a slipped point");

    private final double factor;
    private final String words;

    Misreading(double factor, String words) {
      this.factor = factor;
      this.words = words;
    }
  }

  /** What altitudes say, told with what holds it so often; absent where there are none. */
  public Optional<Drag> of(List<Reached> flights, Confidence confidence) {
    if (flights.isEmpty()) {
      return Optional.empty();
    }
    List<DragPosterior.Reading> readings = flights.stream().map(this::reading).toList();
    return Optional.of(
        ANSWERED.of(
            new Question(this, readings, confidence), question -> weighed(flights, question)));
  }

  /** The drag coefficient that alone explains one altitude; absent where none does. */
  public static Optional<Double> coefficient(Reached flight) {
    return Flight.dragReaching(flight.launch(), flight.altitude());
  }

  private DragPosterior.Reading reading(Reached flight) {
    return new DragPosterior.Reading(
        HeightCurve.of(flight.launch(), middle, impulseShare),
        flight.altitude().metres(),
        flight.deviation().metres());
  }

  private Drag weighed(List<Reached> flights, Question question) {
    List<DragPosterior.Reading> readings = question.readings();
    DragPosterior doubting = DragPosterior.doubting(this, readings);
    List<Integer> odd = new ArrayList<>();
    List<Integer> sound = new ArrayList<>();
    for (int i = 0; i < flights.size(); i++) {
      (doubting.mistaken(readings.get(i)) > EVEN_ODDS ? odd : sound).add(i);
    }
    DragPosterior posterior = DragPosterior.of(this, sound.stream().map(readings::get).toList());
    Belief belief = new Belief(posterior.quantile(0.5), posterior.deviation(), posterior.spread());
    double tail = question.confidence().tail();
    return new Drag(
        middle * Math.exp(belief.log),
        middle * Math.exp(posterior.quantile(tail)),
        middle * Math.exp(posterior.quantile(1 - tail)),
        belief.deviation,
        belief.spread,
        sound.stream().map(i -> flights.get(i).flight()).toList(),
        odd.stream().map(i -> odd(flights.get(i), readings.get(i), belief, tail)).toList());
  }

  /** What the sound flights say. */
  private record Belief(double log, double deviation, double spread) {
    double sdM(HeightCurve curve, double deviationM) {
      return curve.sdM(deviationM, log, Math.hypot(deviation, spread));
    }

    /** How many standard deviations an altitude is from what is expected. */
    double off(HeightCurve curve, double altitudeM, double deviationM) {
      return Math.abs(altitudeM - curve.heightM(log)) / sdM(curve, deviationM);
    }
  }

  private Drag.Odd odd(Reached flight, DragPosterior.Reading reading, Belief belief, double tail) {
    double expected = reading.curve().heightM(belief.log);
    double margin =
        NormalDistribution.of(0, 1).inverseSurvivalProbability(tail)
            * belief.sdM(reading.curve(), reading.deviationM());
    return new Drag.Odd(
        flight.flight(),
        flight.altitude(),
        new Length(Math.max(0, expected - margin)),
        new Length(expected + margin),
        cause(flight, reading, belief));
  }

  private String cause(Reached flight, DragPosterior.Reading reading, Belief belief) {
    String causes =
        Stream.concat(misreadings(reading, belief), otherMotors(flight, reading, belief))
            .collect(Collectors.joining(", or "));
    return causes.isEmpty() ? "nothing looked at explains it" : causes;
  }

  private static Stream<String> misreadings(DragPosterior.Reading reading, Belief belief) {
    return Stream.of(Misreading.values())
        .filter(
            each ->
                belief.off(
                        reading.curve(),
                        reading.altitudeM() / each.factor,
                        reading.deviationM() / each.factor)
                    <= FITS)
        .map(each -> each.words);
  }

  /** The motors it fits best. */
  private Stream<String> otherMotors(Reached flight, DragPosterior.Reading reading, Belief belief) {
    String best = "";
    double least = FITS;
    for (Reached.OtherMotors other : flight.others().get()) {
      HeightCurve curve = HeightCurve.of(other.launch(), middle, impulseShare);
      double off = belief.off(curve, reading.altitudeM(), reading.deviationM());
      if (off < least) {
        least = off;
        best = "fits " + other.designation() + " better than " + flight.motors();
      }
    }
    return Stream.of(best).filter(words -> !words.isEmpty());
  }
}
