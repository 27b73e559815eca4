package padside.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import padside.flight.Logbook;

/**
 * What to pack for the plan of a day.
 *
 * @param packed keys of what is packed
 */
public record Packing(List<Item> items, Set<String> packed) {
  /** What belongs together, in the order it is packed. */
  public enum Group {
    ROCKETS("Rockets"),
    MOTORS("Motors"),
    RECOVERY("Recovery"),
    ALTIMETERS("Altimeters"),
    BESIDES("Besides");

    private final String words;

    Group(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * One line.
   *
   * @param key what a tick is kept under; a changed count makes it another, to be ticked anew
   * @param count how many, 0 where that needs no telling
   * @param where it is kept, blank where nobody noted it
   * @param note anything to know about it, perhaps nothing
   * @param lacking true of what the range box does not hold
   */
  public record Item(
      String key, Group group, int count, String what, String where, String note, boolean lacking) {
    /** {@code 2 C6-5 lot K7}. */
    public String counted() {
      return count == 0 ? what : count + " " + what;
    }
  }

  /** Keeps its own collections. */
  public Packing {
    items = List.copyOf(items);
    packed = Set.copyOf(packed);
  }

  /** The list for a plan, ticked as its day has it. */
  public static Packing of(Plan plan, Logbook book, PackingTable table) {
    List<Item> items = new ArrayList<>(new PlannedItems(plan, book).all());
    table.things().stream()
        .map(
            thing ->
                new Item("thing." + thing.code(), Group.BESIDES, 0, thing.text(), "", "", false))
        .forEach(items::add);
    return new Packing(items, Set.copyOf(plan.day().packed()));
  }

  public boolean isPacked(Item item) {
    return packed.contains(item.key());
  }

  /** How many lines are still to be packed. */
  public long left() {
    return items.stream().filter(item -> !isPacked(item)).count();
  }
}
