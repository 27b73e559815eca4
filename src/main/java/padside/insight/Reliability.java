package padside.insight;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.motor.MotorText;

/** How the motors of a log have burnt: by lot, by type, by the maker's date code. */
public final class Reliability {
  private final Logbook book;
  private final OutcomeTable outcomes;
  private final Map<RecordId, Burns> lots = new HashMap<>();
  private final Map<String, Burns> types = new TreeMap<>();

  /** Of all flights of a log, not of the newest alone. */
  public Reliability(Logbook book, OutcomeTable outcomes) {
    this.book = book;
    this.outcomes = outcomes;
    for (FlightLog.Burnt alike : book.burnt()) {
      count(alike.fired(), alike, lots);
      count(fired(alike), alike, types);
    }
  }

  private <K> void count(Map<K, Integer> fired, FlightLog.Burnt alike, Map<K, Burns> into) {
    fired.forEach((key, motors) -> into.merge(key, burns(motors, alike), Burns::and));
  }

  private Burns burns(int motors, FlightLog.Burnt alike) {
    int fired = Math.max(1, motors) * alike.flights();
    Optional<OutcomeTable.Mark> mark =
        alike
            .burn()
            .map(
                code ->
                    outcomes
                        .find(Flight.BURN.name(), code)
                        .map(OutcomeTable.Outcome::mark)
                        .orElse(OutcomeTable.Mark.PASSABLE));
    return mark.isEmpty()
        ? new Burns(0, fired, 0, 0)
        : new Burns(
            fired,
            0,
            mark.get().isMalfunction() ? alike.flights() : 0,
            mark.get() == OutcomeTable.Mark.BURST ? alike.flights() : 0);
  }

  /** Motors of each type that one such flight takes. */
  private Map<String, Integer> fired(FlightLog.Burnt alike) {
    Map<String, Integer> fired = new HashMap<>();
    alike
        .motor()
        .ifPresent(
            line ->
                MotorText.of(line)
                    .parts()
                    .forEach(part -> fired.merge(type(part.motor()), part.count(), Integer::sum)));
    return fired;
  }

  /** The type of a motor: {@code C6} of {@code C6-5}; what the table does not know as it stands. */
  private String type(String motor) {
    return book.motors()
        .choose(motor)
        .value()
        .map(choice -> choice.type().designation())
        .orElse(motor);
  }

  /** The type of a lot's motors. */
  public String type(Lot lot) {
    return type(lot.motor());
  }

  public Burns of(Lot lot) {
    return lots.getOrDefault(lot.id(), Burns.NONE);
  }

  /** By type, whatever lot and delay, in the order of the alphabet. */
  public Map<String, Burns> byType() {
    return Map.copyOf(types);
  }

  /** A type's motors that are of no lot of some. */
  private Burns besides(String type, Set<Lot> some) {
    Burns rest = types.getOrDefault(type, Burns.NONE);
    for (Lot lot : some) {
      rest = rest.without(own(type, lot));
    }
    return rest;
  }
}
