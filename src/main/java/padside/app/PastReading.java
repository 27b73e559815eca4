package padside.app;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Logbook;

/**
 * What all flights of a large log say of motors and delays: looked through page by page between
 * what else the log's thread does, and again after a change of a flown flight. What the last
 * looking through came to stands until the next is done.
 */
final class PastReading {
  /** So many flights keep a save waiting a hundredth of a second. */
  private static final int PAGE = 500;

  private Optional<FlightLog.Past> last = Optional.empty();
  private Optional<FlightLog.Past> growing = Optional.empty();
  private OptionalLong after = OptionalLong.empty();
  private boolean again;

  /** A reading of the log with what is known of all its flights. */
  Logbook over(Logbook read) {
    return read.past().whole() ? read : last.map(read::with).orElse(read);
  }

  /** Begins anew where that is due; whether it has. */
  boolean begins(Logbook read) {
    boolean due = again || (last.isEmpty() && !read.past().whole());
    if (!due || after.isPresent()) {
      return false;
    }
    again = false;
    growing = Optional.of(FlightLog.Past.of(List.of(), true));
    after = OptionalLong.of(0);
    return true;
  }

  /** Takes the next page; whether there are more. */
  boolean more(FlightLog log) throws Fault {
    FlightLog.Page page = log.flown(after.orElseThrow(), PAGE);
    growing = growing.map(past -> past.and(FlightLog.Past.of(page.flights(), true)));
    after = page.end();
    if (after.isEmpty()) {
      last = growing;
    }
    return after.isPresent();
  }

  /** Notes what was changed: of flights that are flown, or too old to be among those read. */
  void changed(Action action, Logbook before) {
    boolean flown =
        action.changes().stream()
            .filter(change -> change.kind() == Kind.FLIGHT)
            .anyMatch(change -> isFlown(change, before));
    again = again || (flown && last.isPresent());
  }

  /** What came from elsewhere may have changed any. */
  void changed() {
    again = last.isPresent();
  }

  private static boolean isFlown(Action.Change change, Logbook before) {
    boolean becomes =
        change.facts().get(Flight.STATUS).filter(Flight.Status.FLOWN::equals).isPresent();
    return becomes
        || change
            .record()
            .filter(
                id ->
                    before
                        .flight(id)
                        .map(flight -> flight.status() == Flight.Status.FLOWN)
                        .orElse(true))
            .isPresent();
  }
}
