package padside.trace;

import java.util.Arrays;

/** Medians, and what comes of them. */
final class Medians {
  /** Standard deviation of a normal distribution over its median absolute deviation. */
  private static final double OF_NORMAL = 1.4826;

  private Medians() {}

  /** Of a stretch of values, which is left as it is; the mean of the middle two where even. */
  static double of(double[] values, int from, int to) {
    double[] sorted = Arrays.copyOfRange(values, from, to);
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  static double of(double... values) {
    return of(values, 0, values.length);
  }

  /**
   * How much samples scatter about the straight line between their neighbours, as a standard
   * deviation that a few wild ones and the bends of a flight hardly move (median absolute
   * deviation; Rousseeuw and Croux, J. Am. Stat. Assoc. 88, 1993, 1273). Where most samples agree,
   * because the altimeter rounds, that of its steps.
   */
  static double noise(double[] times, double[] heights) {
    int n = times.length;
    if (n < 5) {
      return 0;
    }
    double[] off = new double[n - 2];
    double step = Double.MAX_VALUE;
    for (int i = 1; i < n - 1; i++) {
      double share = (times[i] - times[i - 1]) / (times[i + 1] - times[i - 1]);
      double line = heights[i - 1] + share * (heights[i + 1] - heights[i - 1]);
      double gain = Math.sqrt(1 + share * share + (1 - share) * (1 - share));
      off[i - 1] = Math.abs(heights[i] - line) / gain;
      double rise = Math.abs(heights[i] - heights[i - 1]);
      step = rise > 1e-6 ? Math.min(step, rise) : step;
    }
    double rounding = step == Double.MAX_VALUE ? 0 : step / Math.sqrt(12);
    return Math.max(OF_NORMAL * of(off), Math.min(rounding, 2));
  }
}
