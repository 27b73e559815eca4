package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.MotorChoice;
import padside.flight.OutcomeTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Wind;

/**
 * A flight card with everything it refers to looked up. What is not known is absent; the check says
 * what it lacks.
 *
 * @param mass without motor, recovery packed
 * @param wind as it stands on the card
 * @param weather the day's latest reading, for air and cloud base; its wind is not used
 * @param lotRecord how the lot the motor comes from has done so far
 * @param unread what was typed here or in a record it refers to but cannot be read, as nouns
 */
public record Card(
    Optional<Rocket> rocket,
    Optional<MotorChoice> motor,
    Optional<Mass> mass,
    Optional<RecoveryDevice> device,
    Optional<Length> rod,
    Angle tilt,
    Optional<Bearing> tiltToward,
    Optional<Wind> wind,
    Optional<Weather> weather,
    Optional<Day> day,
    Optional<Field> field,
    List<Fix> openFixes,
    Optional<LotRecord> lotRecord,
    List<String> unread) {
  /** Motors of one lot fired before, and how many of them malfunctioned. */
  public record LotRecord(String code, int fired, int malfunctioned) {}

  /** Keeps its own lists. */
  public Card {
    openFixes = List.copyOf(openFixes);
    unread = List.copyOf(unread);
  }

  /** Looks up what a flight's card refers to. Mass and rod fall back on the rocket's usual ones. */
  public static Card of(Flight flight, Logbook book, OutcomeTable outcomes) {
    Optional<Rocket> rocket = flight.rocket().flatMap(book::rocket);
    Optional<Day> day = flight.day().flatMap(book::day);
    Card card =
        new Card(
            rocket,
            flight.motor().flatMap(motor -> book.motors().choose(motor).value()),
            Unread.or(flight.facts(), Flight.MASS, rocket.flatMap(Rocket::mass)),
            flight.device().flatMap(book::device),
            Unread.or(flight.facts(), Flight.ROD, rocket.flatMap(Rocket::rod)),
            flight.facts().get(Flight.TILT).orElse(new Angle(0)),
            flight.facts().get(Flight.TILT_TOWARD),
            flight.wind(),
            flight.day().flatMap(book::latestWeather),
            day,
            day.flatMap(Day::field).flatMap(book::field),
            rocket.map(r -> book.openFixes(r.id())).orElse(List.of()),
            flight.lot().flatMap(book::lot).map(lot -> record(lot, book, outcomes)),
            List.of());
    return card.without(Unread.in(flight, card));
  }

  /** Malfunctions are looked for in the flights the logbook holds, which are the newest. */
  private static LotRecord record(Lot lot, Logbook book, OutcomeTable outcomes) {
    long malfunctioned =
        book.flights().stream()
            .filter(flight -> flight.lot().equals(Optional.of(lot.id())))
            .filter(flight -> outcomes.isMalfunction(Flight.BURN.name(), flight.facts()))
            .count();
    return new LotRecord(
        lot.code(), book.firedByLot().getOrDefault(lot.id(), 0), Math.toIntExact(malfunctioned));
  }

  private Card without(List<String> readings) {
    return new Card(
        rocket,
        motor,
        mass,
        device,
        rod,
        tilt,
        tiltToward,
        wind,
        weather,
        day,
        field,
        openFixes,
        lotRecord,
        readings);
  }
}
