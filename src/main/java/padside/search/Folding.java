package padside.search;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Texts as they are compared: {@code Äpfel} is {@code apfel}, {@code Straße} is {@code strasse}.
 */
public final class Folding {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final int ASCII_END = 128;

  private Folding() {}

  /** The text without letter case and accents, in Unicode's compatibility decomposition. */
  public static String of(String text) {
    if (text.chars().allMatch(letter -> letter < ASCII_END)) {
      return text.toLowerCase(Locale.ROOT);
    }
    String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
    // By way of capitals, so that one letter that is two of them becomes two.
    return bare.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }
}
