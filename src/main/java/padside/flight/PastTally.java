package padside.flight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.units.TimeSpan;

/** Counts flights that are alike. */
final class PastTally {
  private final Map<FlightLog.Burnt, Integer> burns = new HashMap<>();
  private final Map<FlightLog.Ejected, FlightLog.Told> ejections = new HashMap<>();

  PastTally with(List<Flight> flights) {
    for (Flight flight : flights) {
      if (flight.status() == Flight.Status.FLOWN) {
        burns.merge(burnt(flight), 1, Integer::sum);
        ejections.merge(ejected(flight), told(flight), FlightLog.Told::and);
      }
    }
    return this;
  }

  PastTally with(FlightLog.Past past) {
    past.burns().forEach((alike, flights) -> burns.merge(alike, flights, Integer::sum));
    past.ejections().forEach((alike, told) -> ejections.merge(alike, told, FlightLog.Told::and));
    return this;
  }

  FlightLog.Past past(boolean whole) {
    return new FlightLog.Past(burns, ejections, whole);
  }

  private static FlightLog.Burnt burnt(Flight flight) {
    return new FlightLog.Burnt(
        flight.motor(), flight.lot(), flight.boosterLot(), flight.facts().get(Flight.BURN));
  }

  private static FlightLog.Ejected ejected(Flight flight) {
    return new FlightLog.Ejected(
        flight.rocket(), flight.motor(), flight.lot(), flight.facts().get(Flight.EJECTION));
  }

  private static FlightLog.Told told(Flight flight) {
    Optional<TimeSpan> delay = flight.facts().get(Flight.MEASURED_DELAY);
    Optional<TimeSpan> best = flight.facts().get(Flight.PREDICTED_BEST_DELAY);
    return new FlightLog.Told(
        1,
        moments(delay.map(TimeSpan::seconds)),
        moments(delay.flatMap(d -> best.map(b -> d.seconds() - b.seconds()))));
  }

  private static FlightLog.Moments moments(Optional<Double> value) {
    return value.map(FlightLog.Moments::of).orElse(FlightLog.Moments.NONE);
  }
}
