package padside.screen;

import java.util.List;
import java.util.Map;

/**
 * Figures large enough to be read from some steps away, in full blocks; a terminal without blocks
 * shows another solid character in their place.
 */
final class Figures {
  /** Rows of the smallest figure. */
  static final int ROWS = 5;

  private static final int TALL = 34;
  private static final char BLOCK = '█';

  /** Top row first, one character a block. */
  private static final Map<Character, List<String>> SHAPES =
      Map.ofEntries(
          Map.entry('0', List.of("###", "# #", "# #", "# #", "###")),
          Map.entry('1', List.of(" # ", "## ", " # ", " # ", "###")),
          Map.entry('2', List.of("###", "  #", "###", "#  ", "###")),
          Map.entry('3', List.of("###", "  #", "###", "  #", "###")),
          Map.entry('4', List.of("# #", "# #", "###", "  #", "  #")),
          Map.entry('5', List.of("###", "#  ", "###", "  #", "###")),
          Map.entry('6', List.of("###", "#  ", "###", "# #", "###")),
          Map.entry('7', List.of("###", "  #", "  #", "  #", "  #")),
          Map.entry('8', List.of("###", "# #", "###", "# #", "###")),
          Map.entry('9', List.of("###", "# #", "###", "  #", "###")),
          Map.entry(':', List.of(" ", "#", " ", "#", " ")),
          Map.entry('.', List.of(" ", " ", " ", " ", "#")),
          Map.entry('-', List.of("  ", "  ", "##", "  ", "  ")),
          Map.entry('A', List.of("###", "# #", "###", "# #", "# #")),
          Map.entry('G', List.of("###", "#  ", "# #", "# #", "###")),
          Map.entry('I', List.of("###", " # ", " # ", " # ", "###")),
          Map.entry('K', List.of("#  #", "# # ", "##  ", "# # ", "#  #")),
          Map.entry('L', List.of("#  ", "#  ", "#  ", "#  ", "###")),
          Map.entry('M', List.of("#   #", "## ##", "# # #", "#   #", "#   #")),
          Map.entry('N', List.of("#  #", "## #", "# ##", "#  #", "#  #")),
          Map.entry('O', List.of("###", "# #", "# #", "# #", "###")),
          Map.entry('R', List.of("## ", "# #", "## ", "# #", "# #")),
          Map.entry('U', List.of("# #", "# #", "# #", "# #", "###")),
          Map.entry('W', List.of("#   #", "#   #", "# # #", "## ##", "#   #")));

  /** Cells across and down of one block, the largest first; about square on most terminals. */
  static final List<Size> BLOCKS =
      List.of(
          new Size(8, 4),
          new Size(6, 3),
          new Size(5, 3),
          new Size(4, 2),
          new Size(3, 2),
          new Size(2, 1),
          new Size(1, 1));

  private Figures() {}

  /** How many rows figures take on a canvas of that size. */
  static int rows(Size size) {
    return ROWS * scale(size);
  }

  /** A text in figures of one size. */
  record Sized(String text, Size block) {
    int width() {
      return (text.chars().map(c -> shape(c).get(0).length() + 1).sum() - 1) * block.columns();
    }

    int height() {
      return ROWS * block.rows();
    }

    /** Draws it from its upper left cell on. */
    void draw(Canvas canvas, int left, int top, Style style) {
      for (int row = top; row < top + height(); row++) {
        canvas.fill(left, row, width(), style);
      }
      int at = left;
      for (int c : text.chars().toArray()) {
        FormPane.Area block = new FormPane.Area(at, top, this.block.columns(), this.block.rows());
        figure(canvas, shape(c), block, style);
        at += (shape(c).get(0).length() + 1) * this.block.columns();
      }
    }
  }

  /** Draws digits, points and colons in the middle of the row; returns the row below them. */
  static int draw(Canvas canvas, int row, String text, Style style) {
    int scale = scale(canvas.size());
    Sized figures = new Sized(text, new Size(2 * scale, scale));
    int left = Math.max(0, (canvas.size().columns() - figures.width()) / 2);
    figures.draw(canvas, left, row, style);
    return row + rows(canvas.size());
  }

  private static int scale(Size size) {
    return size.rows() >= TALL ? 2 : 1;
  }

  private static List<String> shape(int character) {
    List<String> shape = SHAPES.get((char) character);
    if (shape == null) {
      throw new IllegalArgumentException("no figure for character " + character);
    }
    return shape;
  }

  /**
   * Draws one figure.
   *
   * @param block its upper left block
   */
  private static void figure(Canvas canvas, List<String> shape, FormPane.Area block, Style style) {
    for (int y = 0; y < shape.size() * block.height(); y++) {
      String line = shape.get(y / block.height());
      for (int x = 0; x < line.length(); x++) {
        boolean filled = line.charAt(x) == '#';
        String cells = String.valueOf(filled ? BLOCK : ' ').repeat(block.width());
        canvas.put(block.left() + x * block.width(), block.top() + y, cells, style);
      }
    }
  }
}
