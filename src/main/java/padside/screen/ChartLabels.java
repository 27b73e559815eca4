package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts words and marks on a drawing so that none hides another and lines are hidden as little as
 * can be.
 */
final class ChartLabels {
  /** Outward is more sideways than up or down, a cell being twice as high as wide. */
  private static final double SIDEWAYS = 0.4;

  private final Canvas canvas;
  private final DotGrid grid;
  private final List<Spot> taken = new ArrayList<>();

  ChartLabels(Canvas canvas, DotGrid grid) {
    this.canvas = canvas;
    this.grid = grid;
  }

  /** Where a text may start, and how wide it is. */
  private record Spot(int column, int row, int width) {
    boolean overlaps(Spot other) {
      return row == other.row
          && column < other.column + other.width
          && other.column < column + width;
    }
  }

  /** A mark just there, over what is drawn; of two in one cell the last shows. */
  void mark(DotGrid.Dot at, String mark, Style style) {
    Spot spot = new Spot(column(at), row(at), mark.length());
    if (lies(spot)) {
      put(spot, mark, style);
    }
  }

  /**
   * The first of the texts that finds room beside a dot, outward first; else the last of them over
   * as few lines as can be; nothing where words stand everywhere.
   *
   * @param right where outward is, from -1 to 1
   * @param down where outward is, from -1 to 1
   */
  void beside(DotGrid.Dot at, double right, double down, Label label) {
    Optional<Spot> best = Optional.empty();
    for (String text : label.texts()) {
      best = best(at, right, down, text.length());
      if (best.isPresent() && hidden(best.get()) == 0) {
        put(best.get(), text, label.style());
        return;
      }
    }
    String last = label.texts().get(label.texts().size() - 1);
    best.ifPresent(spot -> put(spot, last, label.style()));
  }

  /** A text, longest form first. */
  record Label(List<String> texts, Style style) {
    Label {
      texts = List.copyOf(texts);
    }
  }

  private Optional<Spot> best(DotGrid.Dot at, double right, double down, int width) {
    return around(at, right, down, width).stream()
        .filter(this::lies)
        .filter(spot -> taken.stream().noneMatch(spot::overlaps))
        .reduce((best, next) -> hidden(next) < hidden(best) ? next : best);
  }

  /** Beside the dot outward or over it, then the other way, then the rows above and below. */
  private List<Spot> around(DotGrid.Dot at, double right, double down, int width) {
    List<Spot> spots = new ArrayList<>();
    boolean beside = Math.abs(right) > SIDEWAYS;
    int out = down > 0 ? 1 : -1;
    int over = inside(column(at) - width / 2, width);
    for (int side : new int[] {1, -1}) {
      int column = beside ? beside(at, side * (right < 0 ? -1 : 1), width) : over;
      int row = beside ? row(at) : row(at) + side * out;
      for (int shift : new int[] {0, side * out, -side * out, 2 * side * out}) {
        spots.add(new Spot(column, row + shift, width));
      }
    }
    for (int way : new int[] {1, -1}) {
      spots.add(new Spot(beside(at, way, width), row(at), width));
      spots.add(new Spot(over, row(at) + way * out, width));
    }
    return spots;
  }

  private int beside(DotGrid.Dot at, int way, int width) {
    return way > 0 ? column(at) + 2 : column(at) - 1 - width;
  }

  private int inside(int column, int width) {
    FormPane.Area area = grid.area();
    return Math.max(area.left(), Math.min(column, area.left() + area.width() - width));
  }

  private boolean lies(Spot spot) {
    FormPane.Area area = grid.area();
    return spot.column >= area.left()
        && spot.column + spot.width <= area.left() + area.width()
        && spot.row >= area.top()
        && spot.row < area.top() + area.height();
  }

  private long hidden(Spot spot) {
    long hidden = 0;
    for (int i = 0; i < spot.width; i++) {
      hidden += grid.isDrawn(spot.column + i, spot.row) ? 1 : 0;
    }
    return hidden;
  }

  private void put(Spot spot, String text, Style style) {
    taken.add(spot);
    canvas.put(spot.column, spot.row, text, style);
  }

  private int column(DotGrid.Dot at) {
    return grid.area().left() + Math.floorDiv(at.x(), grid.cellAcross());
  }

  private int row(DotGrid.Dot at) {
    return grid.area().top() + Math.floorDiv(at.y(), grid.cellDown());
  }
}
