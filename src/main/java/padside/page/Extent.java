package padside.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The stretch of both axes that a plot shows. */
record Extent(double left, double right, double bottom, double top) {
  private static final int STEPS = 5;
  private static final double MARGIN = 0.05;

  /**
   * Everything that must be seen.
   *
   * @param shape of the picture to scale, width over height
   */
  static Extent of(Plot plot, double shape) {
    double[] across = range(plot, Plot.Point::x);
    double[] up = range(plot, Plot.Point::y);
    Extent seen = new Extent(across[0], across[1], up[0], up[1]);
    return plot.toScale() ? seen.shaped(shape) : seen;
  }

  /** From nought on where nothing is negative, with some room at the ends. */
  private static double[] range(Plot plot, ToDoubleFunction<Plot.Point> value) {
    double least = plot.points().mapToDouble(value).min().orElse(0);
    double most = plot.points().mapToDouble(value).max().orElse(1);
    double low = plot.toScale() ? least : Math.min(0, least);
    double room = Math.max((most - low) * MARGIN, most == low ? 1 : 0);
    return new double[] {low < 0 || plot.toScale() ? low - room : 0, most + room};
  }

  private Extent shaped(double shape) {
    double width = right - left;
    double height = top - bottom;
    double wider = Math.max(width, height * shape) - width;
    double higher = Math.max(height, width / shape) - height;
    return new Extent(left - wider / 2, right + wider / 2, bottom - higher / 2, top + higher / 2);
  }

  /** From 0 at the left to 1. */
  double acrossShare(double x) {
    return (x - left) / (right - left);
  }

  /** From 0 at the bottom to 1. */
  double upShare(double y) {
    return (y - bottom) / (top - bottom);
  }

  /** Round numbers along a stretch. */
  static List<Double> ticks(double from, double to) {
    double step = RoundStep.atLeast((to - from) / STEPS);
    List<Double> ticks = new ArrayList<>();
    for (double at = Math.ceil(from / step) * step; at <= to; at += step) {
      ticks.add(Math.abs(at) < step / 2 ? 0 : at);
    }
    return ticks;
  }

  /** As short as it can be told. */
  static String tick(double value) {
    return value == Math.rint(value)
        ? String.valueOf((long) value)
        : String.format(java.util.Locale.ROOT, "%.1f", value);
  }
}
