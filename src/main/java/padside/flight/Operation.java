package padside.flight;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Facts;
import padside.fact.RecordId;

/**
 * One thing the flier did, as the history has it: every cell it changed, over all records.
 *
 * @param id names it; a record it made is named for it, with a number behind where it made several
 * @param label what was done, such as {@code keep card}
 * @param when by the log's time
 * @param timed whether an anchor of that start of the machine vouches for it; else it is what the
 *     machine's clock showed, which may be wrong
 * @param machine what that machine is called; empty when nobody knows
 */
public record Operation(
    RecordId id, String label, Instant when, boolean timed, String machine, List<Changed> changes) {
  private static final String UNDO = "undo: ";
  private static final String REDO = "redo: ";
  private static final String TYPING = "typing: ";
  private static final long SECONDS_APART = 60;

  /** Keeps its own list. */
  public Operation {
    changes = List.copyOf(changes);
  }

  /**
   * One cell it changed. A cell that is not there is told as emptied.
   *
   * @param before what it took the place of
   * @param over the operation that had put that there
   * @param after what it put there
   * @param now what shows there now
   * @param stands whether that is what it put there, untouched since
   * @param without what would show there had it not been done: what was there before, or what
   *     another machine put there not knowing of it
   */
  public record Changed(
      Kind kind,
      RecordId record,
      String field,
      Facts.Cell before,
      Optional<RecordId> over,
      Facts.Cell after,
      Facts.Cell now,
      boolean stands,
      Facts.Cell without) {
    private static final Facts.Cell GONE = Facts.Cell.of(true);

    /** A record marked as not removed is one without a mark. */
    public Changed {
      if (field.equals(Kind.REMOVED.name())) {
        before = mark(before);
        after = mark(after);
        now = mark(now);
        without = mark(without);
      }
    }

    private static Facts.Cell mark(Facts.Cell removed) {
      return removed.value().equals(GONE.value()) ? GONE : Facts.Cell.emptied();
    }

    /** What making a record changed: it was not there, which is told as removed, and now is. */
    public static Changed made(Kind kind, RecordId record, Facts.Cell removedNow) {
      return new Changed(
          kind,
          record,
          Kind.REMOVED.name(),
          GONE,
          Optional.empty(),
          Facts.Cell.emptied(),
          removedNow,
          mark(removedNow).equals(Facts.Cell.emptied()),
          GONE);
    }

    public boolean isRemoval() {
      return field.equals(Kind.REMOVED.name());
    }
  }

  /**
   * How to take an operation back.
   *
   * @param action sets every cell that has not been changed since to what it was; a record that was
   *     made is marked as removed, one that was removed comes back; without changes where nothing
   *     is left to take back
   * @param left the cells changed since, which stay as they are
   */
  public record Undoing(Action action, List<Changed> left) {
    /** Keeps its own list. */
    public Undoing {
      left = List.copyOf(left);
    }

    public boolean doesNothing() {
      return action.changes().isEmpty();
    }
  }

  /** The label of what is kept while it is still being typed. */
  public static String typing(String label) {
    return TYPING + label;
  }

  /**
   * The history with all that was kept while a text was typed told as what it became.
   *
   * @param history oldest first, as it was kept
   */
  public static List<Operation> joined(List<Operation> history) {
    return TypingRun.joined(history);
  }

  boolean isTyping() {
    return label.startsWith(TYPING);
  }

  /** What was done, whether it was still being typed or not. */
  String plainLabel() {
    return isTyping() ? label.substring(TYPING.length()) : label;
  }

  /**
   * Those whose time cannot be right: they lie before one that was done earlier, or after one that
   * was done later and whose time is vouched for.
   *
   * @param history oldest first, which no clock decides
   */
  public static Set<RecordId> outOfTime(List<Operation> history) {
    Set<RecordId> wrong = new LinkedHashSet<>();
    for (int i = 0; i < history.size(); i++) {
      Operation done = history.get(i);
      boolean late = history.subList(0, i).stream().anyMatch(each -> each.isAfter(done));
      boolean early =
          history.subList(i + 1, history.size()).stream()
              .anyMatch(each -> each.timed && done.isAfter(each));
      if (!done.timed && (late || early)) {
        wrong.add(done.id);
      }
    }
    return wrong;
  }

  /** By so much that no two machines that are set well differ by it. */
  private boolean isAfter(Operation other) {
    return when.minusSeconds(SECONDS_APART).isAfter(other.when);
  }

  /** Whether it is the taking back of another. */
  public boolean isUndo() {
    return label.startsWith(UNDO);
  }

  /** Whether it made the record, rather than changed it. */
  public boolean made(RecordId record) {
    return record.equals(id) || record.text().startsWith(id.text() + ".");
  }

  /** The cells whose taking back takes all of it back: of a record it made its being there. */
  private List<Changed> decisive() {
    return changes.stream().filter(cell -> cell.isRemoval() || !made(cell.record)).toList();
  }

  /** How to take it back; of an undo that is to do it again. */
  public Undoing undoing() {
    Map<RecordId, Action.Change> changed = new LinkedHashMap<>();
    List<Changed> left = new ArrayList<>();
    for (Changed cell : decisive()) {
      if (!cell.stands && !cell.now.equals(cell.before)) {
        left.add(cell);
      } else if (cell.stands && !cell.now.equals(cell.without)) {
        Facts facts = Facts.none().with(cell.field, cell.without);
        changed.merge(
            cell.record,
            new Action.Change(cell.kind, Optional.of(cell.record), facts),
            (one, more) ->
                new Action.Change(one.kind(), one.record(), one.facts().with(more.facts())));
      }
    }
    return new Undoing(new Action(undone(label), List.copyOf(changed.values())), left);
  }

  private static String undone(String label) {
    if (label.startsWith(UNDO)) {
      return REDO + label.substring(UNDO.length());
    }
    return UNDO + (label.startsWith(REDO) ? label.substring(REDO.length()) : label);
  }

  /** Whether this took the other back: it changed nothing but what that had put there. */
  private boolean tookBack(Operation other) {
    return label.equals(undone(other.label))
        && !changes.isEmpty()
        && changes.stream()
            .allMatch(
                cell ->
                    cell.over.equals(Optional.of(other.id))
                        || (cell.isRemoval() && other.made(cell.record)));
  }

  /**
   * What has been taken back and stays so, each with the operation that did it last.
   *
   * @param history oldest first
   */
  public static Map<RecordId, Operation> takenBack(List<Operation> history) {
    Map<RecordId, Operation> by = new LinkedHashMap<>();
    for (int i = history.size() - 1; i >= 0; i--) {
      Operation done = history.get(i);
      history.subList(i + 1, history.size()).stream()
          .filter(later -> later.tookBack(done) && !by.containsKey(later.id))
          .reduce((older, newer) -> newer)
          .ifPresent(later -> by.put(done.id, later));
    }
    return by;
  }

  /**
   * The operation to take back for taking this one back: what did it again, where it was taken back
   * and done again, else itself.
   *
   * @param history oldest first
   */
  public Operation asDoneLast(List<Operation> history) {
    Map<RecordId, Operation> back = takenBack(history);
    return history.stream()
        .filter(later -> later.tookBack(this))
        .flatMap(later -> Optional.ofNullable(back.get(later.id)).stream())
        .reduce((older, newer) -> newer)
        .map(again -> again.asDoneLast(history))
        .orElse(this);
  }

  /**
   * The newest that still stands and is no taking back itself: what the flier did last.
   *
   * @param history oldest first
   */
  public static Optional<Operation> last(List<Operation> history) {
    Map<RecordId, Operation> back = takenBack(history);
    return history.stream()
        .filter(done -> !done.isUndo() && !back.containsKey(done.id))
        .reduce((older, newer) -> newer);
  }
}
