package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Text broken at blanks to fit a width. */
final class Paragraph {
  private static final int MARGIN = 2;
  private static final int LEAST_HANGING = 8;

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
    List<String> lines = new ArrayList<>();
    for (String line : lines(text, Math.max(LEAST_HANGING, width - head.length()))) {
      lines.add((lines.isEmpty() ? head : " ".repeat(head.length())) + line);
    }
    return lines;
  }

  /** The text with a capital at its beginning. */
  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** The text in lines of at most {@code width} characters; longer words are cut. */
  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+", -1)) {
      String rest = word;
      if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "");
      while (line.length() + rest.length() > width && width > 0) {
        int room = width - line.length();
        lines.add(line + rest.substring(0, room));
        rest = rest.substring(room);
        line.setLength(0);
      }
      line.append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /**
   * The text on one line of at most {@code width} characters; what was cut off shows as {@code …}.
   */
  static String cut(String text, int width) {
    return text.length() <= width
        ? text
        : text.substring(0, Math.max(0, width - 1)).stripTrailing() + "…";
  }
}
