package padside.screen;

import java.time.LocalDate;
import java.util.List;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.flight.Weather;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/** An invented log with a few records of every kind. */
final class Season {
  final MemoryFlightLog log = new MemoryFlightLog();
  final RecordId chute =
      log.has(
          Kind.DEVICE,
          Facts.none()
              .with(RecoveryDevice.NAME, "orange nylon")
              .with(RecoveryDevice.SHAPE, RecoveryDevice.Shape.PARACHUTE)
              .with(RecoveryDevice.DIAMETER, Length.ofInches(18), "18")
              .with(RecoveryDevice.DRAG_COEFFICIENT, 0.75, "0.75")
              .with(RecoveryDevice.NOTE, "one line knotted"));
  final RecordId streamer =
      log.has(
          Kind.DEVICE,
          Facts.none()
              .with(RecoveryDevice.NAME, "red tape")
              .with(RecoveryDevice.SHAPE, RecoveryDevice.Shape.STREAMER)
              .with(RecoveryDevice.WIDTH, Length.ofInches(4))
              .with(RecoveryDevice.LENGTH, Length.ofInches(40)));
  final RecordId altimeter =
      log.has(
          Kind.ALTIMETER,
          Facts.none().with(Altimeter.NAME, "blue").with(Altimeter.NOTE, "beeps in feet"));
  final RecordId skylark =
      log.has(
          Kind.ROCKET,
          Facts.none()
              .with(Rocket.NAME, "Skylark", "Skylark")
              .with(Rocket.MASS, Mass.ofOunces(2.5), "2.5")
              .with(Rocket.DIAMETER, Length.ofInches(1.64), "1.64in")
              .with(Rocket.MOUNT, Length.ofMillimetres(18))
              .with(Rocket.ROD, Length.ofInches(36), "36")
              .with(Rocket.DEVICE, chute));
  final RecordId kestrel =
      log.has(
          Kind.ROCKET,
          Facts.none()
              .with(Rocket.NAME, "Kestrel")
              .with(Rocket.MASS, Mass.ofGrams(38), "38g")
              .with(Rocket.DIAMETER, Length.ofMillimetres(24.8), "24.8mm")
              .with(Rocket.MOUNT, Length.ofMillimetres(13)));
  final RecordId meadow =
      log.has(
          Kind.FIELD,
          Facts.none()
              .with(Field.NAME, "Millbrook meadow")
              .with(Field.ELEVATION, Length.ofFeet(850), "850ft")
              .with(
                  Field.EDGES,
                  List.of(
                      new Field.Edge(new Bearing(0), Length.ofFeet(600), "lane", "road"),
                      new Field.Edge(new Bearing(45), Length.ofFeet(280), "", ""),
                      new Field.Edge(new Bearing(180), Length.ofFeet(700), "creek", "trees")))
              .with(Field.SMALLEST_SIDE, Length.ofFeet(900)));
  final RecordId c6 =
      log.has(
          Kind.LOT,
          Facts.none()
              .with(Lot.MOTOR, "C6-5", "C6-5")
              .with(Lot.CODE, "A120325")
              .with(Lot.BOUGHT, 6, "6")
              .with(Lot.BOUGHT_ON, "2026-04", "2026-04")
              .with(Lot.PLACE, "tin"));
  final RecordId a10 =
      log.has(Kind.LOT, Facts.none().with(Lot.MOTOR, "A10T-3", "a10-3t").with(Lot.CODE, "T07"));
  final RecordId day =
      log.has(
          Kind.DAY,
          Facts.none().with(Day.DATE, LocalDate.parse("2026-04-25")).with(Day.FIELD, meadow));
  final RecordId nominal =
      flown(skylark, "C6-5", Facts.none().with(Flight.ALTITUDE, Length.ofFeet(850), "850"));
  final RecordId treed =
      flown(
          kestrel,
          "A10T-3",
          Facts.none().with(Flight.EJECTION, "late").with(Flight.LANDED_ON, "tree"));
  final RecordId fix =
      log.has(
          Kind.FIX,
          Facts.none()
              .with(Fix.ROCKET, kestrel)
              .with(Fix.TEXT, "reglue fin 2")
              .with(Fix.SEVERITY, Fix.Severity.GROUNDS_IT)
              .with(Fix.FLIGHT, treed));
  final RecordId card = log.has(Kind.FLIGHT, card(skylark, "C6-5"));

  private Facts card(RecordId rocket, String motor) {
    return Facts.none()
        .with(Flight.STATUS, Flight.Status.CARD)
        .with(Flight.DAY, day)
        .with(Flight.ROCKET, rocket)
        .with(Flight.MOTOR, motor, motor)
        .with(
            Weather.facts(
                new Wind(Speed.ofMph(6), Speed.ofMph(9), java.util.Optional.of(new Bearing(225))),
                java.util.Optional.of("6g9 SW")))
        .with(Flight.VERDICT, Ruling.Verdict.GO)
        .with(Flight.REASON, "field edge NE 280 ft")
        .with(Flight.LIMIT, Speed.ofMph(13))
        .with(Flight.PREDICTED_APOGEE, Length.ofFeet(905))
        .with(Flight.PREDICTED_BEST_DELAY, new TimeSpan(4.9))
        .with(Flight.PREDICTED_BEARING, new Bearing(45))
        .with(Flight.PREDICTED_DISTANCE, Length.ofFeet(140));
  }

  private RecordId flown(RecordId rocket, String motor, Facts outcome) {
    Facts nominal =
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.BOOST, "straight")
            .with(Flight.BURN, "nominal")
            .with(Flight.EJECTION, "at_apogee")
            .with(Flight.RECOVERY, "full")
            .with(Flight.LANDING, "soft")
            .with(Flight.LANDED_ON, "grass");
    Facts lot = motor.equals("C6-5") ? Facts.none().with(Flight.LOT, c6) : Facts.none();
    return log.has(Kind.FLIGHT, card(rocket, motor).with(lot).with(nominal).with(outcome));
  }
}
