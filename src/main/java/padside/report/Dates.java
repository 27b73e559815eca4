package padside.report;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.units.Reading;

/**
 * A stretch of dates.
 *
 * @param from absent where it has no beginning
 * @param to absent where it has no end; the last date belongs to it
 */
record Dates(Optional<LocalDate> from, Optional<LocalDate> to, String words) {
  static final Dates ALL = new Dates(Optional.empty(), Optional.empty(), "all of the log");

  private static final Pattern YEAR = Pattern.compile("[0-9]{4}");
  private static final Pattern RANGE = Pattern.compile("(\\S+)\\s*\\.\\.\\s*(\\S+)");

  static Dates ofYear(int year) {
    return new Dates(
        Optional.of(LocalDate.of(year, 1, 1)),
        Optional.of(LocalDate.of(year, 12, 31)),
        String.valueOf(year));
  }

  /** The year of the latest of some dates; all where there are none. */
  static Dates lastYear(Collection<LocalDate> dates) {
    return dates.stream()
        .max(Comparator.naturalOrder())
        .map(last -> ofYear(last.getYear()))
        .orElse(ALL);
  }

  static Reading<Dates> read(String typed) {
    Matcher range = RANGE.matcher(typed);
    try {
      if (typed.equals("all")) {
        return Reading.of(ALL);
      }
      if (YEAR.matcher(typed).matches()) {
        return Reading.of(ofYear(Integer.parseInt(typed)));
      }
      if (range.matches()) {
        return between(typed, LocalDate.parse(range.group(1)), LocalDate.parse(range.group(2)));
      }
      LocalDate only = LocalDate.parse(typed);
      return between(typed, only, only);
    } catch (DateTimeException e) {
      return Reading.refused(
          Reading.echo(typed)
              + " is no year and no dates; write 2026, 2026-03-01..2026-10-31 or all.");
    }
  }

  private static Reading<Dates> between(String typed, LocalDate from, LocalDate to) {
    String words =
        from.equals(to)
            ? FlightWords.date(from)
            : FlightWords.date(from) + " to " + FlightWords.date(to);
    return from.isAfter(to)
        ? Reading.refused(Reading.echo(typed) + " ends before it begins; turn the dates round.")
        : Reading.of(new Dates(Optional.of(from), Optional.of(to), words));
  }

  /** Whether a date belongs to it; an unknown one only where all do. */
  boolean holds(Optional<LocalDate> date) {
    if (from.isEmpty() && to.isEmpty()) {
      return true;
    }
    return date.filter(day -> from.isEmpty() || !day.isBefore(from.get()))
        .filter(day -> to.isEmpty() || !day.isAfter(to.get()))
        .isPresent();
  }
}
