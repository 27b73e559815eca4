package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The draws that scattered flights are flown with. */
class DrawsTest {
  private static final int FLIGHTS = 1000;
  private static final int DIMENSIONS = Draws.FIRST_STAGE_IMPULSE + Launch.MOST_STAGES;

  private static double[] column(Draws draws, int dimension) {
    return IntStream.range(0, draws.flights())
        .mapToDouble(i -> draws.normal(i, dimension))
        .toArray();
  }

  /** Test values printed with AS 241, Wichura 1988; recalled from memory. */
  @ParameterizedTest
  @CsvSource({
    "0.25, -0.6744897501960817",
    "0.001, -3.090232306167814",
    "1e-20, -9.262340089798408"
  })
  void quantile_is_the_one_printed_with_the_algorithm(double share, double deviate) {
    assertThat(NormalQuantile.of(share)).isCloseTo(deviate, within(1e-14));
  }

  @Test
  void quantile_agrees_with_the_reference_library() {
    NormalDistribution reference = new NormalDistribution();
    for (int i = 1; i < 2000; i++) {
      double share = i / 2000.0;
      assertThat(NormalQuantile.of(share))
          .as("share %s", share)
          .isCloseTo(reference.inverseCumulativeProbability(share), within(1e-9));
      double tail = Math.pow(10, -i / 100.0);
      assertThat(reference.logDensity(NormalQuantile.of(tail))).isFinite();
      assertThat(reference.cumulativeProbability(NormalQuantile.of(tail)) / tail)
          .as("tail %s", tail)
          .isCloseTo(1, within(1e-9));
    }
  }

  @Test
  void draws_are_the_same_for_the_same_seed_and_others_for_another() {
    Draws one = Draws.of(FLIGHTS, 7);
    Draws again = Draws.of(FLIGHTS, 7);
    Draws other = Draws.of(FLIGHTS, 8);
    assertThat(one.flights()).isEqualTo(FLIGHTS);
    for (int d = 0; d < DIMENSIONS; d++) {
      assertThat(column(one, d)).isEqualTo(column(again, d)).isNotEqualTo(column(other, d));
    }
  }

  /** Every share of the normal distribution in every dimension, and no two dimensions alike. */
  @Test
  void draws_are_normal_and_independent() {
    NormalDistribution reference = new NormalDistribution();
    for (long seed = 1; seed <= 5; seed++) {
      Draws draws = Draws.of(FLIGHTS, seed);
      for (int d = 0; d < DIMENSIONS; d++) {
        double[] column = column(draws, d);
        Arrays.sort(column);
        for (int i = 0; i < FLIGHTS; i++) {
          double share = reference.cumulativeProbability(column[i]);
          assertThat(share).as("seed %d", seed).isCloseTo((i + 0.5) / FLIGHTS, within(0.02));
        }
        for (int e = 0; e < d; e++) {
          double correlation = mean(column(draws, d), column(draws, e));
          assertThat(correlation).as("seed %d, %d and %d", seed, d, e).isCloseTo(0, within(0.1));
        }
      }
    }
  }

  private static double mean(double[] one, double[] other) {
    return IntStream.range(0, one.length).mapToDouble(i -> one[i] * other[i]).average().orElse(0);
  }

  /**
   * The chance that the sum of three deviates is below 1.5: a share no single dimension settles.
   */
  @Test
  void shares_vary_less_from_seed_to_seed_than_those_of_independent_draws() {
    int seeds = 200;
    double p = new NormalDistribution(0, Math.sqrt(3)).cumulativeProbability(1.5);
    double square = 0;
    for (long seed = 1; seed <= seeds; seed++) {
      Draws draws = Draws.of(FLIGHTS, seed);
      double inside =
          IntStream.range(0, FLIGHTS)
              .filter(
                  i ->
                      draws.normal(i, Draws.WIND)
                              + draws.normal(i, Draws.GUST)
                              + draws.normal(i, Draws.DELAY)
                          < 1.5)
              .count();
      square += Math.pow(inside / FLIGHTS - p, 2);
    }
    assertThat(Math.sqrt(square / seeds)).isLessThan(0.5 * Math.sqrt(p * (1 - p) / FLIGHTS));
  }

  @Test
  void a_spread_of_no_flight_is_refused() {
    assertThatThrownBy(() -> Draws.of(0, 1))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("A spread needs at least one flight; 0 given.");
  }
}
