package padside.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.motor.MotorText;
import padside.report.Comparison;
import padside.report.FlightWords;
import padside.units.Notations;
import padside.units.UnitSystem;

/** A flight told in a line. */
final class FlightText {
  private FlightText() {}

  /** {@code Skylark on C6-5}. */
  static String name(Flight flight, World world) {
    return rocket(flight, world) + flight.motor().map(motor -> " on " + motor).orElse("");
  }

  /** Its motors as lists have them, in few letters. */
  static Optional<String> motors(Flight flight) {
    return flight.motor().map(motor -> MotorText.of(motor).brief());
  }

  static String rocket(Flight flight, World world) {
    return rocket(flight, world.log()::rocket);
  }

  /** The same among rockets found otherwise. */
  static String rocket(Flight flight, Function<RecordId, Optional<Rocket>> rockets) {
    return flight
        .rocket()
        .map(id -> rockets.apply(id).map(Rocket::name).orElse("a removed rocket"))
        .orElse("no rocket named");
  }

  static String date(Flight flight, World world) {
    return date(flight.day().flatMap(world.log()::day));
  }

  /** Of its day, where there is one. */
  static String date(Optional<Day> day) {
    return day.flatMap(Day::date).map(LocalDate::toString).orElse("no date");
  }

  /** What came of it, or how far it has come. */
  static String outcome(Flight flight, World world) {
    return FlightWords.outcome(flight, world.outcomes());
  }

  static String verdict(Flight flight) {
    return flight.verdict().map(Ruling.Verdict::word).orElse("");
  }

  /** The prediction in a line, above the debrief. */
  static String predicted(Flight flight, World world) {
    UnitSystem units = world.settings().units();
    List<String> parts = new ArrayList<>();
    flight
        .facts()
        .get(Flight.PREDICTED_APOGEE)
        .ifPresent(apogee -> parts.add(Notations.altitude(units).show(apogee)));
    flight
        .facts()
        .get(Flight.PREDICTED_BEST_DELAY)
        .ifPresent(delay -> parts.add("best delay " + FlightWords.seconds(delay)));
    FlightWords.landing(
            flight.facts().get(Flight.PREDICTED_BEARING),
            flight.facts().get(Flight.PREDICTED_DISTANCE),
            units)
        .ifPresent(place -> parts.add("lands " + place));
    String all =
        parts.isEmpty() ? "Nothing was predicted." : "Predicted " + String.join(", ", parts);
    return all;
  }

  /** What was predicted and measured of it. */
  static List<Comparison> compared(Facts facts, World world) {
    return Comparison.of(facts, world.log().motors(), world.settings().units());
  }
}
