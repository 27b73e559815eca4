package padside.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Typed text taken apart into numbers, each with what follows it up to the next number. */
final class Typed {
  /** Longer texts are a slip of a paste, not a quantity. */
  private static final int LONGEST = 64;

  /** A plain number with a point or a comma. */
  static final String DECIMAL = "(?:\\d++(?:[.,]\\d*+)?+|[.,]\\d++)";

  private static final int LONGEST_ECHO = 24;

  private static final Pattern TERM =
      Pattern.compile(
          "\\s*+(?:(?:(?<whole>\\d++)[\\s-]++)?+(?<top>\\d++)/(?<bottom>\\d++)|(?<decimal>"
              + DECIMAL
              + "))(?<unit>[^\\d.,]*+)");

  private static final Pattern BLANKS = Pattern.compile("[\\s\\u00a0\\u2007\\u2009\\u202f]+");
  private static final Pattern DOT_BEHIND = Pattern.compile("(?<=[a-z])\\.$");
  private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

  private Typed() {}

  /** A number and the unit typed after it, lower case, without blanks, perhaps empty. */
  record Term(double number, String unit) {}

  /** Why no notation reads such a text, as the middle of a sentence. */
  static Optional<String> unfit(String typed) {
    if (typed.isBlank()) {
      return Optional.of("is empty");
    }
    return typed.strip().length() > LONGEST
        ? Optional.of("is longer than " + LONGEST + " characters")
        : Optional.empty();
  }

  /** Lower case, trimmed, with the typographer's signs replaced by the keyboard's. */
  static String normal(String typed) {
    String plain =
        typed
            .toLowerCase(Locale.ROOT)
            .replace('\u2212', '-')
            .replace('\u00ba', '°')
            .replace('\u2032', '\'')
            .replace('\u2019', '\'')
            .replace('\u2033', '"')
            .replace('\u201d', '"')
            .replace('\u22c5', '·')
            .replace('\u2219', '·')
            .replace('\u2022', '·');
    String blank = BLANKS.matcher(plain).replaceAll(" ");
    return DOT_BEHIND.matcher(blank).replaceAll("").strip();
  }

  /**
   * The terms of a text without its sign. The objection is the middle of a sentence: it says what
   * is wrong with the text, not how to type it.
   */
  static Reading<List<Term>> terms(String unsigned) {
    List<Term> terms = new ArrayList<>();
    Matcher matcher = TERM.matcher(unsigned);
    int at = 0;
    do {
      if (!matcher.region(at, unsigned.length()).lookingAt()) {
        return Reading.refused(terms.isEmpty() ? "does not begin with a number" : "is unclear");
      }
      Reading<Double> number = number(matcher);
      if (number.objection().isPresent()) {
        return Reading.refused(number.objection().get());
      }
      terms.add(new Term(number.value().orElseThrow(), matcher.group("unit").replace(" ", "")));
      at = matcher.end();
    } while (at < unsigned.length());
    return Reading.of(List.copyOf(terms));
  }

  private static Reading<Double> number(Matcher matcher) {
    String decimal = matcher.group("decimal");
    if (decimal != null) {
      return decimal(decimal);
    }
    double bottom = Double.parseDouble(matcher.group("bottom"));
    if (bottom == 0) {
      return Reading.refused("divides by zero");
    }
    String whole = matcher.group("whole");
    double fraction = Double.parseDouble(matcher.group("top")) / bottom;
    return Reading.of(whole == null ? fraction : Double.parseDouble(whole) + fraction);
  }

  /** Reads what {@link #DECIMAL} matches; a comma that could part thousands is refused. */
  static Reading<Double> decimal(String text) {
    if (THOUSANDS.matcher(text).matches()) {
      return Reading.refused(
          "could mean " + text.replace(",", "") + " or " + text.replace(',', '.'));
    }
    return Reading.of(Double.parseDouble(text.replace(',', '.')));
  }

  /** The text in quotes as an objection may repeat it: short, and nothing a terminal obeys. */
  static String echo(String typed) {
    StringBuilder safe = new StringBuilder("\"");
    String line = typed.strip();
    line.codePoints()
        .limit(LONGEST_ECHO)
        .map(point -> PrintableText.isPrintable(point) ? point : '?')
        .forEach(safe::appendCodePoint);
    return safe.append(line.codePoints().count() > LONGEST_ECHO ? "…\"" : "\"").toString();
  }
}
