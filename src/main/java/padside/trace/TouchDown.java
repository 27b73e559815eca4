package padside.trace;

import java.util.Optional;

/**
 * When it came down: where the last line of the descent meets the height it stayed at.
 *
 * @param level height of the place in the file's own heights
 * @param time by the file's time
 */
record TouchDown(double level, double time, double within) {
  private static final double STILL_S = 4;
  private static final double STILL_MPS = 0.7;

  /** The height at the end, where the file goes on after the landing. */
  static Optional<Double> level(Curve curve, double highest) {
    double end = curve.t[curve.size - 1];
    double from = end - Math.max(STILL_S, 5 * curve.interval);
    Optional<LeastSquares.Solution> line = curve.fit(from, end, end, 2);
    if (line.isEmpty() || from < curve.t[0]) {
      return Optional.empty();
    }
    double slope = line.get().values()[1];
    double within = curve.noise * Math.sqrt(line.get().inverse()[1][1]);
    double level = Medians.of(curve.h, curve.at(from), curve.size);
    boolean still = Math.abs(slope) < STILL_MPS + 2 * Math.min(within, STILL_MPS);
    return still && level < highest ? Optional.of(restFrom(curve, level)) : Optional.empty();
  }

  /** The median of all that lies about that level at the end. */
  private static double restFrom(Curve curve, double level) {
    int first = lastAbove(curve, level, Math.max(0.5, 2.5 * curve.noise)) + 1;
    return first < curve.size ? Medians.of(curve.h, first, curve.size) : level;
  }

  /** The last sample whose calmed height is so far above a level; -1 where none is. */
  static int lastAbove(Curve curve, double level, double by) {
    int i = curve.size - 1;
    while (i >= 0 && curve.calm[i] <= level + by) {
      i--;
    }
    return i;
  }

  static TouchDown of(Curve curve, double level, Descent.Lines lines) {
    Descent.Piece last = lines.pieces().get(lines.pieces().size() - 1);
    double time = lines.endTime() + (lines.end() - level) / last.rate();
    double ahead = (time - lines.endTime()) * last.within();
    double within = Math.hypot(lines.endWithin(), Math.hypot(ahead, curve.noise / 3)) / last.rate();
    return new TouchDown(level, time, Math.max(within, curve.interval / 4));
  }
}
