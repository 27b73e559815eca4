package padside.trace;

/**
 * A whole file in a fixed memory: neighbouring samples in buckets, each as its mean; once there are
 * too many buckets two become one.
 */
final class Overview {
  private static final int MOST = 1 << 15;

  private final int[] recording = new int[MOST];
  private final long[] first = new long[MOST];
  private final double[] from = new double[MOST];
  private final double[] sum = new double[MOST];
  private final int[] samples = new int[MOST];
  private int count;
  private int full = 1;
  private long rows;

  void take(int part, double time, double height) {
    int last = count - 1;
    if (last >= 0 && samples[last] < full && recording[last] == part) {
      sum[last] += height;
      samples[last]++;
    } else {
      if (count == MOST) {
        halve();
      }
      recording[count] = part;
      first[count] = rows;
      from[count] = time;
      sum[count] = height;
      samples[count] = 1;
      count++;
    }
    rows++;
  }

  private void halve() {
    int kept = 0;
    for (int i = 0; i < count; i++) {
      boolean joins = kept > 0 && i % 2 == 1 && recording[kept - 1] == recording[i];
      if (joins) {
        sum[kept - 1] += sum[i];
        samples[kept - 1] += samples[i];
      } else {
        recording[kept] = recording[i];
        first[kept] = first[i];
        from[kept] = from[i];
        sum[kept] = sum[i];
        samples[kept] = samples[i];
        kept++;
      }
    }
    count = kept;
    full *= 2;
  }

  int count() {
    return count;
  }

  int recording(int i) {
    return recording[i];
  }

  /** The number of a bucket's first sample in the file, from 0; that of the end for the end. */
  long first(int i) {
    return i == count ? rows : first[i];
  }

  double time(int i) {
    return from[i];
  }

  double height(int i) {
    return sum[i] / samples[i];
  }

  long rows() {
    return rows;
  }
}
