package padside.screen;

import java.time.Duration;
import java.util.Optional;
import padside.flight.Weather;

/** How long ago something was, by the uptime or the log's time. */
final class Ages {
  /** A wind read longer ago is looked at again before a launch (common practice, no source). */
  private static final Duration WIND_KEEPS = Duration.ofMinutes(10);

  private Ages() {}

  /** How long ago a reading was taken; negative when the clock was set back since. */
  static Optional<Duration> since(Weather reading, World world) {
    return Since.read(reading.facts())
        .span(world.moment())
        .map(span -> Duration.ofMillis(Math.round(span.seconds() * 1000)));
  }

  /** Whether a wind of that age is to be read anew; one later than now is. */
  static boolean isOldWind(Duration age) {
    return age.isNegative() || age.compareTo(WIND_KEEPS) > 0;
  }

  /** In words: {@code just now}, {@code 4 min ago}, {@code 3 days ago}. */
  static String words(Duration age) {
    if (age.isNegative()) {
      return "later than now by this clock";
    }
    if (age.toMinutes() < 1) {
      return "just now";
    }
    if (age.toHours() < 2) {
      return age.toMinutes() + " min ago";
    }
    return age.toDays() < 2 ? age.toHours() + " h ago" : age.toDays() + " days ago";
  }
}
