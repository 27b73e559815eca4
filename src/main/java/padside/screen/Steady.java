package padside.screen;

import java.util.Optional;
import java.util.Set;
import padside.units.TimeSpan;

/**
 * The key pressed last, so that cold fingers that press one twice are taken to have pressed it
 * once. Moving, rubbing out and typing go on as fast as they come.
 *
 * @param at when, by the clock that never jumps
 * @param typed whether it was pressed where text is typed: one that led there is no text
 */
record Steady(Optional<Key> last, TimeSpan at, boolean typed) {
  /** Nobody presses one key again so soon on purpose (common practice, no source). */
  static final double BOUNCE_S = 0.15;

  /**
   * The key that put a question answers it no sooner: one that is held down begins to repeat within
   * this, and goes on sooner still (common practice, no source).
   */
  static final double HELD_S = 0.7;

  private static final Set<Key> MOVING =
      Set.of(Key.UP, Key.DOWN, Key.LEFT, Key.RIGHT, Key.PAGE_UP, Key.PAGE_DOWN);

  private static final Set<Key> RUBBING_OUT = Set.of(Key.BACKSPACE, Key.DELETE);

  static Steady none() {
    return new Steady(Optional.empty(), new TimeSpan(0), false);
  }

  /** After a press on a screen. */
  Steady pressed(Event.Pressed press, Screen screen) {
    return new Steady(Optional.of(press.key()), press.at().up(), screen.takesText());
  }

  /** After one that did not count: the next is held against it. */
  Steady bounced(Event.Pressed press) {
    return new Steady(last, press.at().up(), typed);
  }

  /** Whether a press is the one before once more, by a screen as it is now. */
  boolean bounces(Event.Pressed press, Screen screen) {
    double least = screen.questions() ? HELD_S : BOUNCE_S;
    return last.filter(press.key()::equals).isPresent()
        && !isMeant(press.key(), screen.takesText())
        && press.at().up().seconds() - at.seconds() < least;
  }

  private boolean isMeant(Key key, boolean typing) {
    boolean text = key.character().isPresent() || RUBBING_OUT.contains(key);
    return MOVING.contains(key) || (text && typing && typed);
  }
}
