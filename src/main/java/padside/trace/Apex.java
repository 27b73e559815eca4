package padside.trace;

import java.util.Optional;

/**
 * The highest point, from the arc about it: a local parabola (Savitzky and Golay, Anal. Chem. 36,
 * 1964, 1627, for uneven steps by plain least squares), which free flight is near its top. Gravity
 * is known, so that few samples suffice: a fall of 1.08 g, give or take a tenth, drag included.
 *
 * @param time by the file's time
 * @param height in the file's own heights
 */
record Apex(double time, double timeWithin, double height, double heightWithin) {
  private static final double[] HALF_WINDOWS_S = {0.4, 0.7, 1.0, 1.4, 1.8, 2.4};
  private static final double FALL = 1.08 * padside.physics.Flight.STANDARD_GRAVITY_MPS2 / 2;
  private static final double FALL_WITHIN = 0.08 * FALL;

  /** Largest mean square left over, in that of the noise, of a curve that may be an arc. */
  private static final double FITS = 1.35;

  /**
   * Of a curve whose charge fired at a time.
   *
   * @param ejection by the file's time; far ahead where none was found
   */
  static Apex of(Curve curve, double ejection) {
    int top = curve.highest();
    double about = curve.t[top];
    Apex best = new Apex(about, curve.interval, curve.calm[top], curve.noise + curve.interval);
    boolean any = false;
    for (double half : HALF_WINDOWS_S) {
      Optional<Apex> wider = within(curve, about, half, ejection);
      if (wider.isPresent() && (!any || wider.get().heightWithin < best.heightWithin)) {
        best = wider.get();
        about = Math.abs(best.time - about) < half ? best.time : about;
        any = true;
      } else if (any && wider.isEmpty()) {
        break;
      }
    }
    return best;
  }

  private static Optional<Apex> within(Curve curve, double about, double half, double ejection) {
    double reach = Math.max(half, 1.1 * curve.interval);
    boolean free = ejection > about - 0.2;
    double to = free ? Math.min(about + reach, Math.max(about, ejection)) : about + reach;
    double from = about - reach;
    LeastSquares squares = new LeastSquares(3);
    for (int i = curve.at(from); i < curve.size && curve.t[i] <= to; i++) {
      if (!curve.wild[i]) {
        squares.add(Curve.powers(curve.t[i] - about, 3), curve.h[i], 1);
      }
    }
    double count = squares.count();
    double known = curve.noise / FALL_WITHIN;
    if (free) {
      squares.add(new double[] {0, 0, 1}, -FALL, known * known);
    }
    if (count < (free ? 2 : 4)) {
      return Optional.empty();
    }
    return squares.solve().flatMap(found -> of(curve, found, about, count));
  }

  private static Optional<Apex> of(
      Curve curve, LeastSquares.Solution found, double about, double count) {
    double[] v = found.values();
    double variance = curve.noise * curve.noise;
    if (v[2] >= -0.2 || found.misfit() > FITS * variance * Math.max(2, count)) {
      return Optional.empty();
    }
    double at = -v[1] / (2 * v[2]);
    double height = v[0] + v[1] * at / 2;
    double[] gain = {1, at, at * at};
    double spread = 0;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        spread += gain[i] * gain[j] * found.inverse()[i][j];
      }
    }
    double slope = Math.sqrt(variance * found.inverse()[1][1]);
    return Optional.of(
        new Apex(
            about + at,
            Math.max(slope / Math.abs(2 * v[2]), curve.interval / 10),
            height,
            Math.sqrt(variance * spread)));
  }
}
