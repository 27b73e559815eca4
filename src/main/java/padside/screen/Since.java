package padside.screen;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import padside.clock.Moment;
import padside.fact.Facts;
import padside.flight.Attempt;
import padside.flight.Flight;
import padside.flight.Weather;
import padside.units.TimeSpan;

/**
 * A moment that was kept with a record, to be told how long ago it was.
 *
 * @param up time since the start of the machine that {@code boot} names
 */
record Since(Optional<Instant> wall, Optional<TimeSpan> up, Optional<String> boot) {
  /** What stands for a start of the machine that has no name. */
  private static final String NAMELESS = "unknown";

  /** When a flight left the pad. */
  static Since liftOff(Facts flight) {
    return new Since(
        flight.get(Flight.LIFTOFF_AT),
        flight.get(Flight.LIFTOFF_UP),
        flight.get(Flight.LIFTOFF_BOOT));
  }

  /** When the weather was read. */
  static Since read(Facts weather) {
    return new Since(weather.get(Weather.AT), weather.get(Weather.UP), weather.get(Weather.BOOT));
  }

  /** When a misfire was told. */
  static Since told(Facts attempt) {
    return new Since(attempt.get(Attempt.AT), attempt.get(Attempt.UP), attempt.get(Attempt.BOOT));
  }

  /** Whether it is told by the clock that never jumps; by the wall clock when not. */
  boolean isSteady(Moment now) {
    return up.isPresent() && boot.equals(Optional.of(now.boot())) && !now.boot().equals(NAMELESS);
  }

  /** How long ago; absent when nothing tells, or the clock was set back since. */
  Optional<TimeSpan> ago(Moment now) {
    return span(now).filter(span -> span.seconds() >= 0);
  }

  /** How long ago, negative when the clock was set back since; absent when nothing tells. */
  Optional<TimeSpan> span(Moment now) {
    return isSteady(now)
        ? up.map(then -> new TimeSpan(now.up().seconds() - then.seconds()))
        : wall.map(then -> new TimeSpan(Duration.between(then, now.wall()).toMillis() / 1e3));
  }
}
