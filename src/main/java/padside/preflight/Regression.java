package padside.preflight;

import java.util.Optional;

/**
 * A straight line through points by ordinary least squares, with how far its slope and its
 * crossings can be trusted (Draper and Smith, Applied Regression Analysis, 3rd ed. 1998, chapters 1
 * and 3.2).
 *
 * @param count of the points, at least three
 * @param meanX of the points
 * @param meanY of the points
 * @param spreadX sum of the squared distances of x from its mean, above zero
 * @param slope of y over x
 * @param residual standard deviation of the points about the line, count - 2 degrees of freedom
 */
record Regression(
    int count, double meanX, double meanY, double spreadX, double slope, double residual) {
  /** Where the line crosses a level, and the interval that holds the true crossing. */
  record Crossing(double at, double from, double to) {}

  /** The line through points; absent for fewer than three or when all stand at one x. */
  static Optional<Regression> of(double[] x, double[] y) {
    int count = x.length;
    double meanX = mean(x);
    double meanY = mean(y);
    double xx = 0;
    double xy = 0;
    for (int i = 0; i < count; i++) {
      xx += (x[i] - meanX) * (x[i] - meanX);
      xy += (x[i] - meanX) * (y[i] - meanY);
    }
    if (count < 3 || xx == 0) {
      return Optional.empty();
    }
    double slope = xy / xx;
    double squares = 0;
    for (int i = 0; i < count; i++) {
      double off = y[i] - meanY - slope * (x[i] - meanX);
      squares += off * off;
    }
    double residual = Math.sqrt(squares / (count - 2));
    return Optional.of(new Regression(count, meanX, meanY, xx, slope, residual));
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /** The same line where points cannot be known better than that about it. */
  Regression withResidualAtLeast(double least) {
    return new Regression(count, meanX, meanY, spreadX, slope, Math.max(residual, least));
  }

  int degreesOfFreedom() {
    return count - 2;
  }

  /** Standard error of the slope. */
  double slopeError() {
    return residual / Math.sqrt(spreadX);
  }

  /** Height of the line over an x. */
  double at(double x) {
    return meanY + slope * (x - meanX);
  }

  /**
   * Where the line itself, not a single point about it, crosses a level: Fieller 1954, Some
   * problems in interval estimation, J. Royal Statistical Society B 16, 175-185; in this form
   * Draper and Smith 1998, equation 3.2.6 with q infinite. Absent where the slope cannot be told
   * from none, for then the interval has no end.
   *
   * @param t quantile of Student's t for {@link #degreesOfFreedom} and the trust wanted
   */
  Optional<Crossing> crossing(double level, double t) {
    double unsure = t * slopeError() / slope;
    double g = unsure * unsure;
    if (!(g < 1)) {
      return Optional.empty();
    }
    double away = (level - meanY) / slope;
    double half =
        t * residual / Math.abs(slope) * Math.sqrt((1 - g) / count + away * away / spreadX);
    return Optional.of(
        new Crossing(
            meanX + away, meanX + (away - half) / (1 - g), meanX + (away + half) / (1 - g)));
  }
}
