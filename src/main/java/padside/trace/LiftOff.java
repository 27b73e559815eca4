package padside.trace;

import java.util.Optional;

/**
 * The ground before a flight, and when it was left.
 *
 * @param ground height of the ground in the file's own heights
 * @param groundWithin how far that may be off
 * @param time of lift-off by the file's time
 * @param within how far that may be off
 * @param why there is no time of lift-off, else empty
 */
record LiftOff(double ground, double groundWithin, double time, double within, String why) {
  private static final double GROUND_S = 30;

  /** Samples just before the rise may be of it. */
  private static final double LEFT_OUT_S = 0.5;

  /** Of the climb the lowest part, where the motor pushes. */
  private static final double LOWEST_SHARE = 0.15;

  private static final double FASTEST_MPS2 = 200;

  static LiftOff of(Curve curve) {
    int top = curve.highest();
    double rough = curve.calm[0];
    double up = rough + LOWEST_SHARE * (curve.calm[top] - rough);
    int low = top;
    while (low > 0 && curve.calm[low - 1] > up) {
      low--;
    }
    double ground = groundBefore(curve, low);
    double bound = ground + Math.max(0.3, 3 * curve.noise);
    int first = low;
    while (first > 0 && curve.calm[first - 1] > bound) {
      first--;
    }
    ground = groundBefore(curve, first);
    int from = curve.at(curve.t[first] - GROUND_S);
    int count = Math.max(1, first - from);
    double groundWithin = 1.25 * curve.noise / Math.sqrt(count);
    if (first == 0 || first >= top) {
      String why = "the file begins in the air";
      return new LiftOff(curve.calm[0], Math.max(curve.noise, 1), curve.t[0], 1, why);
    }
    return timed(curve, first, ground, groundWithin);
  }

  /** The median of what lies before, the last half second apart where there is more. */
  private static double groundBefore(Curve curve, int first) {
    double left = curve.t[first];
    int from = curve.at(left - GROUND_S);
    int to = curve.at(left - Math.max(LEFT_OUT_S, 1.5 * curve.interval));
    if (to <= from) {
      to = Math.max(from + 1, Math.min(first, from + 2));
    }
    return Medians.of(curve.h, from, to);
  }

  /**
   * Between the last sample on the ground and the first above it. From a constant push the height
   * grows as the square of the time, so that its root crosses zero at lift-off.
   */
  private static LiftOff timed(Curve curve, int first, double ground, double groundWithin) {
    double before = curve.t[first - 1];
    double least = ground + Math.max(1, 3 * curve.noise);
    double most = ground + LOWEST_SHARE * (curve.calm[curve.highest()] - ground);
    LeastSquares roots = new LeastSquares(2);
    double about = curve.t[first];
    int last = first;
    for (int i = first;
        i < curve.size && curve.h[i] <= Math.max(most, least + 3) && i < first + 400;
        i++) {
      if (!curve.wild[i] && curve.h[i] >= least) {
        double root = Math.sqrt(curve.h[i] - ground);
        // The root of a height is off by noise / (2 root).
        roots.add(new double[] {1, curve.t[i] - about}, root, 4 * root * root);
        last = i;
      }
    }
    double latest = about + curve.interval;
    Optional<LeastSquares.Solution> solved =
        roots.count() >= 3 && last > first ? roots.solve() : Optional.empty();
    if (solved.isPresent() && solved.get().values()[1] > 0.5) {
      double[] line = solved.get().values();
      double time = about - line[0] / line[1];
      double within =
          Math.hypot(
              curve.interval / 2, curve.noise * Math.sqrt(solved.get().inverse()[0][0]) / line[1]);
      double earliest = before - Math.sqrt(2 * Math.max(0.5, 3 * curve.noise) / 20);
      if (time > earliest && time < latest) {
        return new LiftOff(ground, groundWithin, time, within, "");
      }
    }
    double high = Math.max(0, curve.calm[first] - ground);
    double time = Math.max(before, about - Math.sqrt(2 * high / (FASTEST_MPS2 / 3)));
    return new LiftOff(
        ground, groundWithin, time, Math.max(curve.interval / 2, (about - before) / 2), "");
  }
}
