package padside.trace;

import java.util.Optional;

/**
 * Linear least squares of a few unknowns by the normal equations (Press et al., Numerical Recipes,
 * 3rd ed. 2007, section 15.4), which well-scaled columns and six unknowns at most allow.
 */
final class LeastSquares {
  private final int unknowns;
  private final double[][] normal;
  private final double[] right;
  private double squares;
  private double weights;

  LeastSquares(int unknowns) {
    this.unknowns = unknowns;
    normal = new double[unknowns][unknowns];
    right = new double[unknowns];
  }

  /** One equation: the unknowns times these are to be {@code value}. */
  void add(double[] row, double value, double weight) {
    for (int i = 0; i < unknowns; i++) {
      for (int j = 0; j < unknowns; j++) {
        normal[i][j] += weight * row[i] * row[j];
      }
      right[i] += weight * row[i] * value;
    }
    squares += weight * value * value;
    weights++;
  }

  double count() {
    return weights;
  }

  /** The unknowns, and how sure they are. */
  static final class Solution {
    private final double[] values;
    private final double[][] inverse;
    private final double misfit;

    private Solution(double[] values, double[][] inverse, double misfit) {
      this.values = values;
      this.inverse = inverse;
      this.misfit = misfit;
    }

    double[] values() {
      return values;
    }

    /** Of the normal equations: times the variance of one value, the covariance of the unknowns. */
    double[][] inverse() {
      return inverse;
    }

    /** Weighted sum of the squares left over. */
    double misfit() {
      return misfit;
    }
  }

  /** Nothing where the equations do not decide all unknowns. */
  Optional<Solution> solve() {
    double[][] work = new double[unknowns][2 * unknowns];
    for (int i = 0; i < unknowns; i++) {
      System.arraycopy(normal[i], 0, work[i], 0, unknowns);
      work[i][unknowns + i] = 1;
    }
    for (int i = 0; i < unknowns; i++) {
      if (!pivot(work, i)) {
        return Optional.empty();
      }
    }
    double[][] inverse = new double[unknowns][unknowns];
    double[] values = new double[unknowns];
    double misfit = squares;
    for (int i = 0; i < unknowns; i++) {
      System.arraycopy(work[i], unknowns, inverse[i], 0, unknowns);
      for (int j = 0; j < unknowns; j++) {
        values[i] += inverse[i][j] * right[j];
      }
    }
    for (int i = 0; i < unknowns; i++) {
      misfit -= values[i] * right[i];
    }
    return Optional.of(new Solution(values, inverse, Math.max(0, misfit)));
  }

  /**
   * The matrix is symmetric and positive: what is left on the diagonal tells whether it decides.
   */
  private boolean pivot(double[][] work, int at) {
    double pivot = work[at][at];
    if (!(pivot > 1e-9 * normal[at][at]) || pivot <= 0) {
      return false;
    }
    for (int j = 0; j < 2 * unknowns; j++) {
      work[at][j] /= pivot;
    }
    for (int i = 0; i < unknowns; i++) {
      double times = work[i][at];
      if (i != at && times != 0) {
        for (int j = 0; j < 2 * unknowns; j++) {
          work[i][j] -= times * work[at][j];
        }
      }
    }
    return true;
  }
}
