package padside.screen;

import java.util.List;
import java.util.Optional;

/** What the keys of the Day screen do, in the order they are told. */
enum DayKeys {
  NEW("n", "card", "begin a flight card"),
  OPEN("<enter>", "open", "the marked card, or its debrief once it has flown"),
  GONE("g", "gone", "the marked rocket has left the pad: marks it flown, opens its debrief"),
  DEBRIEF("d", "debrief", "the newest flight that has none"),
  WEATHER("w", "wind", "read wind and weather"),
  LOG("l", "log", "all flights"),
  FLEET("f", "fleet", "the rockets and what is to be mended"),
  RANGE_BOX("b", "box", "the range box: motors, parachutes, altimeters"),
  FIELDS("p", "places", "the fields and their edges"),
  SCRUB("s", "scrub", "call the marked card off"),
  OPEN_DAY("o", "day", "a new day: date and field"),
  EDIT_DAY("e", "", "change this day: field, permission, fire ban"),
  UNDO("u", "", "put the marked flight back in the queue: not gone, or not scrubbed after all"),
  CARD("c", "", "the card of the marked flight, also after it has flown"),
  QUIT("q", "quit", "leave Padside");

  @SuppressWarnings("ImmutableEnumChecker") // a record of an unmodifiable list and texts
  private final Binding binding;

  DayKeys(String keys, String label, String meaning) {
    this.binding = Binding.of(keys, label, meaning);
  }

  Binding binding() {
    return binding;
  }

  static Optional<DayKeys> find(Key key) {
    return List.of(values()).stream().filter(each -> each.binding.has(key)).findFirst();
  }
}
