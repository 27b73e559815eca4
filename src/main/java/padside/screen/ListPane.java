package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import padside.flight.RecordId;

/** Draws lines of cells under their headings, as wide as they need and no wider than there is. */
final class ListPane {
  private static final int LEFT = 2;
  private static final int GAP = 2;
  private static final int NARROWEST = 5;

  private final Canvas canvas;
  private final List<Heading> headings;
  private final List<Integer> widths;

  private ListPane(Canvas canvas, List<Heading> headings, List<Integer> widths) {
    this.canvas = canvas;
    this.headings = headings;
    this.widths = widths;
  }

  /** One line: the record it stands for and a cell for each heading. */
  record Item(RecordId id, List<String> cells) {
    Item {
      cells = List.copyOf(cells);
    }
  }

  /**
   * What stands over a column.
   *
   * @param toRight numbers, which end below each other
   */
  record Heading(String text, boolean toRight) {
    static Heading of(String text) {
      return new Heading(text, false);
    }

    static Heading ofNumbers(String text) {
      return new Heading(text, true);
    }
  }

  /** Draws headings and lines from {@code top} to {@code bottom}, the cursor's line among them. */
  static void draw(Canvas canvas, List<Heading> headings, List<Item> items, int index, Rows rows) {
    int room = canvas.size().columns() - 2 * LEFT;
    ListPane pane = new ListPane(canvas, headings, widths(headings, items, room));
    pane.line(rows.top(), headings.stream().map(Heading::text).toList(), Style.LABEL);
    int height = rows.bottom() - rows.top();
    int first = Math.max(0, Math.min(index - height / 2, items.size() - height));
    for (int i = first; i < items.size() && i - first < height; i++) {
      int row = rows.top() + 1 + i - first;
      Style style = i == index ? Style.FOCUS : Style.PLAIN;
      if (i == index) {
        canvas.fill(0, row, canvas.size().columns(), style);
        canvas.put(0, row, ">", style);
      }
      pane.line(row, items.get(i).cells(), style);
    }
  }

  /** The first and the last row drawn into. */
  record Rows(int top, int bottom) {}

  private void line(int row, List<String> cells, Style style) {
    int column = LEFT;
    for (int i = 0; i < headings.size(); i++) {
      int width = widths.get(i);
      String text = cut(cells.get(i), width);
      int indent = headings.get(i).toRight() ? width - text.length() : 0;
      canvas.put(column + indent, row, text, style);
      column += width + GAP;
    }
  }

  /** As wide as the longest cell; while that is too much the widest column gives way. */
  private static List<Integer> widths(List<Heading> headings, List<Item> items, int room) {
    List<Integer> widths = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      int column = i;
      int widest =
          items.stream().mapToInt(item -> item.cells().get(column).length()).max().orElse(0);
      widths.add(Math.max(headings.get(i).text().length(), widest));
    }
    int gaps = GAP * (headings.size() - 1);
    while (sum(widths) + gaps > room) {
      int widest =
          IntStream.range(0, widths.size())
              .reduce((a, b) -> widths.get(b) > widths.get(a) ? b : a)
              .orElseThrow();
      if (widths.get(widest) <= NARROWEST) {
        return widths;
      }
      widths.set(widest, widths.get(widest) - 1);
    }
    return widths;
  }

  private static int sum(List<Integer> widths) {
    return widths.stream().mapToInt(Integer::intValue).sum();
  }

  private static String cut(String text, int width) {
    return text.length() <= width ? text : text.substring(0, Math.max(0, width - 1)) + "…";
  }
}
