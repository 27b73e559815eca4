package padside.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A plot drawn in letters. */
final class PlotText {
  private static final int LEFT = 8;
  private static final int LEAST_ROWS = 12;
  private static final int MOST_COLUMNS = 64;

  /** A letter is about twice as high as it is wide. */
  private static final double LETTER = 0.5;

  private final Plot plot;
  private final int columns;
  private final int rows;
  private final Extent extent;
  private final char[][] grid;

  private PlotText(Plot plot, int width) {
    this.plot = plot;
    this.columns = Math.min(MOST_COLUMNS, width - LEFT - 2);
    this.rows = Math.max(LEAST_ROWS, (int) (columns * LETTER * (plot.toScale() ? 0.7 : 0.5)));
    this.extent = Extent.of(plot, columns * LETTER / rows);
    this.grid = new char[rows][columns];
    for (char[] row : grid) {
      java.util.Arrays.fill(row, ' ');
    }
  }

  static List<String> lines(Plot plot, int width) {
    return plot.series().isEmpty() ? List.of() : new PlotText(plot, width).drawn(width);
  }

  private List<String> drawn(int width) {
    plot.series().stream().filter(each -> each.mark().isJoined()).forEach(this::join);
    plot.series().stream().filter(each -> !each.mark().isJoined()).forEach(this::dots);
    List<String> lines = new ArrayList<>();
    lines.add("  " + plot.up().words());
    for (int row = 0; row < rows; row++) {
      lines.add((label(row) + "|" + new String(grid[row])).stripTrailing());
    }
    lines.add(" ".repeat(LEFT - 1) + "+" + "-".repeat(columns));
    lines.add(feet());
    lines.add(" ".repeat(LEFT) + plot.across().words());
    lines.addAll(Wrapped.hanging("  ", legend(), width));
    return lines;
  }

  private String legend() {
    return plot.legend().stream()
        .map(each -> each.mark().letter() + " " + each.name())
        .collect(Collectors.joining(" · "));
  }

  private String label(int row) {
    for (double tick : Extent.ticks(extent.bottom(), extent.top())) {
      if (row(tick) == row) {
        String text = Extent.tick(tick);
        return " ".repeat(Math.max(0, LEFT - 2 - text.length())) + text + " ";
      }
    }
    return " ".repeat(LEFT - 1);
  }

  private String feet() {
    StringBuilder line = new StringBuilder(" ".repeat(LEFT + columns + LEFT));
    int free = 0;
    for (double tick : Extent.ticks(extent.left(), extent.right())) {
      String text = Extent.tick(tick);
      int at = LEFT + column(tick);
      if (at >= free && at + text.length() <= LEFT + columns) {
        line.replace(at, at + text.length(), text);
        free = at + text.length() + 1;
      }
    }
    return line.toString().stripTrailing();
  }

  private int column(double x) {
    return (int) Math.round(extent.acrossShare(x) * (columns - 1));
  }

  private int row(double y) {
    return (int) Math.round((1 - extent.upShare(y)) * (rows - 1));
  }

  private void dots(Plot.Series series) {
    for (Plot.Point point : series.points()) {
      boolean single = point.label().length() == 1;
      put(
          column(point.x()),
          row(point.y()),
          (single ? point.label() : series.mark().letter()).charAt(0));
    }
  }

  private void join(Plot.Series series) {
    char letter = series.mark().letter().charAt(0);
    for (int i = 1; i < series.points().size(); i++) {
      Plot.Point from = series.points().get(i - 1);
      Plot.Point to = series.points().get(i);
      int steps =
          Math.max(
              Math.abs(column(to.x()) - column(from.x())), Math.abs(row(to.y()) - row(from.y())));
      for (int step = 0; step <= steps; step++) {
        double share = steps == 0 ? 0 : (double) step / steps;
        put(
            column(from.x() + share * (to.x() - from.x())),
            row(from.y() + share * (to.y() - from.y())),
            letter);
      }
    }
  }

  private void put(int column, int row, char letter) {
    if (row >= 0 && row < rows && column >= 0 && column < columns) {
      grid[row][column] = letter;
    }
  }
}
