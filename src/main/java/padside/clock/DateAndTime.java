package padside.clock;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import padside.units.Notation;
import padside.units.Reading;

/**
 * A date, a time of day or both, as told at the field: {@code 14:32}, {@code 1432}, {@code 2:32
 * pm}, {@code 17 Oct 14:32}, {@code 2026-10-17 14:32}. What is left out is as the clock shows it; a
 * year that is left out is the one that comes nearest.
 *
 * @param shown what the clock shows
 * @param nearest what a date without a year should lie near
 */
public record DateAndTime(Instant shown, Instant nearest, ZoneId zone)
    implements Notation<Instant> {
  private static final int FIRST_YEAR = 2000;
  private static final int LAST_YEAR = 2099;
  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
  private static final List<String> MONTHS =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");

  /** A time of day without a colon, which wants two hands. */
  private static final Pattern DIGITS = Pattern.compile("^(\\d{1,2})(\\d{2})( ?[ap]m)?$");

  private static final Pattern WHOLE =
      Pattern.compile(
          "(?:(?<iso>\\d{4}-\\d{1,2}-\\d{1,2})"
              + "|(?<day>\\d{1,2})\\.? ?(?<month>[a-z]{3,9})\\.?(?:,? (?<year>\\d{4}))?"
              + "|(?<month2>[a-z]{3,9})\\.? ?(?<day2>\\d{1,2})(?:,? (?<year2>\\d{4}))?)?"
              + "(?:(?:^|,? |t)(?<hour>\\d{1,2})[:.](?<minute>\\d{2})(?:[:.](?<second>\\d{2}))?"
              + " ?(?<half>[ap]m)?)?");

  /** Whether a clock that shows this cannot be right: the year is none that is taken. */
  public static boolean isAbsurd(Instant time) {
    int year = time.atOffset(ZoneOffset.UTC).getYear();
    return year < FIRST_YEAR || year > LAST_YEAR;
  }

  @Override
  public Reading<Instant> read(String typed) {
    String text = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    Matcher parts = WHOLE.matcher(DIGITS.matcher(text).replaceFirst("$1:$2$3"));
    try {
      if (!text.isEmpty() && parts.matches()) {
        return inRange(LocalDateTime.of(date(parts), time(parts)));
      }
    } catch (DateTimeException e) {
      return refused(typed);
    }
    return refused(typed);
  }

  private Reading<Instant> inRange(LocalDateTime time) {
    return time.getYear() < FIRST_YEAR || time.getYear() > LAST_YEAR
        ? Reading.refused(
            "The year "
                + time.getYear()
                + " is outside 2000 to 2099; type it with the date, like "
                + example()
                + ".")
        : Reading.of(time.atZone(zone).toInstant());
  }

  private Reading<Instant> refused(String typed) {
    return Reading.refused(
        Reading.echo(typed)
            + " is no date or time; type it like 14:32, 17 Oct 14:32 or "
            + example()
            + ".");
  }

  private LocalDate date(Matcher parts) {
    if (parts.group("iso") != null) {
      int[] numbers =
          IntStream.of(0, 1, 2).map(i -> number(parts.group("iso").split("-", 3)[i])).toArray();
      return LocalDate.of(numbers[0], numbers[1], numbers[2]);
    }
    String month = first(parts, "month");
    if (month == null) {
      return LocalDate.ofInstant(shown, zone);
    }
    int day = number(first(parts, "day"));
    String year = first(parts, "year");
    return year == null
        ? nearest(month(month), day)
        : LocalDate.of(number(year), month(month), day);
  }

  /** Of the years around the one in which the date comes nearest; 29 February has not each. */
  private LocalDate nearest(int month, int day) {
    LocalDate near = LocalDate.ofInstant(nearest, zone);
    return IntStream.rangeClosed(-4, 4)
        .map(years -> near.getYear() + years)
        .mapToObj(year -> exact(year, month, day))
        .flatMap(Optional::stream)
        .min(Comparator.comparing(date -> Math.abs(ChronoUnit.DAYS.between(near, date))))
        .orElseThrow(() -> new DateTimeException("no such day"));
  }

  private static Optional<LocalDate> exact(int year, int month, int day) {
    try {
      return Optional.of(LocalDate.of(year, month, day));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static int month(String name) {
    return IntStream.range(0, MONTHS.size())
        .filter(i -> MONTHS.get(i).startsWith(name) || (i == 8 && name.equals("sept")))
        .map(i -> i + 1)
        .findFirst()
        .orElseThrow(() -> new DateTimeException("no such month"));
  }

  private LocalTime time(Matcher parts) {
    LocalTime now = LocalTime.ofInstant(shown, zone);
    if (parts.group("hour") == null) {
      return now;
    }
    int hour = hour(number(parts.group("hour")), parts.group("half"));
    int minute = number(parts.group("minute"));
    if (parts.group("second") != null) {
      return LocalTime.of(hour, minute, number(parts.group("second")));
    }
    LocalTime typed = LocalTime.of(hour, minute);
    return now.truncatedTo(ChronoUnit.MINUTES).equals(typed) ? now : typed;
  }

  private static int hour(int typed, String half) {
    if (half == null) {
      return typed;
    }
    if (typed < 1 || typed > 12) {
      throw new DateTimeException("no such hour");
    }
    return typed % 12 + (half.equals("pm") ? 12 : 0);
  }

  /** A part as either order of day and month has it. */
  private static String first(Matcher parts, String name) {
    return parts.group(name) != null ? parts.group(name) : parts.group(name + "2");
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }

  @Override
  public String show(Instant time) {
    return SHOWN.format(LocalDateTime.ofInstant(time, zone));
  }

  @Override
  public String example() {
    return "2026-10-17 14:32";
  }
}
