package padside.screen;

import java.util.List;

/**
 * A stretch of the canvas divided into dots that are as wide as high, for lines and areas: two by
 * four dots a cell where the terminal shows braille, else one by two. A cell is taken to be twice
 * as high as wide. What falls outside is cut.
 */
final class DotGrid {
  private static final char NO_BRAILLE_DOT = '\u2800';

  /**
   * Braille dots by row and column of a cell (The Unicode Standard, block Braille Patterns: dots 1
   * to 3 and 7 down the left side, 4 to 6 and 8 down the right).
   */
  private static final int[][] BRAILLE_BITS = {
    {0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}
  };

  /**
   * What is drawn with. Of several in one cell the last of these gives style and, without braille,
   * the character.
   */
  enum Ink {
    /** A thin line to see other things by. */
    HAIR(4, "'.:", Style.LABEL),
    /** A dotted line, or the character alone without braille. */
    FAINT(2, "ooo", Style.PLAIN),
    /** An area; its dots are chosen by who fills it. */
    AREA(1, "%%%", Style.PLAIN),
    /** A whole line. */
    LINE(1, "'.:", Style.STRONG),
    /** A boundary. */
    BORDER(1, "###", Style.PLAIN);

    private final int every;
    private final String halves;
    private final Style style;

    /**
     * Makes an ink.
     *
     * @param every which dots of a line are set; twice as many without braille
     * @param halves the characters for the upper half, the lower half and both
     */
    Ink(int every, String halves, Style style) {
      this.every = every;
      this.halves = halves;
      this.style = style;
    }

    /** Two cells of it, for a legend. */
    String sample(boolean braille) {
      DotGrid grid = new DotGrid(new FormPane.Area(0, 0, 2, 1), braille);
      for (int x = 0; x < grid.across(); x += grid.every(this)) {
        for (int y = 0; y < grid.down(); y++) {
          Dot dot = new Dot(x, y);
          if (this == AREA ? grid.stippled(dot) : y == grid.down() / 2) {
            grid.dot(dot, this);
          }
        }
      }
      Canvas canvas = new Canvas(new Size(2, 1));
      grid.put(canvas);
      return canvas.frame().text().strip();
    }
  }

  /** A dot, counted from 0 at the top left; may lie outside. */
  record Dot(int x, int y) {}

  private final FormPane.Area area;
  private final boolean braille;
  private final int[][] bits;
  private final Ink[][] inks;

  DotGrid(FormPane.Area area, boolean braille) {
    this.area = area;
    this.braille = braille;
    this.bits = new int[area.height()][area.width()];
    this.inks = new Ink[area.height()][area.width()];
  }

  private int every(Ink ink) {
    return braille ? ink.every : Math.max(1, ink.every / 2);
  }

  /** Whether a few cells have dots enough for a small shape. */
  boolean isFine() {
    return braille;
  }

  /** Dots a cell is wide. */
  int cellAcross() {
    return braille ? 2 : 1;
  }

  /** Dots a cell is high. */
  int cellDown() {
    return 2 * cellAcross();
  }

  int across() {
    return area.width() * cellAcross();
  }

  int down() {
    return area.height() * cellDown();
  }

  FormPane.Area area() {
    return area;
  }

  /** Whether anything is drawn in a cell of the canvas. */
  boolean isDrawn(int column, int row) {
    int x = column - area.left();
    int y = row - area.top();
    return x >= 0 && x < area.width() && y >= 0 && y < area.height() && bits[y][x] != 0;
  }

  /** Whether a dot belongs to the half of all dots that fill an area; without braille all do. */
  boolean stippled(Dot dot) {
    return !braille || (dot.x + dot.y) % 2 == 0;
  }

  void dot(Dot dot, Ink ink) {
    int column = Math.floorDiv(dot.x, cellAcross());
    int row = Math.floorDiv(dot.y, cellDown());
    if (column < 0 || column >= area.width() || row < 0 || row >= area.height()) {
      return;
    }
    bits[row][column] |=
        BRAILLE_BITS[Math.floorMod(dot.y, cellDown())][Math.floorMod(dot.x, cellAcross())];
    Ink before = inks[row][column];
    inks[row][column] = before == null || before.compareTo(ink) < 0 ? ink : before;
  }

  /** Lines from each dot to the next (Bresenham, IBM Systems Journal 4, 1965). */
  void lines(List<Dot> corners, Ink ink) {
    int drawn = 0;
    for (int i = 1; i < corners.size(); i++) {
      drawn = line(corners.get(i - 1), corners.get(i), ink, drawn);
    }
    dot(corners.get(corners.size() - 1), ink);
  }

  /** The last dot is left to the next line; {@code drawn} carries the dashes on from the last. */
  private int line(Dot from, Dot to, Ink ink, int drawn) {
    int right = Math.abs(to.x - from.x);
    int up = -Math.abs(to.y - from.y);
    int count = drawn;
    int x = from.x;
    int y = from.y;
    for (int error = right + up; x != to.x || y != to.y; count++) {
      if (count % every(ink) == 0) {
        dot(new Dot(x, y), ink);
      }
      int twice = 2 * error;
      if (twice >= up) {
        error += up;
        x += Integer.signum(to.x - from.x);
      }
      if (twice <= right) {
        error += right;
        y += Integer.signum(to.y - from.y);
      }
    }
    return count;
  }

  /** Puts all that was drawn on the canvas. */
  void put(Canvas canvas) {
    for (int row = 0; row < area.height(); row++) {
      for (int column = 0; column < area.width(); column++) {
        if (bits[row][column] != 0) {
          Ink ink = inks[row][column];
          String shown = String.valueOf(character(bits[row][column], ink));
          canvas.put(area.left() + column, area.top() + row, shown, ink.style);
        }
      }
    }
  }

  private char character(int bits, Ink ink) {
    return braille ? (char) (NO_BRAILLE_DOT + bits) : ink.halves.charAt(bits - 1);
  }
}
