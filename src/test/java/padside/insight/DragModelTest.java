package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.fact.RecordId;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.units.Length;

/** What altitudes say about a rocket's drag, over seasons whose truth is known. */
class DragModelTest {
  private static final long SEED = Long.getLong("padside.seed", 20261126);
  private static final int SEASONS = 500;
  private static final Confidence NINE = new Confidence(90);
  private static final DragModel MODEL = new DragModel(0.75, 0.26, 0.1, 0.05, 0.02);

  private static DragSeason season(long seed) {
    return new DragSeason(MODEL, new Random(seed));
  }

  private static Drag of(List<Reached> flights) {
    return MODEL.of(flights, NINE).orElseThrow();
  }

  /** The exact interval of Clopper and Pearson (1934) for a share of trials. */
  private static double[] exact(int hits, int of, double tail) {
    double low =
        hits == 0
            ? 0
            : BetaDistribution.of(hits, of - hits + 1.0).inverseCumulativeProbability(tail);
    double high =
        hits == of
            ? 1
            : BetaDistribution.of(hits + 1.0, of - hits).inverseSurvivalProbability(tail);
    return new double[] {low, high};
  }

  @Test
  void intervals_hold_the_truth_as_often_as_they_say() {
    for (int flights : List.of(2, 8)) {
      int held = 0;
      double error = 0;
      DragSeason season = season(SEED + flights);
      for (int i = 0; i < SEASONS; i++) {
        DragSeason.Truth truth = season.truth();
        Drag drag = of(season.flights(truth, flights));
        held += truth.coefficient() >= drag.low() && truth.coefficient() <= drag.high() ? 1 : 0;
        error += Math.abs(Math.log(drag.middle() / truth.coefficient()));
      }
      double[] interval = exact(held, SEASONS, 0.005);
      System.out.printf(
          "[trials] seed %d, %d seasons of %d flights: the 90 %% interval holds the truth in %.1f %%"
              + " (99 %% interval %.1f to %.1f), mean error %.1f %%%n",
          SEED,
          SEASONS,
          flights,
          100.0 * held / SEASONS,
          100 * interval[0],
          100 * interval[1],
          100 * error / SEASONS);
      assertThat(NINE.share()).as("%d flights", flights).isBetween(interval[0], interval[1]);
    }
  }

  /** The same weighing by an integrator of Hipparchus, every altitude flown anew. */
  @Test
  void the_grid_weighs_as_an_integrator_does() {
    DragModel steady = new DragModel(0.75, 0.26, 1e-6, 0.05, 0.02);
    DragSeason season = new DragSeason(steady, new Random(SEED));
    List<Reached> flights = season.flights(new DragSeason.Truth(0.6, 0), 4);
    UnivariateFunction density = between(log -> density(steady, flights, log));
    double whole = integral(density, 1.5);
    double mean = integral(log -> log * density.value(log), 1.5) / whole;
    double square = integral(log -> log * log * density.value(log), 1.5) / whole;

    for (int percent : List.of(50, 80, 90, 99)) {
      double tail = (100 - percent) / 200.0;
      Drag drag = steady.of(flights, new Confidence(percent)).orElseThrow();

      assertThat(drag.deviation()).isCloseTo(Math.sqrt(square - mean * mean), within(0.001));
      for (double[] end :
          new double[][] {{drag.low(), tail}, {drag.middle(), 0.5}, {drag.high(), 1 - tail}}) {
        double below = integral(density, Math.log(end[0] / 0.75));
        assertThat(below / whole).as("%d in 100", percent).isCloseTo(end[1], within(0.005));
      }
    }
  }

  /** In pieces, for an integrator that begins with few points may see none of a narrow peak. */
  private static double integral(UnivariateFunction function, double to) {
    double sum = 0;
    for (double from = -1.5; from < to; from += 0.05) {
      sum += new SimpsonIntegrator().integrate(100_000, function, from, Math.min(to, from + 0.05));
    }
    return sum;
  }

  /**
   * The function at points much nearer to each other than its peak is wide, and a spline between.
   */
  private static UnivariateFunction between(UnivariateFunction function) {
    double[] at = IntStream.rangeClosed(0, 600).mapToDouble(i -> -1.5 + i * 0.005).toArray();
    at[600] = 1.5 + 1e-9;
    return new SplineInterpolator()
        .interpolate(at, DoubleStream.of(at).map(function::value).toArray());
  }

  private static double density(DragModel model, List<Reached> flights, double log) {
    double density = new NormalDistribution(0, model.priorShare()).density(log);
    for (Reached flight : flights) {
      Launch launch = flight.launch().withDrag(model.middle() * Math.exp(log));
      double stronger = Flight.highest(launch, 1 + model.impulseShare()).metres();
      double weaker = Flight.highest(launch, 1 - model.impulseShare()).metres();
      double sd = Math.hypot((stronger - weaker) / 2, flight.deviation().metres());
      density *=
          new NormalDistribution(Flight.highest(launch, 1).metres(), sd)
              .density(flight.altitude().metres());
    }
    return density;
  }

  @Test
  void without_scatter_the_coefficient_comes_back() {
    DragModel exact = new DragModel(0.75, 0.26, 0.001, 0.01, 0.02);
    List<Reached> flights = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Launch launch = DragSeason.launch(6 + i, i);
      Length height = Flight.highest(launch.withDrag(0.55), 1);
      flights.add(
          new Reached(new RecordId("test." + i), "C6", launch, height, new Length(0.01), List::of));
      assertThat(DragModel.coefficient(flights.get(i)).orElseThrow()).isCloseTo(0.55, within(1e-6));
    }

    Drag drag = exact.of(flights, NINE).orElseThrow();

    assertThat(drag.middle()).isCloseTo(0.55, within(0.005));
    assertThat(drag.high() - drag.low()).isLessThan(0.04);
  }

  /** Five sound flights and, newest, one that tells so many times what it reached. */
  private static List<Reached> with(double factor) {
    List<Reached> flights =
        new ArrayList<>(season(SEED).flights(new DragSeason.Truth(0.62, 0.03), 5));
    Launch launch = DragSeason.launch(9, 3);
    double metres = factor * Flight.highest(launch.withDrag(0.62), 1).metres();
    flights.add(DragSeason.reached(5, launch, metres));
    return flights;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.3048|reads as if metres were typed as feet",
        "3.2808399|reads as if feet were typed as metres",
        "10|reads ten times too high, as with a slipped point",
        "0.1|reads ten times too low, as with a slipped point",
        "1.8|nothing looked at explains it"
      })
  void an_odd_altitude_is_named_with_its_cause_and_left_out(double factor, String cause) {
    List<Reached> flights = with(factor);

    Drag drag = of(flights);

    assertThat(drag.odd())
        .singleElement()
        .satisfies(
            odd -> {
              assertThat(odd.flight()).isEqualTo(flights.get(5).flight());
              assertThat(odd.cause()).isEqualTo(cause);
              assertThat(odd.measured()).isEqualTo(flights.get(5).altitude());
            });
    Drag without = of(flights.subList(0, 5));
    assertThat(drag.middle()).isEqualTo(without.middle());
    assertThat(drag.words()).isEqualTo(without.words() + ", 1 left out");
  }

  @Test
  void a_motor_noted_wrong_is_named() {
    List<Reached> flights = new ArrayList<>(with(1).subList(0, 5));
    Launch noted = DragSeason.launch(5, 3);
    Launch meant = DragSeason.launch(10, 3);
    double metres = Flight.highest(meant.withDrag(0.62), 1).metres();
    flights.add(
        new Reached(
            new RecordId("test.5"),
            "B6",
            noted,
            new Length(metres),
            DragSeason.DEVIATION,
            () ->
                List.of(
                    new Reached.OtherMotors("A8", DragSeason.launch(2.5, 3)),
                    new Reached.OtherMotors("C6", meant))));

    assertThat(of(flights).odd())
        .singleElement()
        .extracting(Drag.Odd::cause)
        .asString()
        .contains("fits C6 better than B6");
  }

  /** With nothing to go by but what rockets usually are. */
  @Test
  void the_first_altitude_of_a_rocket_is_doubted_as_well() {
    Launch launch = DragSeason.launch(9, 3);
    double metres = 0.3048 * Flight.highest(launch, 1).metres();

    Drag drag = of(List.of(DragSeason.reached(0, launch, metres)));

    assertThat(drag.flights()).isEmpty();
    assertThat(drag.odd())
        .extracting(Drag.Odd::cause)
        .containsExactly("reads as if metres were typed as feet");
    assertThat(drag.middle()).isCloseTo(0.75, within(1e-9));
  }

  @Test
  void flights_that_agree_are_believed_however_unusual_the_rocket() {
    List<Reached> flights = season(SEED).flights(new DragSeason.Truth(2.2, 0.03), 6);

    Drag drag = of(flights);

    assertThat(drag.odd()).isEmpty();
    assertThat(2.2).isBetween(drag.low(), drag.high());
  }

  @Test
  void nothing_measured_says_nothing() {
    assertThat(MODEL.of(List.of(), NINE)).isEmpty();
  }
}
