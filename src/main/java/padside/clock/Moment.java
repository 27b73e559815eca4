package padside.clock;

import java.time.Duration;
import java.time.Instant;
import padside.units.TimeSpan;

/**
 * One moment by a machine's two clocks.
 *
 * @param wall the clock that tells the time of day; may be wrong and may jump
 * @param up time since the machine was started, which never goes back and counts sleep too
 * @param boot names that start of the machine; times of two boots have nothing to do with each
 *     other
 * @param sure whether {@code wall} is known to be right: the operating system has synchronised it,
 *     or the flier's settings trust it
 */
public record Moment(Instant wall, TimeSpan up, String boot, boolean sure) {
  /** Slower than this the clock is steered, not set; common practice, no source. */
  private static final Duration STEP = Duration.ofSeconds(2);

  /** The same moment with another time of day. */
  Moment at(Instant time) {
    return new Moment(time, up, boot, sure);
  }

  /** Whether the wall clock was set since an earlier moment of the same start of the machine. */
  public boolean jumpedSince(Moment earlier) {
    Duration ran = LogClock.duration(up.seconds() - earlier.up.seconds());
    Duration told = Duration.between(earlier.wall, wall);
    return boot.equals(earlier.boot) && told.minus(ran).abs().compareTo(STEP) > 0;
  }
}
