package padside.trace;

import java.util.ArrayList;
import java.util.List;

/**
 * The flights in a file: each begins where the height leaves that of the half minute before for
 * good, and ends where it stays the same.
 */
final class Stretches {
  private static final double GROUND_S = 30;

  /** What a lift-off does within this is not ground yet. */
  private static final double LAG_S = 1.5;

  private static final double LEAST_RISE_M = 10;
  private static final double LEAST_ALOFT_S = 1.5;
  private static final double STILL_S = 9;
  private static final double STILL_M = 2;
  private static final double AFTER_S = 20;

  private final Overview overview;
  private final double[] times;
  private final double[] heights;
  private final double noise;

  private Stretches(Overview overview) {
    this.overview = overview;
    int count = overview.count();
    times = new double[count];
    heights = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = overview.time(i);
      heights[i] = overview.height(i);
    }
    noise = Medians.noise(times, heights);
  }

  static List<Stretch> of(Overview overview) {
    Stretches all = new Stretches(overview);
    List<Stretch> found = new ArrayList<>();
    int from = 0;
    while (from < all.times.length) {
      int end = from + 1;
      while (end < all.times.length && overview.recording(end) == overview.recording(from)) {
        end++;
      }
      all.search(from, end, found);
      from = end;
    }
    return found;
  }

  private void search(int from, int end, List<Stretch> found) {
    int start = from;
    for (int i = from + 1; i < end; i++) {
      double ground = ground(start, i);
      if (leaves(i, end, ground)) {
        int still = stillFrom(i, end);
        int last = after(still, times[Math.min(still, end - 1)] + AFTER_S, end);
        int first = i;
        while (first > start && times[first - 1] >= times[i] - GROUND_S) {
          first--;
        }
        double highest = 0;
        for (int k = i; k < still; k++) {
          highest = Math.max(highest, calmed(k, from, end) - ground);
        }
        found.add(new Stretch(overview.first(first), overview.first(last), times[i], highest));
        start = still;
        i = still;
      }
    }
  }

  /** The height the half minute before, without what may be a lift-off already. */
  private double ground(int start, int at) {
    int from = at;
    int to = at;
    while (from > start && times[from - 1] >= times[at] - GROUND_S) {
      from--;
    }
    while (to > from + 1 && times[to - 1] > times[at] - LAG_S) {
      to--;
    }
    return Medians.of(heights, Math.max(from, to - 200), Math.max(to, from + 1));
  }

  /** Above the ground from here on, for longer than any wild sample. */
  private boolean leaves(int at, int end, double ground) {
    double rise = Math.max(LEAST_RISE_M, 5 * noise);
    int above = 0;
    int i = at;
    while (i < end && heights[i] > ground + rise) {
      above++;
      i++;
      if (above >= 2 && times[i - 1] - times[at] >= LEAST_ALOFT_S) {
        return true;
      }
    }
    return i == end && above >= 3;
  }

  /** Where it has come to rest; the end where it does not. */
  private int stillFrom(int at, int end) {
    for (int i = at; i < end; i++) {
      int third = after(i, times[i] + STILL_S / 3, end);
      int two = after(third, times[i] + STILL_S * 2 / 3, end);
      int three = after(two, times[i] + STILL_S, end);
      if (three >= end && times[end - 1] < times[i] + STILL_S * 0.9) {
        return end;
      }
      if (third > i && two > third && three > two) {
        double a = Medians.of(heights, i, third);
        double b = Medians.of(heights, third, two);
        double c = Medians.of(heights, two, three);
        double apart = Math.max(a, Math.max(b, c)) - Math.min(a, Math.min(b, c));
        if (apart < Math.max(STILL_M, 1.2 * noise)) {
          return i;
        }
      }
    }
    return end;
  }

  private int after(int from, double time, int end) {
    int i = from;
    while (i < end && times[i] < time) {
      i++;
    }
    return i;
  }

  private double calmed(int k, int from, int end) {
    return Medians.of(heights, Math.max(from, k - 1), Math.min(end, k + 2));
  }
}
