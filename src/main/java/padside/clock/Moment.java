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
 * @param trust how far {@code wall} is to be believed
 */
public record Moment(Instant wall, TimeSpan up, String boot, Trust trust) {
  /** How far a clock that tells the time of day is to be believed. */
  public enum Trust {
    /** It may show anything. */
    NONE,
    /** It is kept by a battery: right until something speaks against it. */
    BATTERY,
    /** The operating system has it from elsewhere, or the flier's settings trust it. */
    SURE
  }

  /** Slower than this the clock is steered, not set; common practice, no source. */
  private static final Duration STEP = Duration.ofSeconds(2);

  /** The same moment with another time of day. */
  Moment at(Instant time) {
    return new Moment(time, up, boot, trust);
  }

  /** Whether {@code wall} is known to be right. */
  public boolean sure() {
    return trust == Trust.SURE;
  }

  /** Whether the wall clock was set since an earlier moment of the same start of the machine. */
  public boolean jumpedSince(Moment earlier) {
    Duration ran = LogClock.duration(up.seconds() - earlier.up.seconds());
    Duration told = Duration.between(earlier.wall, wall);
    return boot.equals(earlier.boot) && told.minus(ran).abs().compareTo(STEP) > 0;
  }
}
