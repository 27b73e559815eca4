package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;

/**
 * One question of what machines said differently: a field of a form, all that a check answered, or
 * whether a record is to stay.
 *
 * @param name of the record: for a flight rocket, date and number on the day
 * @param about the field as forms call it
 * @param sides what there is to choose from
 */
record Dispute(Kind kind, RecordId record, String name, String about, List<Side> sides) {
  /** Keeps its own list. */
  Dispute {
    sides = List.copyOf(sides);
  }

  /**
   * One thing that was said.
   *
   * @param label of the choice of it, for the history
   * @param by the machine, then when
   * @param lines what it says
   * @param shows whether it is what the record shows meanwhile
   * @param facts what to keep for it to be chosen
   */
  record Side(String label, List<String> by, List<String> lines, boolean shows, Facts facts) {
    Side {
      by = List.copyOf(by);
      lines = List.copyOf(lines);
    }
  }

  /** What is kept when a side is chosen; it takes the place of all that was said. */
  Action choosing(Side side) {
    return Action.change(side.label(), kind, record, side.facts());
  }

  /** The side under a digit. */
  Optional<Side> side(Key key) {
    int number = key.name().length() == 1 ? Character.digit(key.name().charAt(0), 10) : -1;
    return number >= 1 && number <= sides.size()
        ? Optional.of(sides.get(number - 1))
        : Optional.empty();
  }
}
