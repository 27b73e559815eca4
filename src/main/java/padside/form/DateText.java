package padside.form;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import padside.units.Notation;
import padside.units.Reading;

/** A date as far as it is known, ISO 8601: {@code 2026-05-02}, {@code 2026-05} or {@code 2026}. */
public record DateText() implements Notation<String> {
  @Override
  public Reading<String> read(String typed) {
    String text = typed.strip();
    return exists(text)
        ? Reading.of(text)
        : Reading.refused(
            Reading.echo(text) + " is not a date; type it like 2026-05-02, 2026-05 or 2026.");
  }

  private static boolean exists(String text) {
    try {
      return switch (text.length()) {
        case 4 -> text.matches("[0-9]{4}");
        case 7 -> YearMonth.parse(text).isValidDay(1);
        default -> LocalDate.parse(text).toString().equals(text);
      };
    } catch (DateTimeException e) {
      return false;
    }
  }

  @Override
  public String show(String value) {
    return value;
  }

  @Override
  public String example() {
    return "2026-05-02";
  }
}
