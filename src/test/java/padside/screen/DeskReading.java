package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Fault;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.MemoryFlightLog;
import padside.report.DemoPages;
import padside.report.PageSource;
import padside.report.Pages;
import padside.search.Found;

/** What a desk's log answers to what a screen wants to read. */
final class DeskReading {
  private DeskReading() {}

  /** The answer; absent where the effect wants something else. */
  static Optional<Event> of(Effect effect, MemoryFlightLog log) {
    if (effect instanceof Effect.ReadHistory read) {
      return Optional.of(new Event.HistoryRead(read.ticket(), log.history(read.kind(), read.id())));
    }
    if (effect instanceof Effect.ReadRemoved read) {
      return Optional.of(new Event.RemovedRead(read.ticket(), log.removed(read.kind())));
    }
    if (effect instanceof Effect.FindFlights find) {
      return Optional.of(found(find, log));
    }
    return effect instanceof Effect.MakePage wanted
        ? Optional.of(made(wanted, log))
        : Optional.empty();
  }

  private static Event found(Effect.FindFlights find, MemoryFlightLog log) {
    Found<FlightLog.Stored> found = log.found(find.search(), Desk.OUTCOMES, find.most());
    List<Flight> flights =
        found.newest().stream().map(each -> new Flight(each.id(), each.facts())).toList();
    return new Event.FlightsFound(
        find.ticket(),
        flights.stream().map(Flight::id).toList(),
        found.count(),
        found.whole(),
        Desk.book(log).withFound(flights));
  }

  private static Event made(Effect.MakePage wanted, MemoryFlightLog log) {
    try {
      PageSource source = DemoPages.source(log, wanted.settings());
      return new Event.PageMade(wanted.ticket(), Pages.of(wanted.kind(), wanted.which(), source));
    } catch (Fault e) {
      throw new AssertionError("a log in memory cannot fail", e);
    }
  }
}
