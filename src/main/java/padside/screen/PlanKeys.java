package padside.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the keys of the Plan screen do, in the order they are told. */
enum PlanKeys {
  OPEN("<enter>", "open", "change the marked flight"),
  ADD("n", "add", "one more flight at the end of the plan"),
  LATER("+=", "-  move", "one place later, or with - one earlier"),
  EARLIER("-", "", "one place earlier"),
  REMOVE("x", "out", "take the marked flight out of the plan; asks once"),
  PACK("k", "pack", "the packing list"),
  OTHER_DAY("<tab>", "day", "the next day there is something to plan for"),
  NEW_DAY("o", "", "plan for another day: date and field"),
  EDIT_DAY("e", "", "change the day: date, field, permission, fire ban"),
  BACK("<esc>", "back", "back to the day");

  @SuppressWarnings("ImmutableEnumChecker") // a record of an unmodifiable list and texts
  private final Binding binding;

  PlanKeys(String keys, String label, String meaning) {
    this.binding = Binding.of(keys, label, meaning);
  }

  Binding binding() {
    return binding;
  }

  static Optional<PlanKeys> find(Key key) {
    return List.of(values()).stream().filter(each -> each.binding.has(key)).findFirst();
  }

  static List<Binding> table() {
    return Stream.of(values()).map(PlanKeys::binding).toList();
  }
}
