package padside.report;

import java.util.regex.Pattern;
import padside.units.PrintableText;

/**
 * How a text stands in a cell that a spreadsheet program may open. One that such a program could
 * take for a formula gets an apostrophe in front, unless it is a plain number (OWASP, CSV
 * Injection); characters that could drive a terminal show as {@code ·}.
 */
public final class Cells {
  private static final String STARTS = "=+\\-@\\t\\r\uff1d\uff0b\uff0d\uff20";
  private static final Pattern GUARDED = Pattern.compile("(?s)'*[" + STARTS + "].*");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]{1,3})?");

  private Cells() {}

  /** The text as it is written. */
  public static String written(String text) {
    String shown = PrintableText.of(text);
    return GUARDED.matcher(shown).matches() && !isNumber(shown) ? "'" + shown : shown;
  }

  /** The text that was written as this cell, whoever wrote it. */
  public static String read(String cell) {
    return cell.startsWith("'") && GUARDED.matcher(cell).matches() ? cell.substring(1) : cell;
  }

  /** Whether a cell is a number and nothing else. */
  public static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }
}
