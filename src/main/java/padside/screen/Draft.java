package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;

/**
 * A record being filled: what of it has been sent to be kept, and under which id. A new record is
 * created with its first save; what is finished before its id is known waits and goes with the
 * next.
 *
 * @param sent the facts sent to be kept so far
 * @param acknowledged the serial of the last save that is on the medium
 */
record Draft(
    Kind kind, Optional<RecordId> record, Facts sent, long screen, long serial, long acknowledged) {
  /** A draft and the saves it wants. */
  record Kept(Draft draft, List<Effect> effects) {}

  static Draft ofNew(Kind kind, World world) {
    return new Draft(kind, Optional.empty(), Facts.none(), world.turn(), 0, 0);
  }

  static Draft of(Kind kind, RecordId record, Facts facts, World world) {
    return new Draft(kind, Optional.of(record), facts, world.turn(), 0, 0);
  }

  /** Sends what differs from what was sent; nothing while the id of a new record is awaited. */
  Kept keep(String label, Facts now) {
    return keep(label, now, List.of());
  }

  /** As {@link #keep(String, Facts)} with changes of other records that belong to the same act. */
  Kept keep(String label, Facts now, List<Action.Change> also) {
    Facts changed = now.changedSince(sent);
    if (changed.isEmpty() || awaitsId()) {
      return new Kept(this, List.of());
    }
    List<Action.Change> changes = new ArrayList<>();
    changes.add(new Action.Change(kind, record, record.isEmpty() ? changed.filled() : changed));
    changes.addAll(also);
    Draft next = new Draft(kind, record, sent.with(changed), screen, serial + 1, acknowledged);
    Effect save = new Effect.Save(new Ticket(screen, next.serial), new Action(label, changes));
    return new Kept(next, List.of(save));
  }

  /** True while a new record's first save is under way, so that nothing more can be sent. */
  boolean awaitsId() {
    return record.isEmpty() && serial > 0;
  }

  /** Learns that a save is on the medium, and the id of a new record. */
  Draft on(Event event) {
    if (event instanceof Event.Saved saved && saved.ticket().screen() == screen) {
      Optional<RecordId> id = record.or(() -> saved.records().stream().findFirst());
      return new Draft(
          kind, id, sent, screen, serial, Math.max(acknowledged, saved.ticket().serial()));
    }
    if (event instanceof Event.NotSaved failed && failed.ticket().screen() == screen) {
      // Nothing of it is in the log: forget that it was sent, so that the next save has all of it.
      long before = record.isEmpty() ? 0 : serial;
      return new Draft(kind, record, Facts.none(), screen, before, acknowledged);
    }
    return this;
  }

  /** True when all that was sent is on the medium. */
  boolean allKept() {
    return acknowledged == serial;
  }

  /** True when these facts are on the medium, all of them. */
  boolean allKept(Facts now) {
    return record.isPresent() && allKept() && now.changedSince(sent).isEmpty();
  }
}
