package padside.screen;

import java.text.Normalizer;

/**
 * What of a text a terminal may be shown. Control characters, marks that combine, characters that
 * turn the reading direction and anything outside the basic plane are left out: they could drive
 * the terminal or spoil the columns. Stored text is never changed by this.
 */
final class PrintableText {
  private PrintableText() {}

  /** True for a character that takes one cell and drives nothing. */
  static boolean isOneCell(char character) {
    if (character < 0x20 || (character >= 0x7f && character < 0xa0)) {
      return false;
    }
    return switch (Character.getType(character)) {
      case Character.SURROGATE,
          Character.CONTROL,
          Character.FORMAT,
          Character.NON_SPACING_MARK,
          Character.ENCLOSING_MARK,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED,
          Character.PRIVATE_USE ->
          false;
      default -> !isWide(character);
    };
  }

  /** The text composed (NFC), with every character that is not one cell shown as {@code ·}. */
  static String of(String text) {
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    StringBuilder shown = new StringBuilder(composed.length());
    for (int i = 0; i < composed.length(); i++) {
      shown.append(isOneCell(composed.charAt(i)) ? composed.charAt(i) : '·');
    }
    return shown.toString();
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
