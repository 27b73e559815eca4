package padside.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import padside.fact.RecordId;

/** Draws lines of cells under their headings, as wide as they need and no wider than there is. */
final class ListPane {
  private static final int LEFT = 2;

  private final Canvas canvas;
  private final List<Heading> headings;
  private final ListColumns columns;

  private ListPane(Canvas canvas, List<Heading> headings, ListColumns columns) {
    this.canvas = canvas;
    this.headings = headings;
    this.columns = columns;
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
   * @param brief what stands there where the column needs less room than its heading
   * @param toRight numbers, which end below each other
   * @param fit what becomes of the column where there is little room
   */
  record Heading(String text, String brief, boolean toRight, Fit fit) {
    /** What becomes of a column where not all of them have room. */
    enum Fit {
      /** Its cells are cut. */
      CUT,
      /** Nothing: a part of a number or a date would be a wrong one. */
      WHOLE,
      /** It is left out; the last of several first. */
      SPARE
    }

    static Heading of(String text) {
      return new Heading(text, text, false, Fit.CUT);
    }

    static Heading ofNumbers(String text) {
      return new Heading(text, text, true, Fit.WHOLE);
    }

    Heading whole() {
      return new Heading(text, brief, toRight, Fit.WHOLE);
    }

    Heading spare() {
      return new Heading(text, brief, toRight, Fit.SPARE);
    }

    Heading orBriefly(String shorter) {
      return new Heading(text, shorter, toRight, fit);
    }

    /** The words that fit a column. */
    String within(int width) {
      return text.length() <= width ? text : brief;
    }
  }

  /** Draws headings and lines from top to bottom, the cursor's line among them. */
  static void draw(Canvas canvas, List<Heading> headings, List<Item> items, int index, Rows rows) {
    int room = canvas.size().columns() - 2 * LEFT;
    ListPane pane = new ListPane(canvas, headings, ListColumns.of(headings, items, room));
    pane.line(rows.top(), pane.words(), Style.LABEL);
    int height = rows.lines();
    int first = Math.max(0, Math.min(index - height / 2, items.size() - height));
    for (int i = first; i < items.size() && i - first < height; i++) {
      int row = rows.top() + 1 + (i - first) * rows.step();
      Style style = i == index ? Style.FOCUS : Style.PLAIN;
      if (i == index) {
        canvas.fill(0, row, canvas.size().columns(), style);
        canvas.put(0, row, ">", style);
      }
      pane.line(row, items.get(i).cells(), style);
    }
  }

  private List<String> words() {
    return IntStream.range(0, headings.size())
        .mapToObj(i -> headings.get(i).within(columns.widths().get(i)))
        .toList();
  }

  /** The last cell of a line where it has to be cut, to be shown whole elsewhere. */
  static Optional<String> cut(Size size, List<Heading> headings, List<Item> items, int index) {
    int last = headings.size() - 1;
    int width = ListColumns.of(headings, items, size.columns() - 2 * LEFT).last();
    return Optional.of(items.get(index).cells().get(last)).filter(text -> text.length() > width);
  }

  /**
   * The first and the last row drawn into.
   *
   * @param step from one line to the next
   */
  record Rows(int top, int bottom, int step) {
    Rows(int top, int bottom) {
      this(top, bottom, 1);
    }

    /** As the flier's hands want it. */
    Rows apart(World world) {
      return new Rows(top, bottom, world.ease().step());
    }

    private int lines() {
      return (bottom - top + step - 1) / step;
    }
  }

  private void line(int row, List<String> cells, Style style) {
    int column = LEFT;
    for (int i = 0; i < headings.size(); i++) {
      int width = columns.widths().get(i);
      if (columns.isOut(i)) {
        continue;
      }
      String text = Paragraph.cut(cells.get(i), width);
      int indent = headings.get(i).toRight() ? width - text.length() : 0;
      canvas.put(column + indent, row, text, style);
      column += width + columns.gap();
    }
  }
}
