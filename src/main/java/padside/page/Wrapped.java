package padside.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text broken at blanks to fit a width. */
public final class Wrapped {
  private static final int LEAST_HANGING = 8;
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private Wrapped() {}

  /** The text in lines of at most {@code width} characters; longer words are cut. */
  public static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : BLANKS.split(text.strip(), -1)) {
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

  /** The text behind a head, its further lines under its beginning. */
  public static List<String> hanging(String head, String text, int width) {
    List<String> lines = new ArrayList<>();
    for (String line : lines(text, Math.max(LEAST_HANGING, width - head.length()))) {
      lines.add((lines.isEmpty() ? head : " ".repeat(head.length())) + line);
    }
    return lines;
  }
}
