package padside.app;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.form.Dates;
import padside.units.Notation;
import padside.units.Reading;

/**
 * Dates as spreadsheets have them: ISO, with points the day first (DIN 5008), with slashes as told;
 * where nobody told only what can be read in one way.
 */
record TypedDates(Optional<Order> order) implements Notation<LocalDate> {
  /** What stands first in a date with slashes. */
  enum Order {
    DAY_FIRST,
    MONTH_FIRST;

    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  private static final int MONTHS = 12;
  private static final Pattern PARTS =
      Pattern.compile("(\\d{1,2})([./])(\\d{1,2})\\2(\\d{4})(?:[ T].*)?");

  @Override
  public Reading<LocalDate> read(String typed) {
    Matcher parts = PARTS.matcher(typed.strip());
    if (!parts.matches()) {
      return new Dates().read(typed.strip().replaceFirst("[ T]\\d{1,2}:.*", ""));
    }
    int first = Integer.parseInt(parts.group(1));
    int second = Integer.parseInt(parts.group(3));
    boolean unsure = first <= MONTHS && second <= MONTHS && first != second;
    if (parts.group(2).equals("/") && unsure && order.isEmpty()) {
      return Reading.refused(
          Reading.echo(typed)
              + " can be read in two ways; say --dates day-first or --dates month-first.");
    }
    boolean monthFirst =
        parts.group(2).equals("/") && order.map(Order.MONTH_FIRST::equals).orElse(second > MONTHS);
    try {
      int year = Integer.parseInt(parts.group(4));
      return Reading.of(
          monthFirst ? LocalDate.of(year, first, second) : LocalDate.of(year, second, first));
    } catch (DateTimeException e) {
      return new Dates().read(typed);
    }
  }

  @Override
  public String show(LocalDate date) {
    return date.toString();
  }

  @Override
  public String example() {
    return new Dates().example();
  }
}
