package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;

/**
 * What of a flight has been sent to be kept and is not in the log yet. What could not be kept goes
 * out again with the next save.
 *
 * @param serial of the last save sent
 * @param open facts not known to be on the medium
 * @param failed a save among them has failed
 */
record Sending(long screen, long serial, Facts open, boolean failed) {
  /** What was sent and the save that does it. */
  record Sent(Sending sending, Effect save) {}

  static Sending of(World world) {
    return new Sending(world.turn(), 0, Facts.none(), false);
  }

  Sent keep(String label, RecordId flight, Facts facts) {
    return keep(label, flight, facts, List.of());
  }

  /** Sends facts of the flight, with changes of other records that belong to the same act. */
  Sent keep(String label, RecordId flight, Facts facts, List<Action.Change> also) {
    Facts due = failed ? open.with(facts) : facts;
    Action flown = Action.change(label, Kind.FLIGHT, flight, due);
    Sending next = new Sending(screen, serial + 1, open.with(facts), false);
    Ticket ticket = new Ticket(screen, next.serial);
    return new Sent(next, new Effect.Save(ticket, flown.and(new Action(label, also))));
  }

  Sending on(Event event) {
    if (event instanceof Event.NotSaved missed && missed.ticket().screen() == screen) {
      return new Sending(screen, serial, open, true);
    }
    boolean last =
        event instanceof Event.Saved saved && saved.ticket().equals(new Ticket(screen, serial));
    return last && !failed ? new Sending(screen, serial, Facts.none(), false) : this;
  }

  /** True when all that was sent is on the medium. */
  boolean allKept() {
    return open.isEmpty();
  }

  /** A flight with what is on its way; absent where the log has none of that id. */
  Optional<Flight> flight(RecordId id, World world) {
    return world.log().flight(id).map(each -> new Flight(id, each.facts().with(open)));
  }

  /** Whether what was done is on the medium, in words. */
  String words(World world) {
    String kept = world.keptWords("all kept");
    return failed ? "NOT KEPT: the next key tries again" : allKept() ? kept : "keeping …";
  }
}
