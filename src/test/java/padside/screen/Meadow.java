package padside.screen;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Ruling.Verdict;
import padside.flight.Weather;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Notations;
import padside.units.Temperature;
import padside.units.UnitSystem;
import padside.units.Wind;

/** An invented morning at an invented field. */
final class Meadow {
  final MemoryFlightLog log = new MemoryFlightLog();
  final RecordId field =
      log.has(
          Kind.FIELD,
          Facts.none()
              .with(Field.NAME, "Mill Meadow")
              .with(Field.SMALLEST_SIDE, Length.ofFeet(560)));
  final RecordId day =
      log.has(
          Kind.DAY,
          Facts.none()
              .with(Day.DATE, LocalDate.of(2026, 5, 2))
              .with(Day.FIELD, field)
              .with(Day.PERMISSION, true));
  final RecordId dome = chute("18 in dome", 18);
  final RecordId flat = chute("12 in flat", 12);
  final RecordId altimeter =
      log.has(Kind.ALTIMETER, Facts.none().with(Altimeter.NAME, "small one"));
  final RecordId heron = rocket("Grey Heron", 3.1, 1.64, 18);
  final RecordId wren = rocket("Wren", 1.2, 0.98, 13);
  final RecordId kite = rocket("Red Kite", 4.4, 1.33, 24);
  final RecordId lotK = lot("C6-5", "K7", 6);
  final RecordId lotB = lot("B6-4", "J2", 3);
  final RecordId lotUsedUp = lot("A8-3", "G9", 0);

  /** The heron flew on C6-5 and has no debrief yet; the wren's card waits. */
  Meadow withMorning() {
    flight(
        card(heron, "C6-5", Flight.Status.FLOWN)
            .with(Flight.LOT, lotK)
            .with(Flight.ALTIMETER, altimeter)
            .with(Flight.MASS, Mass.ofOunces(3.3), "3.3oz")
            .with(Flight.ROD, Length.ofInches(36))
            .with(Flight.VERDICT, Verdict.GO));
    flight(
        card(kite, "D12-5", Flight.Status.FLOWN)
            .with(Flight.VERDICT, Verdict.MARGINAL)
            .with(Flight.BOOST, "weathercocked")
            .with(Flight.BURN, "nominal")
            .with(Flight.RECOVERY, "tangled")
            .with(Flight.LANDING, "hard")
            .with(Flight.ALTITUDE, Length.ofFeet(912)));
    flight(
        card(wren, "A10T-3", Flight.Status.CARD)
            .with(Flight.DEVICE, flat)
            .with(Flight.VERDICT, Verdict.NO_GO)
            .with(Flight.LIMIT, Fixed.LIMIT)
            .with(Flight.REASON, Fixed.REASON));
    return this;
  }

  /** The flight with that number on the day, counted from 1. */
  Flight flight(int number) {
    var stored = log.flights(FlightLog.FlightQuery.newest(99));
    var found = stored.get(stored.size() - number);
    return new Flight(found.id(), found.facts());
  }

  /** Wind was read so long before the desk opens. */
  Meadow withWeather(String wind, Duration before) {
    Wind read = Notations.wind(UnitSystem.US).read(wind).value().orElseThrow();
    log.has(
        Kind.WEATHER,
        Weather.facts(read, Optional.of(wind))
            .with(Weather.DAY, day)
            .with(Weather.AT, Desk.MORNING.minus(before))
            .with(Weather.TEMPERATURE, Temperature.ofFahrenheit(61)));
    return this;
  }

  Desk desk() {
    return Desk.over(log).checking(Fixed::check);
  }

  private RecordId rocket(String name, double ounces, double inches, double mount) {
    return log.has(
        Kind.ROCKET,
        Facts.none()
            .with(Rocket.NAME, name)
            .with(Rocket.MASS, Mass.ofOunces(ounces))
            .with(Rocket.DIAMETER, Length.ofInches(inches))
            .with(Rocket.MOUNT, Length.ofMillimetres(mount))
            .with(Rocket.ROD, Length.ofInches(34))
            .with(Rocket.DEVICE, flat));
  }

  private RecordId chute(String name, double inches) {
    return log.has(
        Kind.DEVICE,
        Facts.none()
            .with(RecoveryDevice.NAME, name)
            .with(RecoveryDevice.SHAPE, RecoveryDevice.Shape.PARACHUTE)
            .with(RecoveryDevice.DIAMETER, Length.ofInches(inches)));
  }

  private RecordId lot(String motor, String code, int bought) {
    return log.has(
        Kind.LOT,
        Facts.none().with(Lot.MOTOR, motor).with(Lot.CODE, code).with(Lot.BOUGHT, bought));
  }

  private Facts card(RecordId rocket, String motor, Flight.Status status) {
    return Facts.none()
        .with(Flight.STATUS, status)
        .with(Flight.DAY, day)
        .with(Flight.ROCKET, rocket)
        .with(Flight.MOTOR, motor)
        .with(Flight.DEVICE, dome);
  }

  private void flight(Facts facts) {
    log.has(Kind.FLIGHT, facts);
  }
}
