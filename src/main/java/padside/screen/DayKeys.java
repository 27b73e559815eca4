package padside.screen;

import java.util.List;
import java.util.Optional;

/** What the keys of the Day screen do, in the order they are told. */
enum DayKeys {
  NEW("n", "card", "begin a flight card"),
  OPEN("<enter>", "open", "the card at the pad; once flown its debrief"),
  GONE("g", "gone", "it left the pad: marks it flown, then debrief"),
  DEBRIEF("d", "debrief", "debrief of the newest flight without one"),
  WEATHER("w", "wind", "read wind and weather"),
  WIRE(ByWire.KEY, "", ByWire.MEANING),
  PLAN("t", "plan", "to fly next: the plan, and what to pack"),
  LOG("l", "log", "all flights"),
  FLEET("f", "fleet", "the rockets and what is to be mended"),
  RANGE_BOX("b", "box", "range box: motors, parachutes, altimeters"),
  FIELDS("p", "places", "the fields and their edges"),
  MEND("m", "mend", "what to mend on the marked rocket"),
  SIGHTS("i", "", SightShelf.MEANING),
  SCRUB("s", "scrub", "call the marked card off"),
  OPEN_DAY("o", "day", "open a new day: date and field"),
  EDIT_DAY("e", "", "change the day: field, permission, fire ban"),
  UNDO("u", "", "undo the last change of the marked flight"),
  HISTORY("h", "", "history of the marked flight: undo, redo"),
  CARD("c", "", "the card of the marked flight, flown or not"),
  SYNC("y", "sync", "synchronise with a stick, a folder or by ssh"),
  CONFLICTS("r", "", ConflictScreen.OPEN.meaning()),
  PAGES("v", "pages", PagesScreen.MEANING),
  CLOCK("k", "", "date and time: look at the clock or set it"),
  SETTINGS("a", "", SettingsScreen.MEANING),
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
