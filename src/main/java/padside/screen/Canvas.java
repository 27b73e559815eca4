package padside.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import padside.units.PrintableText;

/**
 * A grid that a view draws on; what falls outside is cut, never an error. Every cell holds one
 * character of the basic plane; anything a terminal could obey or that is not one cell wide is
 * drawn as {@code ·}.
 */
final class Canvas {
  private final Size size;
  private final char[][] cells;
  private final Style[][] styles;
  private Optional<Frame.Spot> cursor = Optional.empty();

  Canvas(Size size) {
    this.size = size;
    this.cells = new char[size.rows()][size.columns()];
    this.styles = new Style[size.rows()][size.columns()];
    for (int row = 0; row < size.rows(); row++) {
      Arrays.fill(cells[row], ' ');
      Arrays.fill(styles[row], Style.PLAIN);
    }
  }

  Size size() {
    return size;
  }

  /** Writes text from a cell to the right, cut at the edge. */
  Canvas put(int column, int row, String text, Style style) {
    for (int i = 0; i < text.length(); i++) {
      set(column + i, row, text.charAt(i), style);
    }
    return this;
  }

  Canvas put(int column, int row, Line line) {
    return put(column, row, line.text(), line.style());
  }

  /** Fills a row's stretch with one style and blanks. */
  Canvas fill(int column, int row, int width, Style style) {
    return put(column, row, " ".repeat(Math.max(0, width)), style);
  }

  /** Shows the cursor at a cell. */
  Canvas cursorAt(int column, int row) {
    if (inside(column, row)) {
      cursor = Optional.of(new Frame.Spot(column, row));
    }
    return this;
  }

  Frame frame() {
    List<Frame.Row> rows = new ArrayList<>();
    for (int row = 0; row < size.rows(); row++) {
      rows.add(new Frame.Row(spans(row)));
    }
    return new Frame(size, rows, cursor);
  }

  private void set(int column, int row, char character, Style style) {
    if (inside(column, row)) {
      cells[row][column] = PrintableText.isOneCell(character) ? character : '·';
      styles[row][column] = style;
    }
  }

  private boolean inside(int column, int row) {
    return column >= 0 && column < size.columns() && row >= 0 && row < size.rows();
  }

  private List<Frame.Span> spans(int row) {
    List<Frame.Span> spans = new ArrayList<>();
    int start = 0;
    for (int column = 1; column <= size.columns(); column++) {
      if (column == size.columns() || styles[row][column] != styles[row][start]) {
        spans.add(
            new Frame.Span(new String(cells[row], start, column - start), styles[row][start]));
        start = column;
      }
    }
    return spans;
  }
}
