package padside.screen;

import java.util.List;
import java.util.Locale;
import padside.page.Wrapped;

/** Text broken at blanks to fit a width. */
final class Paragraph {
  private static final int MARGIN = 2;

  private Paragraph() {}

  /** Draws a text over the whole width but a margin; returns the row after it. */
  static int draw(Canvas canvas, int row, String text, Style style) {
    int at = row;
    for (String line : lines(text, canvas.size().columns() - 2 * MARGIN)) {
      canvas.put(MARGIN, at++, line, style);
    }
    return at;
  }

  /** The text behind a head, its further lines under its beginning. */
  static List<String> hanging(String head, String text, int width) {
    return Wrapped.hanging(head, text, width);
  }

  /** The text with a capital at its beginning. */
  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** The text in lines of at most {@code width} characters; longer words are cut. */
  static List<String> lines(String text, int width) {
    return Wrapped.lines(text, width);
  }

  /**
   * The text on one line of at most {@code width} characters; what was cut off shows as {@code …}.
   * A number goes whole: the beginning of one would be another.
   */
  static String cut(String text, int width) {
    if (text.length() <= width) {
      return text;
    }
    int end = Math.max(0, width - 1);
    boolean begun = end < text.length() && inNumber(text, end);
    while (begun && end > 0 && inNumber(text, end - 1)) {
      end--;
    }
    return text.substring(0, end).stripTrailing() + "…";
  }

  private static boolean inNumber(String text, int at) {
    boolean point = text.charAt(at) == '.' && at + 1 < text.length();
    return Character.isDigit(text.charAt(point ? at + 1 : at));
  }
}
