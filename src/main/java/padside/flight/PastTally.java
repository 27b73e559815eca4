package padside.flight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;

/** Counts flights that are alike. */
final class PastTally implements FlightLog.Gathering {
  private static final RecordId ANY = new RecordId("any");

  private final Map<FlightLog.Burnt, Integer> burns = new HashMap<>();
  private final Map<FlightLog.Ejected, FlightLog.Told> ejections = new HashMap<>();

  /** Flights name few things over and over: each is kept once. */
  private final Map<Optional<?>, Optional<?>> once = new HashMap<>();

  PastTally with(List<Flight> flights) {
    for (Flight flight : flights) {
      if (flight.status() == Flight.Status.FLOWN) {
        take(flight.facts(), FlightLog.Told.of(flight.facts()));
      }
    }
    return this;
  }

  PastTally with(FlightLog.Past past) {
    past.burns().forEach((alike, flights) -> burns.merge(alike, flights, Integer::sum));
    past.ejections().forEach((alike, told) -> ejections.merge(alike, told, FlightLog.Told::and));
    return this;
  }

  @Override
  public void take(Facts alike, FlightLog.Told told) {
    Flight flight = new Flight(ANY, alike);
    burns.merge(burnt(flight), told.flights(), Integer::sum);
    ejections.merge(ejected(flight), told, FlightLog.Told::and);
  }

  @Override
  public FlightLog.Past past() {
    FlightLog.Past past = past(true);
    burns.clear(); // in a large log both would not fit into the memory
    ejections.clear();
    once.clear();
    return past;
  }

  FlightLog.Past past(boolean whole) {
    return new FlightLog.Past(burns, ejections, whole);
  }

  private FlightLog.Burnt burnt(Flight flight) {
    return new FlightLog.Burnt(
        once(flight.motor()),
        once(flight.lot()),
        once(flight.boosterLot()),
        once(flight.facts().get(Flight.BURN)));
  }

  private FlightLog.Ejected ejected(Flight flight) {
    return new FlightLog.Ejected(
        once(flight.rocket()),
        once(flight.motor()),
        once(flight.lot()),
        once(flight.facts().get(Flight.EJECTION)));
  }

  @SuppressWarnings("unchecked") // an equal one is of the same type
  private <T> Optional<T> once(Optional<T> value) {
    return (Optional<T>) once.computeIfAbsent(value, same -> same);
  }
}
