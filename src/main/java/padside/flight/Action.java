package padside.flight;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;

/**
 * One thing the flier did: all its changes are kept together or not at all.
 *
 * @param label what was done, for the history, such as {@code keep card}
 */
public record Action(String label, List<Change> changes) {
  /**
   * New cells for one record.
   *
   * @param record the record changed; absent to create one
   */
  public record Change(Kind kind, Optional<RecordId> record, Facts facts) {}

  /** Keeps its own list. */
  public Action {
    changes = List.copyOf(changes);
  }

  public static Action create(String label, Kind kind, Facts facts) {
    return new Action(label, List.of(new Change(kind, Optional.empty(), facts)));
  }

  public static Action change(String label, Kind kind, RecordId record, Facts facts) {
    return new Action(label, List.of(new Change(kind, Optional.of(record), facts)));
  }

  /** Marks a record as removed; the mark can be taken back. */
  public static Action remove(String label, Kind kind, RecordId record) {
    return change(label, kind, record, Facts.none().with(Kind.REMOVED, true));
  }

  /** These changes followed by another action's, as one. */
  public Action and(Action other) {
    return new Action(
        label, java.util.stream.Stream.concat(changes.stream(), other.changes.stream()).toList());
  }
}
