package padside.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Ticket;
import padside.search.Found;

/**
 * Searches of the log, in parts between what else its thread does: of several questions only the
 * newest is answered. The flights found last stay in every reading of the log.
 */
final class Searching {
  /** Who waits longer than this is told what was found so far, and again and again. */
  private static final long PATIENCE_NS = 700_000_000;

  private volatile Optional<Ticket> newest = Optional.empty();
  private volatile long since;

  // Only the log's own thread touches these.
  private Optional<OutcomeTable> outcomes = Optional.empty();
  private List<RecordId> found = List.of();

  /** A question was asked; called on the screens' thread. */
  void asked(Effect.FindFlights find) {
    newest = Optional.of(find.ticket());
    since = System.nanoTime();
  }

  /** Whether what was found so far is to be told. */
  boolean isDue() {
    return System.nanoTime() - since > PATIENCE_NS;
  }

  /** Whether nobody waits for an answer any more. */
  boolean isOutdated(Effect.FindFlights find) {
    return !newest.equals(Optional.of(find.ticket()));
  }

  /** Looks through a part of what was not looked through yet; whether there is more. */
  boolean more(FlightLog log) throws Fault {
    return log.lookThrough(outcomes());
  }

  /** The answer, with a reading of the log that has what was found. */
  Event.FlightsFound answer(Effect.FindFlights find, FlightLog log, Logbook book) throws Fault {
    Found<FlightLog.Stored> answer = log.found(find.search(), outcomes(), find.most());
    since = System.nanoTime();
    found = answer.newest().stream().map(FlightLog.Stored::id).toList();
    return new Event.FlightsFound(
        find.ticket(),
        found,
        answer.count(),
        answer.whole(),
        book.withFound(flights(answer.newest())));
  }

  /** A reading of the log with the flights found last as they are now. */
  Logbook over(Logbook read, FlightLog log) throws Fault {
    List<FlightLog.Stored> older = new ArrayList<>();
    for (RecordId id : read.isLarge() ? found : List.<RecordId>of()) {
      if (read.flight(id).isEmpty()) {
        log.find(Kind.FLIGHT, id).ifPresent(older::add);
      }
    }
    return read.withFound(flights(older));
  }

  private static List<Flight> flights(List<FlightLog.Stored> some) {
    return some.stream().map(each -> new Flight(each.id(), each.facts())).toList();
  }

  private OutcomeTable outcomes() {
    if (outcomes.isEmpty()) {
      outcomes = Optional.of(Shipped.outcomes());
    }
    return outcomes.get();
  }
}
