package padside.screen;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Logbook;
import padside.report.FlightWords;

/** Days as they are called. */
final class DayWords {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private DayWords() {}

  /** Date and field: {@code Sat 2 May 2026, Mill Meadow}. */
  static String of(Day day, Logbook book) {
    String date = day.date().map(DayWords::of).orElse("day without a date");
    return day.field().flatMap(book::field).map(Field::name).map(f -> date + ", " + f).orElse(date);
  }

  /** The time of day there: {@code 19:43}. */
  static String clock(Instant at, World world) {
    return CLOCK.withZone(world.zone()).format(at);
  }

  /** {@code Sat 2 May 2026}. */
  static String of(LocalDate date) {
    return FlightWords.date(date);
  }
}
