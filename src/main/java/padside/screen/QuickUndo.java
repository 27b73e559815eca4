package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Operation;

/**
 * Takes the last change of a flight back and says so; the change that made it is left to the
 * history. It is never seen: keys pressed meanwhile wait until it is done.
 *
 * @param done what to say once it is kept
 */
record QuickUndo(RecordId flight, Ticket ticket, Optional<String> done) implements Unseen {
  static QuickUndo of(Flight flight, World world) {
    return new QuickUndo(flight.id(), new Ticket(world.turn(), 1), Optional.empty());
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Opened) {
      return Step.stay(this).and(new Effect.ReadHistory(ticket, Kind.FLIGHT, flight));
    }
    if (event instanceof Event.HistoryRead read && read.ticket().equals(ticket)) {
      return undone(read.history(), world);
    }
    if (event instanceof Event.Saved saved && saved.ticket().equals(ticket)) {
      return closing(done.orElse("Done."));
    }
    boolean failed =
        (event instanceof Event.NotSaved save && save.ticket().equals(ticket))
            || (event instanceof Event.NotRead read && read.ticket().equals(ticket));
    return failed ? Step.close() : Step.stay(this);
  }

  private Step undone(List<Operation> history, World world) {
    Optional<Action> again = waitsAgain(world);
    if (again.isPresent()) {
      return saving(again.get(), "Back in the queue. h shows all that was done to it.");
    }
    Optional<Operation> last = Operation.last(history).filter(operation -> !operation.made(flight));
    if (last.isEmpty()) {
      return closing("Nothing more to undo here; h shows all that was done to it.");
    }
    Operation.Undoing undoing = last.get().undoing();
    String told =
        HistoryScreen.told(
                undoing,
                new ChangeText(last.get(), HistoryScreen.before(history, last.get()), world))
            + " h shows all that was done to it.";
    return undoing.doesNothing() ? closing(told) : saving(undoing.action(), told);
  }

  private Step saving(Action action, String told) {
    return Step.stay(new QuickUndo(flight, ticket, Optional.of(told)))
        .and(new Effect.Save(ticket, action));
  }

  private static Step closing(String told) {
    return Step.close().and(new Effect.Tell(told));
  }

  /** A flight that has left the pad or was called off waits again, all of it taken back at once. */
  private Optional<Action> waitsAgain(World world) {
    return world
        .log()
        .flight(flight)
        .filter(known -> known.awaitsDebrief() || known.status() == Flight.Status.SCRUBBED)
        .map(
            known ->
                Action.change(
                    "back in the queue",
                    Kind.FLIGHT,
                    flight,
                    MarkScreen.noMarks()
                        .with(PadList.none())
                        .with(
                            Flight.STATUS,
                            known.verdict().isPresent()
                                ? Flight.Status.CARD
                                : Flight.Status.DRAFT)));
  }

  @Override
  public String title(World world) {
    return "Undo";
  }
}
