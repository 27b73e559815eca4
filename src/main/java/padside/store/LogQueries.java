package padside.store;

import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.clock.Anchor;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Operation;
import padside.flight.OutcomeTable;
import padside.search.Found;
import padside.search.Search;

/** What is asked of a log, whatever its database is. */
abstract class LogQueries implements FlightLog {
  /** A reading or writing of the database. */
  interface Work<T> {
    T on(Opening.Opened log) throws SQLException, Fault;
  }

  /** Does the work on the open database. */
  abstract <T> T with(Work<T> work) throws Fault;

  @Override
  public List<Stored> list(Kind kind) throws Fault {
    return with(log -> new Records(log.database()).list(kind));
  }

  /** The record, one marked as removed included. */
  @Override
  public Optional<Stored> find(Kind kind, RecordId id) throws Fault {
    return with(log -> new Records(log.database()).find(kind, id));
  }

  @Override
  public List<Stored> flights(FlightQuery query) throws Fault {
    return with(log -> new Records(log.database()).flights(query));
  }

  @Override
  public List<Stored> measuredFlights(RecordId rocket, int most) throws Fault {
    return with(log -> new Records(log.database()).measuredFlights(rocket, most));
  }

  @Override
  public Found<Stored> found(Search search, OutcomeTable outcomes, int most) throws Fault {
    return searching(log -> log.search().find(search, outcomes, most));
  }

  @Override
  public boolean lookThrough(OutcomeTable outcomes) throws Fault {
    return searching(log -> log.search().more(outcomes));
  }

  private <T> T searching(Work<T> work) throws Fault {
    return with(
        log -> {
          try {
            return work.on(log);
          } catch (SQLException e) {
            if (LogFaults.isFull(e)) {
              throw LogFaults.notLookedThrough(e);
            }
            throw e;
          }
        });
  }

  @Override
  public Stretch pass(Sought sought, Optional<RecordId> after, int most) throws Fault {
    return with(log -> new PassingFlights(log.database(), sought).read(after, most));
  }

  @Override
  public List<Stored> lastFlightOfEachRocket() throws Fault {
    return with(log -> new Records(log.database()).lastFlightOfEachRocket());
  }

  @Override
  public Map<RecordId, Integer> firedByLot() throws Fault {
    return with(log -> new Records(log.database()).firedByLot());
  }

  @Override
  public Page flown(long after, int most) throws Fault {
    return with(log -> new FlownPage(log.database()).read(after, most));
  }

  @Override
  public List<Stored> removed(Kind kind) throws Fault {
    return with(log -> new Records(log.database()).removed(kind));
  }

  @Override
  public List<Operation> history(Kind kind, RecordId id) throws Fault {
    List<Anchor> anchors = anchors();
    return with(log -> new History(log.database(), anchors).of(kind, id));
  }

  @Override
  public List<Conflict> conflicts(int most) throws Fault {
    List<Anchor> anchors = anchors();
    return with(log -> new Conflicts(log.database(), anchors).newest(most));
  }

  @Override
  public List<Stamp> stamps(String boot) throws Fault {
    return with(log -> new Stamps(log.database()).of(boot));
  }

  @Override
  public Optional<Moment> newest() throws Fault {
    return with(
        log -> {
          Optional<JournalLine> line = log.tables().newest();
          return line.isPresent()
              ? Optional.of(new RunHeaders(log.database()).moment(line.get()))
              : Optional.empty();
        });
  }

  @Override
  public List<Use> uses() throws Fault {
    return with(log -> new Records(log.database()).uses());
  }
}
