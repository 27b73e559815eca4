package padside.trace;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import padside.units.Length;

/**
 * Few points whose line goes past every sample within the noise (Ramer, Comput. Graph. Image
 * Process. 1, 1972, 244; Douglas and Peucker, Cartographica 10, 1973, 112), the distance taken
 * straight up or down, as heights are read.
 */
record Thinning(List<KeptTrace.Point> points, Length within) {
  static final int MOST_POINTS = 2000;

  /** Line and text together stay well below what a field of the log may have. */
  private static final double LEAST_WITHIN_M = 0.1;

  private static final double SIGMAS = 2;

  static Thinning of(List<KeptTrace.Point> samples, Length noise) {
    double within = Math.max(LEAST_WITHIN_M, SIGMAS * noise.metres());
    while (true) {
      List<KeptTrace.Point> kept = kept(samples, within);
      if (kept.size() <= MOST_POINTS) {
        return new Thinning(kept, new Length(within));
      }
      within *= 1.25;
    }
  }

  KeptTrace named(String name, long crc32, int samples, List<KeptTrace.Mark> marks) {
    return new KeptTrace(name, crc32, samples, within, points, marks);
  }

  private static List<KeptTrace.Point> kept(List<KeptTrace.Point> samples, double within) {
    if (samples.size() < 3) {
      return samples;
    }
    BitSet keep = new BitSet(samples.size());
    keep.set(0);
    keep.set(samples.size() - 1);
    Deque<int[]> open = new ArrayDeque<>();
    open.push(new int[] {0, samples.size() - 1});
    while (!open.isEmpty()) {
      int[] part = open.pop();
      int far = farthest(samples, part[0], part[1], within);
      if (far > 0) {
        keep.set(far);
        open.push(new int[] {part[0], far});
        open.push(new int[] {far, part[1]});
      }
    }
    List<KeptTrace.Point> points = new ArrayList<>();
    keep.stream().forEach(i -> points.add(samples.get(i)));
    return points;
  }

  /** The sample farthest from the line between two; -1 where all lie near enough. */
  private static int farthest(List<KeptTrace.Point> samples, int from, int to, double within) {
    KeptTrace.Point a = samples.get(from);
    KeptTrace.Point b = samples.get(to);
    double slope =
        (b.height().metres() - a.height().metres()) / (b.time().seconds() - a.time().seconds());
    int far = -1;
    double most = within;
    for (int i = from + 1; i < to; i++) {
      KeptTrace.Point p = samples.get(i);
      double line = a.height().metres() + slope * (p.time().seconds() - a.time().seconds());
      double off = Math.abs(p.height().metres() - line);
      if (off > most) {
        most = off;
        far = i;
      }
    }
    return far;
  }
}
