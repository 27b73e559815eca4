package padside.report;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.flight.Rocket;
import padside.motor.MotorText;
import padside.units.Notations;
import padside.units.UnitSystem;

/**
 * What a day has come to so far.
 *
 * @param motors how many of each designation were fired
 * @param malfunctions flights of which something malfunctioned
 * @param best the flight with the highest measured altitude
 */
public record DayTally(
    int flown, Map<String, Integer> motors, long malfunctions, Optional<Flight> best) {
  /** Of flights in whatever state. */
  public static DayTally of(List<Flight> flights, OutcomeTable outcomes) {
    List<Flight> flown =
        flights.stream().filter(flight -> flight.status() == Flight.Status.FLOWN).toList();
    Map<String, Integer> motors = new TreeMap<>();
    flown.stream()
        .flatMap(flight -> flight.motor().map(MotorText::of).stream())
        .flatMap(text -> text.parts().stream())
        .forEach(stage -> motors.merge(stage.motor(), stage.count(), Integer::sum));
    Predicate<Facts> malfunction = outcomes.anyMalfunction();
    return new DayTally(
        flown.size(),
        motors,
        flown.stream().filter(flight -> malfunction.test(flight.facts())).count(),
        flown.stream()
            .filter(flight -> flight.altitude().isPresent())
            .max(Comparator.comparing(flight -> flight.altitude().get().metres())));
  }

  /** Two lines: the counts, then the motors. */
  public List<String> lines(Logbook book, UnitSystem units) {
    String counts = "Flown " + flown + " · malfunctions " + malfunctions;
    String highest = best.map(flight -> " · best " + highest(flight, book, units)).orElse("");
    String fired =
        motors.entrySet().stream()
            .map(entry -> entry.getValue() + " × " + entry.getKey())
            .collect(Collectors.joining(", "));
    return List.of(counts + highest, fired.isEmpty() ? "" : "Motors used: " + fired);
  }

  private static String highest(Flight flight, Logbook book, UnitSystem units) {
    String altitude = Notations.altitude(units).show(flight.altitude().orElseThrow());
    return flight
        .rocket()
        .flatMap(book::rocket)
        .map(Rocket::name)
        .map(name -> altitude + " (" + name + ")")
        .orElse(altitude);
  }
}
