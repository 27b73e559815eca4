package padside.trace;

import java.util.Arrays;

/**
 * The samples of one flight as heights, with what is spike and not height marked out, their noise
 * and their calmed line.
 */
final class Curve {
  /** Half the window of the median; a spike of less than that length in all stands out. */
  private static final double HALF_WINDOW_S = 0.45;

  private static final int LEAST_HALF = 2;
  private static final double SPIKE_SIGMAS = 5;
  private static final double GRAVITY = padside.physics.Flight.STANDARD_GRAVITY_MPS2;

  final double[] t;
  final double[] h;
  final double[] calm;
  final boolean[] wild;
  final double noise;
  final double interval;
  final int size;

  Curve(double[] times, double[] heights, double interval) {
    t = times;
    h = heights;
    size = times.length;
    this.interval = interval;
    noise = Math.max(0.02, Medians.noise(times, heights));
    calm = new double[size];
    wild = new boolean[size];
    int half = (int) Math.max(LEAST_HALF, Math.round(HALF_WINDOW_S / interval));
    for (int i = 0; i < size; i++) {
      int reach = Math.min(half, Math.min(i, size - 1 - i));
      calm[i] = Medians.of(h, i - reach, i + reach + 1);
    }
    markWild(half);
  }

  /**
   * A sample further from the median of its neighbours than noise and free fall explain (Hampel's
   * identifier; Pearson, IEEE Trans. Control Syst. Technol. 10, 2002, 55). A steady climb or fall
   * leaves a median where it is; over an arc it lies lower, by the fall in a quarter of the window.
   */
  private void markWild(int half) {
    double quarter = half * interval / 2;
    double arc = 1.5 * GRAVITY / 2 * quarter * quarter;
    double bound = SPIKE_SIGMAS * noise + arc;
    for (int i = 0; i < size; i++) {
      wild[i] = Math.abs(h[i] - calm[i]) > bound;
    }
    // The tail of a spike is within the noise, and still pulls at every fit.
    int from = -1;
    for (int i = 0; i < size; i++) {
      if (wild[i] && from < 0) {
        from = i;
      } else if (!wild[i] && from >= 0) {
        int end = Math.min(size, i + (i - from) / 2);
        Arrays.fill(wild, i, end, true);
        from = -1;
        i = end;
      }
    }
  }

  /** The first sample at or after a time; the size where there is none. */
  int at(double time) {
    int found = Arrays.binarySearch(t, time);
    return found >= 0 ? found : -found - 1;
  }

  int highest() {
    int best = 0;
    for (int i = 1; i < size; i++) {
      best = calm[i] > calm[best] ? i : best;
    }
    return best;
  }

  /** The polynomial that fits best between two times, about a third; wild samples left out. */
  java.util.Optional<LeastSquares.Solution> fit(
      double from, double to, double about, int unknowns) {
    LeastSquares squares = new LeastSquares(unknowns);
    for (int i = at(from); i < size && t[i] <= to; i++) {
      if (!wild[i]) {
        squares.add(powers(t[i] - about, unknowns), h[i], 1);
      }
    }
    return squares.count() < unknowns + 1 ? java.util.Optional.empty() : squares.solve();
  }

  static double[] powers(double s, int unknowns) {
    double[] row = new double[unknowns];
    row[0] = 1;
    for (int i = 1; i < unknowns; i++) {
      row[i] = row[i - 1] * s;
    }
    return row;
  }

  /** Samples between two times that are no spike. */
  int calmBetween(double from, double to) {
    int count = 0;
    for (int i = at(from); i < size && t[i] <= to; i++) {
      count += wild[i] ? 0 : 1;
    }
    return count;
  }
}
