package padside.preflight;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.insight.Measured;
import padside.insight.Reached;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.motor.MotorType;
import padside.physics.Launch;
import padside.safety.RuleSets;
import padside.safety.ScatterSizes;
import padside.units.Length;
import padside.units.TimeSpan;

/** Measured altitudes of past flights, each with the launch that led to it. */
record Altitudes(Logbook book, OutcomeTable outcomes) {
  /** Words of the outcome table for a charge that came when the climb had ended, or never. */
  private static final Set<String> AFTER_THE_CLIMB = Set.of("at_apogee", "late", "none");

  /** Of flights whose altitude says something about drag, in their order. */
  List<Reached> of(List<Flight> flights) {
    Predicate<Facts> spoilt =
        outcomes.malfunction(Flight.BURN.name()).or(outcomes.malfunction(Flight.BOOST.name()));
    return flights.stream()
        .filter(flight -> !spoilt.test(flight.facts()))
        .flatMap(flight -> reached(flight).stream())
        .toList();
  }

  private Optional<Reached> reached(Flight flight) {
    Card card = Card.asFlown(flight, book);
    Length altitude = flight.altitude().orElseThrow();
    return launch(card, flight)
        .map(
            launch ->
                new Reached(
                    flight.id(),
                    card.motors().orElseThrow().top().motor().type().designation(),
                    launch,
                    altitude,
                    deviation(altitude, flight.altimeter().isPresent()),
                    () -> others(card, flight)));
  }

  private Optional<Launch> launch(Card card, Flight flight) {
    return Launches.of(card).launch().map(launch -> charged(launch, flight.facts()));
  }

  /** With the charge at its moment, as far as anybody saw it. */
  private Launch charged(Launch launch, Facts flight) {
    Optional<TimeSpan> measured =
        flight.get(Flight.MEASURED_DELAY).or(() -> Measured.of(flight, book.motors()).delay());
    if (measured.isPresent()) {
      return launch.withDelay(measured);
    }
    boolean free = flight.get(Flight.EJECTION).filter(AFTER_THE_CLIMB::contains).isPresent();
    return free ? launch.withDelay(Optional.empty()) : launch;
  }

  private static Length deviation(Length altitude, boolean byAltimeter) {
    ScatterSizes sizes = RuleSets.scatter();
    double share = (byAltimeter ? sizes.altimeter().share() : sizes.sightedShare()).value();
    double least = sizes.altimeter().least().value().metres();
    return new Length(Math.max(least, share * altitude.metres()));
  }

  /** On the other motors of that diameter that there are lots of, else on all of the table. */
  private List<Reached.OtherMotors> others(Card card, Flight flight) {
    MotorStack stack = card.motors().orElseThrow();
    MotorType noted = stack.top().motor().type();
    Set<String> owned =
        book.lots().stream()
            .flatMap(lot -> book.motors().choose(lot.motor()).value().stream())
            .map(motor -> motor.type().designation())
            .collect(Collectors.toSet());
    List<MotorType> alike =
        book.motors().types().stream()
            .filter(type -> type.diameter().equals(noted.diameter()))
            .filter(type -> !type.designation().equals(noted.designation()))
            .toList();
    List<MotorType> near =
        alike.stream().filter(type -> owned.contains(type.designation())).toList();
    return (near.isEmpty() ? alike : near)
        .stream().flatMap(type -> on(type, card, flight)).toList();
  }

  private Stream<Reached.OtherMotors> on(MotorType type, Card card, Flight flight) {
    MotorStack stack = card.motors().orElseThrow();
    MotorChoice motor = new MotorChoice(type, stack.top().motor().delay());
    Card other = card.withMotors(stack.withTop(motor), Optional.empty());
    return launch(other, flight)
        .map(launch -> new Reached.OtherMotors(type.designation(), launch))
        .stream();
  }
}
