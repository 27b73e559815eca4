package padside.trace;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Times in seconds, growing, and the levels read at them; heights in metres or pressures. */
final class Samples {
  private double[] times = new double[1024];
  private double[] levels = new double[1024];
  private int size;

  void add(double time, double level) {
    if (size == times.length) {
      times = Arrays.copyOf(times, 2 * size);
      levels = Arrays.copyOf(levels, 2 * size);
    }
    times[size] = time;
    levels[size++] = level;
  }

  int size() {
    return size;
  }

  double time(int i) {
    return times[i];
  }

  double level(int i) {
    return levels[i];
  }

  double[] times() {
    return Arrays.copyOf(times, size);
  }

  double[] levels() {
    return Arrays.copyOf(levels, size);
  }

  /** The usual time from one to the next. */
  OptionalDouble interval() {
    if (size < 2) {
      return OptionalDouble.empty();
    }
    double[] steps = new double[size - 1];
    for (int i = 1; i < size; i++) {
      steps[i - 1] = times[i] - times[i - 1];
    }
    return OptionalDouble.of(Medians.of(steps));
  }
}
