package padside.screen;

import java.util.List;
import java.util.Optional;

/** What the keys of the checklist at the pad do, in the order they are told. */
enum PadKeys {
  TICK(" ", "tick", "tick the line and go on; again takes the tick back"),
  PART("<enter>", "part done", "tick what is left of this part and go to the next"),
  ARM("a", "arm", "go on to the count; asks once where lines are open or the check says NO-GO"),
  WIND("w", "wind", "read the wind anew: Enter keeps it on the day and on the card"),
  WIRE(ByWire.KEY, "", ByWire.MEANING),
  MISFIRE("m", "misfire", "the motor did not light: everybody waits"),
  LARGE("v", "large", "verdict, wind and limit in large figures; any key comes back"),
  CHECK("<f3>", "check", "the whole check with its sources"),
  CHART("<f4>", "", "the landing chart and the height over time"),
  LIST("l", "list", "change the checklist: its lines, this rocket's own"),
  CARD("c", "card", "back to the flight card"),
  DAY("<esc>", "day", "back to the day; ticks stay"),
  MOVE("<down><up><home><end>", "", "to the next line; Up before, Home, End");

  @SuppressWarnings("ImmutableEnumChecker") // a record of an unmodifiable list and texts
  private final Binding binding;

  PadKeys(String keys, String label, String meaning) {
    this.binding = Binding.of(keys, label, meaning);
  }

  Binding binding() {
    return binding;
  }

  static Optional<PadKeys> find(Key key) {
    return List.of(values()).stream().filter(each -> each.binding.has(key)).findFirst();
  }
}
