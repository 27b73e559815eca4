package padside.screen;

import java.util.Optional;
import padside.units.TimeSpan;

/**
 * The Space bar as cold fingers press it: a key held down repeats, and each repeat must not count
 * as one more mark.
 *
 * @param last when it came last, by the clock that never jumps
 */
record HeldKey(Optional<TimeSpan> last) {
  /**
   * Keys nearer to each other than this are one key held down: terminals repeat it thirty times a
   * second or so (common practice, no source).
   */
  private static final double REPEAT_S = 0.3;

  /**
   * Nothing of a flight follows so soon, and the first repeat of a held key comes sooner (common
   * practice, no source).
   */
  static final double LEAST_APART_S = 1;

  static HeldKey none() {
    return new HeldKey(Optional.empty());
  }

  HeldKey pressed(World world) {
    return new HeldKey(Optional.of(world.moment().up()));
  }

  /** Whether a press at this moment is a repeat of the one before. */
  boolean repeats(World world) {
    return last.filter(then -> world.moment().up().seconds() - then.seconds() < REPEAT_S)
        .isPresent();
  }
}
