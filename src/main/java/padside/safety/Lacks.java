package padside.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a card lacks before it can be ruled on, in the flier's words, most telling first. */
record Lacks(Case flown) {
  List<String> named() {
    List<String> entered = new ArrayList<>();
    note(entered, flown.sky().wind(), "wind");
    note(entered, flown.craft().motors(), "motor");
    entered.addAll(flown.missing());
    if (!entered.contains(Case.FIELD)) {
      note(entered, flown.ground().smallestSide(), "field edges");
    }
    return entered.isEmpty() ? computed() : entered.stream().distinct().toList();
  }

  /** What follows from the entries, named only when none of those is missing. */
  private List<String> computed() {
    List<String> computed = new ArrayList<>();
    note(computed, flown.craft().liftoffMass(), "lift-off mass");
    note(computed, flown.craft().totalImpulse(), "total impulse");
    note(computed, flown.predicted().thrustToWeight(), "thrust-to-weight");
    note(computed, flown.predicted().rodExitSpeed(), "rod-exit speed");
    note(computed, flown.predicted().apogee(), "apogee");
    note(computed, flown.predicted().touchdown(), "landing speed");
    note(computed, flown.ground().limit(), "largest wind for the field");
    return computed;
  }

  private static void note(List<String> lacks, Optional<?> value, String words) {
    if (value.isEmpty()) {
      lacks.add(words);
    }
  }
}
