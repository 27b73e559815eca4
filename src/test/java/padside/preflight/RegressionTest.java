package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;

class RegressionTest {
  /** NIST Statistical Reference Datasets, Norris: calibration of ozone monitors, all 36 points. */
  private static final double[] NORRIS_X = {
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5,
    666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2,
    999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5
  };

  private static final double[] NORRIS_Y = {
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8,
    339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5,
    778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2
  };

  /** Certified values of the same data set. */
  @Test
  void the_certified_values_of_norris_are_reached() {
    Regression line = Regression.of(NORRIS_X, NORRIS_Y).orElseThrow();
    Percentage close = Percentage.withPercentage(1e-9);

    assertThat(line.at(0)).isCloseTo(-0.262323073774029, close);
    assertThat(line.slope()).isCloseTo(1.00211681802045, close);
    assertThat(line.slopeError()).isCloseTo(0.429796848199937e-3, close);
    assertThat(line.residual()).isCloseTo(0.884796396144373, close);
    assertThat(line.degreesOfFreedom()).isEqualTo(34);
  }

  /**
   * Graybill and Iyer, Regression Analysis (1994), reaction chamber, p. 433: the dial setting for a
   * mean temperature of 400 is 66.5, with 99 % confidence from 65.07 to 68.03; read in the tests of
   * the package that accompanies Greenwell and Schubert Kabban, The R Journal 6 (2014) 90-100.
   */
  @Test
  void the_published_interval_of_a_dial_setting_is_reached() {
    double[] dial = {0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100};
    double[] temperature = {
      206.36, 225.52, 252.18, 289.33, 318.11, 349.49, 383.03, 410.70, 444.40, 469.14, 501.16
    };
    double t = new TDistribution(9).inverseCumulativeProbability(0.995);

    Regression.Crossing crossing =
        Regression.of(dial, temperature).orElseThrow().crossing(400, t).orElseThrow();

    assertThat(crossing.at()).isCloseTo(66.5, within(0.05));
    assertThat(crossing.from()).isCloseTo(65.07, within(0.005));
    assertThat(crossing.to()).isCloseTo(68.03, within(0.005));
  }

  @Test
  void the_interval_holds_the_true_crossing_as_often_as_it_says() {
    long seed = 20260801;
    Random random = new Random(seed);
    double[] x = {0, 0.2, 0.35, 0.6, 0.75, 1};
    double t = new TDistribution(4).inverseCumulativeProbability(0.9);
    int held = 0;
    int trials = 20_000;
    for (int i = 0; i < trials; i++) {
      double[] y = new double[x.length];
      for (int k = 0; k < x.length; k++) {
        y[k] = 3 + 4 * x[k] + 0.3 * random.nextGaussian();
      }
      Regression.Crossing crossing = Regression.of(x, y).orElseThrow().crossing(9, t).orElseThrow();
      held += crossing.from() <= 1.5 && 1.5 <= crossing.to() ? 1 : 0;
    }
    // 80 % of 20,000 with a standard deviation of 57.
    assertThat(held).as("seed %d", seed).isCloseTo(16_000, within(230));
  }

  @Test
  void a_slope_that_may_be_none_crosses_nowhere() {
    Regression line =
        Regression.of(new double[] {0, 1, 2, 3}, new double[] {5, 6, 5, 6}).orElseThrow();

    assertThat(line.crossing(9, 1.886)).isEmpty();
  }

  @Test
  void points_without_spread_have_no_line() {
    assertThat(Regression.of(new double[] {1, 1, 1}, new double[] {1, 2, 3})).isEmpty();
    assertThat(Regression.of(new double[] {1, 2}, new double[] {1, 2})).isEmpty();
  }
}
