package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ellipses from places, against textbook radii and the reference library. */
class EllipseTest {
  private static final int PLACES = 200;

  /** Radius in deviations that holds a share of a circular normal spread: textbook identity. */
  @ParameterizedTest
  @CsvSource({"0.50, 1.177410", "0.90, 2.145966", "0.95, 2.447747", "0.99, 3.034854"})
  void circular_spread_gives_the_textbook_radius(double share, double radius) {
    // Deviation 1 in every direction, with the divisor n - 1.
    double side = Math.sqrt(1.5);
    Ellipse ellipse =
        Ellipse.holding(share, new double[] {side, -side, 0, 0}, new double[] {0, 0, side, -side});
    assertThat(ellipse.longHalf().metres()).isCloseTo(radius, within(1e-6));
    assertThat(ellipse.shortHalf().metres()).isCloseTo(radius, within(1e-6));
    assertThat(ellipse.east().metres()).isZero();
    assertThat(ellipse.north().metres()).isZero();
  }

  @Test
  void ellipse_has_the_axes_of_the_reference_decomposition() {
    for (long seed = 1; seed <= 50; seed++) {
      Random random = new Random(seed);
      double turn = random.nextDouble() * Math.PI;
      double lengthwise = 5 + 50 * random.nextDouble();
      double[] east = new double[PLACES];
      double[] north = new double[PLACES];
      for (int i = 0; i < PLACES; i++) {
        double a = lengthwise * random.nextGaussian();
        double b = 5 * random.nextGaussian();
        east[i] = 40 + a * Math.sin(turn) + b * Math.cos(turn);
        north[i] = -70 + a * Math.cos(turn) - b * Math.sin(turn);
      }
      agree(Ellipse.holding(0.9, east, north), east, north, seed);
    }
  }

  private static void agree(Ellipse ours, double[] east, double[] north, long seed) {
    double[][] sums = new double[2][2];
    for (int i = 0; i < PLACES; i++) {
      double[] off = {east[i] - ours.east().metres(), north[i] - ours.north().metres()};
      for (int j = 0; j < 4; j++) {
        sums[j / 2][j % 2] += off[j / 2] * off[j % 2] / (PLACES - 1);
      }
    }
    var axes = new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(sums));
    double scale = new ChiSquaredDistribution(2).inverseCumulativeProbability(0.9);
    double longHalf = Math.sqrt(scale * axes.getEigenvalue(0));
    double shortHalf = Math.sqrt(scale * axes.getEigenvalue(1));
    assertThat(ours.longHalf().metres()).as("seed %d", seed).isCloseTo(longHalf, within(1e-6));
    assertThat(ours.shortHalf().metres()).as("seed %d", seed).isCloseTo(shortHalf, within(1e-6));
    double[] axis = axes.getEigenvector(0).toArray();
    double along = ours.along().inRadians();
    double across = axis[0] * Math.cos(along) - axis[1] * Math.sin(along);
    assertThat(across).as("seed %d", seed).isCloseTo(0, within(1e-7));
    assertThat(ours.along().degrees()).isBetween(0.0, 180.0);
  }

  /** Nine of ten normal places lie inside, by chance a few more or less. */
  @Test
  void ellipse_holds_the_share_it_names() {
    Draws draws = Draws.of(4000, 11);
    double[] east = new double[draws.flights()];
    double[] north = new double[draws.flights()];
    for (int i = 0; i < east.length; i++) {
      east[i] = 30 + 20 * draws.normal(i, 0) + 7 * draws.normal(i, 1);
      north[i] = -10 + 12 * draws.normal(i, 0) - 9 * draws.normal(i, 1);
    }
    for (double share : new double[] {0.5, 0.9}) {
      Ellipse ellipse = Ellipse.holding(share, east, north);
      int inside = 0;
      for (int i = 0; i < east.length; i++) {
        inside += ellipse.holds(east[i], north[i]) ? 1 : 0;
      }
      assertThat(inside / (double) east.length).isCloseTo(share, within(0.01));
    }
  }

  @Test
  void one_place_is_an_ellipse_without_extent() {
    Ellipse ellipse = Ellipse.holding(0.9, new double[] {3}, new double[] {4});
    assertThat(ellipse.longHalf().metres()).isZero();
    assertThat(ellipse.shortHalf().metres()).isZero();
    assertThat(ellipse.east().metres()).isEqualTo(3);
    assertThat(ellipse.north().metres()).isEqualTo(4);
  }

  @Test
  void share_of_all_or_nothing_is_refused() {
    for (double share : new double[] {0, 1, -0.1, 1.1}) {
      assertThatThrownBy(() -> Ellipse.holding(share, new double[] {0}, new double[] {0}))
          .isInstanceOf(RefusedInput.class)
          .hasMessageContaining("between 0 and 1");
    }
  }
}
