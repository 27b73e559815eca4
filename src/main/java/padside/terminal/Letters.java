package padside.terminal;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;

/**
 * The letters of a window and the cell each of them stands in.
 *
 * @param plain how they are drawn
 * @param bold and where they are to stand out
 * @param width of a cell, in pixels
 * @param height of a cell, in pixels
 * @param ascent from the top of a cell to the line letters stand on, in pixels
 */
record Letters(Font plain, Font bold, int width, int height, int ascent) {
  private static final int SMALLEST = 8;
  private static final int LARGEST = 60;
  private static final int STEP = 2;
  private static final FontRenderContext SMOOTH = new FontRenderContext(null, true, false);

  static Letters of(int points) {
    Font font = new Font(Font.MONOSPACED, Font.PLAIN, points);
    LineMetrics line = font.getLineMetrics("W", SMOOTH);
    return new Letters(
        font,
        font.deriveFont(Font.BOLD),
        (int) Math.max(1, Math.round(font.getStringBounds("W", SMOOTH).getWidth())),
        (int) Math.max(1, Math.ceil(line.getAscent() + line.getDescent())),
        (int) Math.ceil(line.getAscent()));
  }

  /** So many steps larger, or smaller; within what can be read and still fits. */
  Letters steps(int larger) {
    return of(Math.max(SMALLEST, Math.min(LARGEST, plain.getSize() + STEP * larger)));
  }
}
