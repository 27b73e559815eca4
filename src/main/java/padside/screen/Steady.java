package padside.screen;

import java.util.Optional;
import java.util.Set;
import padside.units.TimeSpan;

/**
 * The key pressed last, so that cold fingers that press one twice are taken to have pressed it
 * once. Moving, rubbing out and typing go on as fast as they come.
 *
 * @param at when, by the clock that never jumps
 */
record Steady(Optional<Key> last, TimeSpan at) {
  /** Nobody presses one key again so soon on purpose (common practice, no source). */
  static final double BOUNCE_S = 0.15;

  private static final Set<Key> MEANT =
      Set.of(
          Key.UP,
          Key.DOWN,
          Key.LEFT,
          Key.RIGHT,
          Key.PAGE_UP,
          Key.PAGE_DOWN,
          Key.BACKSPACE,
          Key.DELETE);

  static Steady none() {
    return new Steady(Optional.empty(), new TimeSpan(0));
  }

  /** After a press, also one that did not count: a key held down counts once. */
  Steady pressed(Event.Pressed press) {
    return new Steady(Optional.of(press.key()), press.at().up());
  }

  /** Whether a press is the one before once more. */
  boolean bounces(Event.Pressed press, boolean typing) {
    boolean typed = typing && press.key().character().isPresent();
    return last.filter(press.key()::equals).isPresent()
        && !typed
        && !MEANT.contains(press.key())
        && press.at().up().seconds() - at.seconds() < BOUNCE_S;
  }
}
