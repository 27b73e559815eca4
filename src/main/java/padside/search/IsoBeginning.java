package padside.search;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** Dates by ISO 8601 and what they begin with, as it stands while one is typed. */
final class IsoBeginning {
  private static final Pattern FORM =
      Pattern.compile("\\d{1,4}|\\d{4}-[01]?|\\d{4}-\\d{2}(-\\d{0,2})?");
  private static final String REST = "0000-01-01";
  private static final int TO_MONTH = 7;

  private IsoBeginning() {}

  /** Whether a date may begin so. */
  static boolean is(String text) {
    if (!FORM.matcher(text).matches()) {
      return false;
    }
    boolean tens = text.length() == REST.length() - 1;
    String part = tens ? text + (text.endsWith("0") ? "1" : "0") : text;
    String whole = part.length() < TO_MONTH ? REST : part + REST.substring(part.length());
    try {
      LocalDate.parse(whole);
      return true;
    } catch (DateTimeException e) {
      return false;
    }
  }
}
