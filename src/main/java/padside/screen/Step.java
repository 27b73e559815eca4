package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a screen goes from an event.
 *
 * @param self the screen as it is now; absent when it closes
 * @param over screens put on top of it, the last one uppermost
 */
record Step(Optional<Screen> self, List<Screen> over, List<Effect> effects) {
  /** Keeps own lists. */
  public Step {
    over = List.copyOf(over);
    effects = List.copyOf(effects);
  }

  static Step stay(Screen self) {
    return new Step(Optional.of(self), List.of(), List.of());
  }

  static Step close() {
    return new Step(Optional.empty(), List.of(), List.of());
  }

  /** Puts a screen on top. */
  Step open(Screen screen) {
    List<Screen> more = new ArrayList<>(over);
    more.add(screen);
    return new Step(self, more, effects);
  }

  Step and(Effect effect) {
    List<Effect> more = new ArrayList<>(effects);
    more.add(effect);
    return new Step(self, over, more);
  }

  Step and(List<Effect> others) {
    List<Effect> more = new ArrayList<>(effects);
    more.addAll(others);
    return new Step(self, over, more);
  }
}
