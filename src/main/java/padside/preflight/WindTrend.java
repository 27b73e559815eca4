package padside.preflight;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;
import padside.flight.Weather;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.UnitSystem;
import padside.units.Wind;

/**
 * How the wind of a day has gone: a straight line by least squares through what limits are held
 * against, the larger of mean and gust, over the readings of the three hours up to the newest. What
 * came before says nothing of what comes next: a morning's rise is no evening's. Wind is taken as
 * read, whatever the height of the meter.
 */
public final class WindTrend {
  /**
   * How far back a reading still counts and how far ahead is looked; common practice, no source.
   */
  private static final Duration REACH = Duration.ofHours(3);

  /** Fewer readings, or a shorter while, tell no trend; common practice, no source. */
  private static final int FEWEST = 4;

  private static final Duration SHORTEST = Duration.ofMinutes(30);

  /** Less than this in an hour is steady to a flier, half a mile an hour; no source. */
  private static final double STEADY_MPS_PER_HOUR = 0.5 * 0.44704;

  /** Winds are noted to a whole mile an hour: standard deviation of a value rounded so. */
  private static final double ROUNDING_MPS = 0.44704 / Math.sqrt(12);

  /** On either side. */
  private static final double ONE_OF_TEN = 0.1;

  private static final double SECONDS_PER_HOUR = 3600;
  private static final long SHOWN_TO_S = 600;

  /** Which way it goes. */
  public enum Course {
    RISING("rising"),
    FALLING("falling"),
    /** No change that can be told from chance. */
    STEADY("steady");

    private final String words;

    Course(String words) {
      this.words = words;
    }

    /** As sentences say it. */
    public String words() {
      return words;
    }
  }

  /**
   * When the line reaches a wind, in four cases of five between {@code from} and {@code to}.
   *
   * @param limit the wind reached
   */
  public record Crossing(Speed limit, Instant at, Instant from, Instant to) {}

  private record Look(Instant at, double testedMps) {}

  private final List<Look> looks;
  private final Optional<Instant> newest;

  /** Metres per second over hours from the newest. */
  private final Optional<Regression> line;

  private WindTrend(List<Look> looks, Optional<Instant> newest) {
    this.looks = looks;
    this.newest = newest;
    boolean enough = looks.size() >= FEWEST && span().seconds() >= SHORTEST.toSeconds();
    this.line = newest.filter(at -> enough).flatMap(at -> line(looks, at));
  }

  /** The trend of a day's readings in any order; those without wind or time are passed over. */
  public static WindTrend of(List<Weather> day) {
    List<Look> looks = day.stream().flatMap(reading -> look(reading).stream()).toList();
    Optional<Instant> newest = looks.stream().map(Look::at).max(Comparator.naturalOrder());
    return new WindTrend(
        looks.stream()
            .filter(look -> !look.at.isBefore(newest.orElseThrow().minus(REACH)))
            .toList(),
        newest);
  }

  private static Optional<Look> look(Weather reading) {
    return reading
        .at()
        .flatMap(
            at -> reading.wind().map(Wind::tested).map(s -> new Look(at, s.metresPerSecond())));
  }

  private static Optional<Regression> line(List<Look> looks, Instant newest) {
    double[] hours = looks.stream().mapToDouble(look -> hours(newest, look.at)).toArray();
    double[] winds = looks.stream().mapToDouble(Look::testedMps).toArray();
    return Regression.of(hours, winds).map(fit -> fit.withResidualAtLeast(ROUNDING_MPS));
  }

  private static double hours(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / (1e3 * SECONDS_PER_HOUR);
  }

  /** How many readings with a wind and a time there are within those hours. */
  public int readings() {
    return looks.size();
  }

  /** From the first of them to the newest. */
  public TimeSpan span() {
    Optional<Instant> first = looks.stream().map(Look::at).min(Comparator.naturalOrder());
    return first
        .map(at -> new TimeSpan(Duration.between(at, newest.orElseThrow()).toMillis() / 1e3))
        .orElse(new TimeSpan(0));
  }

  /** Change in an hour, negative when it falls; absent while there are too few readings. */
  public Optional<Speed> perHour() {
    return line.map(fit -> new Speed(fit.slope()));
  }

  /** Standard error of {@link #perHour}. */
  public Optional<Speed> perHourError() {
    return line.map(fit -> new Speed(fit.slopeError()));
  }

  /**
   * Which way it goes, told from steady when the change is more than chance makes in four cases of
   * five; absent while there are too few readings.
   */
  public Optional<Course> course() {
    return line.map(WindTrend::course);
  }

  private static Course course(Regression fit) {
    double chance = trust(fit) * fit.slopeError();
    if (Math.abs(fit.slope()) <= Math.max(chance, STEADY_MPS_PER_HOUR)) {
      return Course.STEADY;
    }
    return fit.slope() > 0 ? Course.RISING : Course.FALLING;
  }

  /** How many standard errors either side hold the true value in four cases of five. */
  private static double trust(Regression fit) {
    return TDistribution.of(fit.degreesOfFreedom()).inverseSurvivalProbability(ONE_OF_TEN);
  }

  /**
   * When the wind reaches a limit, from below or from above; absent unless the trend is told and
   * the whole interval lies ahead, within three hours.
   *
   * @param now what is ahead of it counts
   */
  public Optional<Crossing> reaching(Speed limit, Instant now) {
    return line.filter(fit -> course(fit) != Course.STEADY)
        .flatMap(fit -> fit.crossing(limit.metresPerSecond(), trust(fit)))
        .map(hit -> new Crossing(limit, after(hit.at()), after(hit.from()), after(hit.to())))
        .filter(hit -> hit.from.isAfter(now) && !hit.to.isAfter(now.plus(REACH)));
  }

  private Instant after(double hours) {
    double capped = Math.max(-1e4, Math.min(1e4, hours));
    return newest.orElseThrow().plusMillis(Math.round(capped * SECONDS_PER_HOUR * 1e3));
  }

  /**
   * The trend in words: {@code rising 1.8 mph an hour over 5 readings}.
   *
   * @param units of the words
   */
  public String sentence(UnitSystem units) {
    String counted = readings() + (readings() == 1 ? " reading" : " readings");
    if (line.isPresent()) {
      return course(line.get()).words() + rate(line.get(), units) + " over " + counted;
    }
    String few = "%s over %d min; a trend takes %d over %d";
    return readings() == 0
        ? "no reading of the wind yet"
        : few.formatted(counted, Math.round(span().inMinutes()), FEWEST, SHORTEST.toMinutes());
  }

  private static String rate(Regression fit, UnitSystem units) {
    Speed perHour = new Speed(Math.abs(fit.slope()));
    return course(fit) == Course.STEADY
        ? ""
        : " " + Notations.windSpeed(units).show(perHour) + " an hour";
  }

  /**
   * The trend with when it reaches a limit, where that can be told: {@code rising 1.8 mph an hour
   * over 5 readings; the limit of 12 mph at about 11:40 (11:10 to 12:50)}.
   *
   * @param zone of the clock
   */
  public String sentence(Speed limit, Instant now, UnitSystem units, ZoneId zone) {
    return sentence(units)
        + reaching(limit, now)
            .map(
                hit ->
                    "; the limit of %s at about %s (%s to %s)"
                        .formatted(
                            Notations.windSpeed(units).showDown(limit),
                            clock(hit.at, SHOWN_TO_S / 2, zone),
                            clock(hit.from, 0, zone),
                            clock(hit.to, SHOWN_TO_S - 1, zone)))
            .orElse("");
  }

  /** To ten minutes: rounded where half of it is added, else outward. */
  static String clock(Instant time, long addedS, ZoneId zone) {
    long seconds = Math.floorDiv(time.getEpochSecond() + addedS, SHOWN_TO_S) * SHOWN_TO_S;
    return DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT)
        .withZone(zone)
        .format(Instant.ofEpochSecond(seconds));
  }
}
