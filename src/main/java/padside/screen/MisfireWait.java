package padside.screen;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.clock.Moment;
import padside.fact.RecordId;
import padside.flight.Attempt;
import padside.preflight.PadTimes;
import padside.units.TimeSpan;

/**
 * A misfire after which nobody goes near the pad yet. It follows from what is kept, so that it goes
 * on whatever screen is looked at and after a restart.
 */
record MisfireWait(Attempt attempt, TimeSpan left) {
  /** A day; no code asks for a wait of more than minutes. */
  private static final double LONG_OVER_S = 86_400;

  /** All that are running, the longest last. */
  static List<MisfireWait> running(World world) {
    return world.log().attempts().stream()
        .flatMap(attempt -> of(attempt, world).stream())
        .sorted(Comparator.comparing(wait -> wait.left.seconds()))
        .toList();
  }

  /** The one that ends last. */
  static Optional<MisfireWait> longest(World world) {
    return running(world).stream().reduce((shorter, longer) -> longer);
  }

  /** That of one card. */
  static Optional<MisfireWait> of(RecordId flight, World world) {
    return running(world).stream()
        .filter(wait -> wait.attempt.flight().equals(Optional.of(flight)))
        .reduce((shorter, longer) -> longer);
  }

  static Optional<MisfireWait> of(Attempt attempt, World world) {
    return left(attempt, world)
        .filter(left -> left.seconds() > 0)
        .map(left -> new MisfireWait(attempt, left));
  }

  /**
   * What is left of the wait, negative once it is over; absent when no clock tells, or when it was
   * so long ago that the rules, which are long to read, need not be asked.
   */
  private static Optional<TimeSpan> left(Attempt attempt, World world) {
    return Since.told(attempt.facts())
        .ago(world.moment())
        .filter(ago -> ago.seconds() < LONG_OVER_S)
        .map(ago -> PadTimes.of(world.settings()).misfire().seconds() - ago.seconds())
        .map(TimeSpan::new);
  }

  /** Whether one ends while the world moves on to a later moment. */
  static boolean endsBetween(World world, Moment later) {
    World then = world.at(later);
    return running(world).stream().anyMatch(wait -> of(wait.attempt, then).isEmpty());
  }

  /** Whole seconds, rounded up: it is over when they are. */
  String seconds() {
    return String.format(Locale.ROOT, "%.0f", Math.ceil(left.seconds()));
  }

  /** Until the seconds told change. */
  TimeSpan untilNext() {
    return untilNext(left);
  }

  /** Until a whole number of seconds is left. */
  static TimeSpan untilNext(TimeSpan left) {
    double over = left.seconds() - Math.floor(left.seconds());
    // Not so soon that the clock, which tells hundredths, may still show the same.
    return new TimeSpan(Math.max(0.02, over));
  }

  /** {@code MISFIRE: nobody near Wren on A10T-3 for 43 s, key out}. */
  String words(World world) {
    String card =
        attempt
            .flight()
            .flatMap(world.log()::flight)
            .map(flight -> FlightText.name(flight, world))
            .orElse("the pad");
    return "MISFIRE: key out, nobody near " + card + " for " + seconds() + " s";
  }
}
