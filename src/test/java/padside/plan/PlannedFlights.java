package padside.plan;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.motor.MotorTable;

/** An invented day to plan for, two rockets, and what a test puts into the range box. */
final class PlannedFlights {
  final MemoryFlightLog log = new MemoryFlightLog();
  final RecordId day = log.has(Kind.DAY, Facts.none().with(Day.DATE, LocalDate.of(2026, 5, 9)));
  final RecordId heron = log.has(Kind.ROCKET, Facts.none().with(Rocket.NAME, "Grey Heron"));
  final RecordId wren = log.has(Kind.ROCKET, Facts.none().with(Rocket.NAME, "Wren"));

  RecordId lot(String motor, String code, int bought) {
    return log.has(Kind.LOT, uncounted(motor, code).with(Lot.BOUGHT, bought));
  }

  static Facts uncounted(String motor, String code) {
    return Facts.none().with(Lot.MOTOR, motor).with(Lot.CODE, code).with(Lot.PLACE, "top tray");
  }

  RecordId chute(String name) {
    return log.has(
        Kind.DEVICE,
        Facts.none()
            .with(RecoveryDevice.NAME, name)
            .with(RecoveryDevice.SHAPE, RecoveryDevice.Shape.PARACHUTE));
  }

  /** One more flight at the end of the plan. */
  RecordId planned(RecordId rocket, String motor, Facts more) {
    return flight(rocket, motor, Flight.Status.PLANNED, more.with(Flight.PLACE, next()));
  }

  RecordId planned(RecordId rocket, String motor) {
    return planned(rocket, motor, Facts.none());
  }

  RecordId flight(RecordId rocket, String motor, Flight.Status status, Facts more) {
    return log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.DAY, day)
            .with(Flight.STATUS, status)
            .with(Flight.ROCKET, rocket)
            .with(Flight.MOTOR, motor)
            .with(more));
  }

  private int next() {
    return book().nextPlace(day, true);
  }

  Logbook book() {
    try {
      return Logbook.read(log, new MotorTable(MotorTable.read(data("motors.csv"), "").types()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Fault e) {
      throw new AssertionError("a log in memory cannot fail", e);
    }
  }

  Plan plan() {
    Logbook book = book();
    return Plan.of(book.day(day).orElseThrow(), book);
  }

  Packing packing() {
    Logbook book = book();
    try {
      return Packing.of(plan(), book, PackingTable.read(data("packing.csv")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Reader data(String name) {
    return new InputStreamReader(
        PlannedFlights.class.getResourceAsStream("/data/" + name), StandardCharsets.UTF_8);
  }
}
