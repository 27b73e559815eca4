package padside.units;

/**
 * What of a text may be shown on a screen, in a report or on standard output. Control characters
 * and characters that turn the reading direction could drive a terminal, so they are shown as
 * {@code ·} and never obeyed. Stored text is never changed by this.
 */
public final class PrintableText {
  private PrintableText() {}

  /** The text with every character that could drive a terminal shown as {@code ·}. */
  public static String of(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .map(point -> isPrintable(point) ? point : '·')
        .forEach(shown::appendCodePoint);
    return shown.toString();
  }

  /** True for a character that only shows itself. */
  public static boolean isPrintable(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }

  /** True for a printable character of the basic plane that takes just one cell by itself. */
  public static boolean isOneCell(char character) {
    int type = Character.getType(character);
    boolean combines = type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
    return isPrintable(character) && !combines && !isWide(character);
  }

  /** East Asian wide and fullwidth blocks of the basic plane (Unicode Standard Annex 11). */
  private static boolean isWide(char character) {
    return (character >= 0x1100 && character <= 0x115f)
        || (character >= 0x2e80 && character <= 0xa4cf)
        || (character >= 0xac00 && character <= 0xd7a3)
        || (character >= 0xf900 && character <= 0xfaff)
        || (character >= 0xfe30 && character <= 0xfe6f)
        || (character >= 0xff00 && character <= 0xff60)
        || (character >= 0xffe0 && character <= 0xffe6);
  }
}
