package padside.app;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Operation;
import padside.flight.OutcomeTable;
import padside.search.Found;
import padside.search.Search;

/**
 * The log that another thread has: each question waits for its turn there, and what is asked of all
 * flights is asked of a few at a time, so that what is typed meanwhile is kept in between.
 */
final class LogInTurn implements FlightLog {
  /** Flights read in one turn, some ten milliseconds. */
  private static final int MOST_AT_ONCE = 500;

  private final LogKeeper keeper;
  private final ExchangeInTurn.Going going;

  LogInTurn(LogKeeper keeper, ExchangeInTurn.Going going) {
    this.keeper = keeper;
    this.going = going;
  }

  private interface Call<T> {
    T on(FlightLog log) throws Fault;
  }

  private <T> T ask(Call<T> call) throws Fault {
    going.on();
    return keeper.ask(call::on);
  }

  @Override
  public List<RecordId> save(Action action) throws Fault {
    return ask(log -> log.save(action));
  }

  @Override
  public List<Stored> list(Kind kind) throws Fault {
    return ask(log -> log.list(kind));
  }

  @Override
  public Optional<Stored> find(Kind kind, RecordId id) throws Fault {
    return ask(log -> log.find(kind, id));
  }

  @Override
  public List<Stored> flights(FlightQuery query) throws Fault {
    return ask(log -> log.flights(query));
  }

  @Override
  public Found<Stored> found(Search search, OutcomeTable outcomes, int most) throws Fault {
    return ask(log -> log.found(search, outcomes, most));
  }

  @Override
  public boolean lookThrough(OutcomeTable outcomes) throws Fault {
    return ask(log -> log.lookThrough(outcomes));
  }

  @Override
  public Stretch pass(Sought sought, Optional<RecordId> after, int most) throws Fault {
    return ask(log -> log.pass(sought, after, Math.min(most, MOST_AT_ONCE)));
  }

  @Override
  public List<Stored> lastFlightOfEachRocket() throws Fault {
    return ask(FlightLog::lastFlightOfEachRocket);
  }

  @Override
  public List<Stored> measuredFlights(RecordId rocket, int most) throws Fault {
    return ask(log -> log.measuredFlights(rocket, most));
  }

  @Override
  public Map<RecordId, Integer> firedByLot() throws Fault {
    return ask(FlightLog::firedByLot);
  }

  @Override
  public Page flown(long after, int most) throws Fault {
    return ask(log -> log.flown(after, Math.min(most, MOST_AT_ONCE)));
  }

  @Override
  public List<Stored> removed(Kind kind) throws Fault {
    return ask(log -> log.removed(kind));
  }

  @Override
  public List<Operation> history(Kind kind, RecordId id) throws Fault {
    return ask(log -> log.history(kind, id));
  }

  @Override
  public List<Conflict> conflicts(int most) throws Fault {
    return ask(log -> log.conflicts(most));
  }

  @Override
  public List<Use> uses() throws Fault {
    return ask(FlightLog::uses);
  }

  @Override
  public List<Stamp> stamps(String boot) throws Fault {
    return ask(log -> log.stamps(boot));
  }

  @Override
  public Optional<Moment> newest() throws Fault {
    return ask(FlightLog::newest);
  }

  /** The log stays open: it is another's. */
  @Override
  public void close() {}
}
