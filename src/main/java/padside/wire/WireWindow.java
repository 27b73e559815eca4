package padside.wire;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import padside.units.Bearing;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/** The readings of a meter over the last minutes, and the wind they come to. */
public final class WireWindow {
  /** A silence longer than this is told: common practice, no source. */
  public static final TimeSpan STALE = new TimeSpan(10);

  /** A gust is the highest mean over so long: WMO-No. 8, volume I, chapter 5. */
  private static final double GUST_S = 3.0;

  /** Ten minutes of ten readings a second; of a faster meter the window is shorter. */
  private static final int MOST = 6_000;

  /** Below it the directions cancel each other and tell none. */
  private static final double LEAST_RESULTANT = 1e-6;

  private final double spanSeconds;
  private final Deque<Sample> samples = new ArrayDeque<>();
  private OptionalDouble begun = OptionalDouble.empty();

  private record Sample(double at, Wind wind) {
    double speed() {
      return wind.mean().metresPerSecond();
    }
  }

  /** Readings older than the span no longer count. */
  public WireWindow(TimeSpan span) {
    if (span.seconds() < GUST_S) {
      throw new IllegalArgumentException("a window shorter than a gust: " + span.seconds() + " s");
    }
    spanSeconds = span.seconds();
  }

  /** Takes one more reading, never earlier than the one before. */
  public void add(double atSeconds, Wind wind) {
    if (!samples.isEmpty() && atSeconds < samples.getLast().at()) {
      throw new IllegalArgumentException("a reading before the last one");
    }
    begun = OptionalDouble.of(begun.orElse(atSeconds));
    samples.addLast(new Sample(atSeconds, wind));
    // a gust that ends within the span may have begun before it
    while (samples.getFirst().at() <= atSeconds - spanSeconds - GUST_S || samples.size() > MOST) {
      samples.removeFirst();
    }
  }

  /** How long no reading has come; empty before the first. */
  public Optional<TimeSpan> silence(double nowSeconds) {
    return samples.isEmpty()
        ? Optional.empty()
        : Optional.of(new TimeSpan(nowSeconds - samples.getLast().at()));
  }

  /** Whether readings have come for long enough that a gust could be told. */
  public boolean tellsGusts() {
    return begun.isPresent() && samples.getLast().at() - begun.getAsDouble() >= GUST_S;
  }

  /** Whether readings come less often than a gust lasts: the gusts between them are missed. */
  public boolean missesGusts() {
    return samples.size() > 1
        && (samples.getLast().at() - samples.getFirst().at()) / (samples.size() - 1) > GUST_S;
  }

  /**
   * Mean speed, mean direction as that of the mean vector, and gust: the highest mean over 3 s or
   * what the meter itself called one. Until a gust can be told it is the highest reading. Empty
   * before the first reading.
   */
  public Optional<Wind> wind() {
    if (samples.isEmpty()) {
      return Optional.empty();
    }
    double mean = within().mapToDouble(Sample::speed).average().orElseThrow();
    double gust = Math.max(mean, tellsGusts() ? highestMean() : highestReading());
    return Optional.of(new Wind(new Speed(mean), new Speed(gust), from()));
  }

  private Stream<Sample> within() {
    double since = samples.getLast().at() - spanSeconds;
    return samples.stream().filter(sample -> sample.at() > since);
  }

  private double highestReading() {
    return within().mapToDouble(each -> each.wind().gust().metresPerSecond()).max().orElseThrow();
  }

  private double highestMean() {
    double since = samples.getLast().at() - spanSeconds;
    Deque<Sample> running = new ArrayDeque<>();
    double sum = 0;
    double highest = 0;
    for (Sample sample : samples) {
      running.addLast(sample);
      sum += sample.speed();
      while (running.getFirst().at() <= sample.at() - GUST_S) {
        sum -= running.removeFirst().speed();
      }
      if (sample.at() > since) {
        highest = Math.max(highest, Math.max(sum / running.size(), told(sample.wind())));
      }
    }
    return highest;
  }

  /** The gust of a meter that finds gusts itself. */
  private static double told(Wind wind) {
    boolean own = wind.gust().metresPerSecond() > wind.mean().metresPerSecond();
    return own ? wind.gust().metresPerSecond() : 0;
  }

  private Optional<Bearing> from() {
    double north = 0;
    double east = 0;
    for (Sample sample : within().toList()) {
      if (sample.wind().from().isPresent()) {
        double bearing = sample.wind().from().get().inRadians();
        north += sample.speed() * Math.cos(bearing);
        east += sample.speed() * Math.sin(bearing);
      }
    }
    return Math.hypot(north, east) < LEAST_RESULTANT
        ? Optional.empty()
        : Optional.of(new Bearing(Math.toDegrees(Math.atan2(east, north))));
  }
}
