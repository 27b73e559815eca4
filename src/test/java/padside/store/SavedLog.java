package padside.store;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.Operation;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;

/**
 * Writes a small invented log with the program as it is: three flights, one of them on two stages,
 * a removal, an undo, a text that could not be read. What it writes is saved under {@code
 * src/test/resources/saved-logs} before the tables change.
 */
final class SavedLog {
  private final FlightLog log;

  private SavedLog(FlightLog log) {
    this.log = log;
  }

  /** Writes it into the folder named. */
  public static void main(String[] folder) throws Fault {
    RecordId rocket;
    try (LogFolder log = LogFolder.open(Path.of(folder[0]), new PretendMachine(101))) {
      rocket = new SavedLog(log).firstRun();
    }
    try (LogFolder log = LogFolder.open(Path.of(folder[0]), new PretendMachine(102))) {
      new SavedLog(log).secondRun(rocket);
    }
  }

  private RecordId firstRun() throws Fault {
    RecordId rocket = rocket();
    RecordId device =
        made(
            Kind.DEVICE,
            Facts.none()
                .with(RecoveryDevice.NAME, "12 in nylon")
                .with(RecoveryDevice.DIAMETER, Length.ofInches(12), "12in"));
    RecordId lot =
        made(
            Kind.LOT,
            Facts.none().with(Lot.MOTOR, "A8-3").with(Lot.CODE, "04-2031").with(Lot.BOUGHT, 3));
    RecordId day =
        made(
            Kind.DAY,
            Facts.none().with(Day.DATE, LocalDate.of(2026, 5, 2)).with(Day.PERMISSION, true));
    Facts card =
        Facts.none()
            .with(Flight.ROCKET, rocket)
            .with(Flight.DAY, day)
            .with(Flight.STATUS, Flight.Status.DRAFT);
    RecordId flight = made(Kind.FLIGHT, card.with(Flight.MOTOR, "A8-3").with(Flight.LOT, lot));
    change(flight, Facts.none().with(Flight.DEVICE, device));
    change(
        flight,
        Facts.none()
            .with(Flight.WIND_MEAN, new Speed(2.68224), "6g9 SW")
            .with(Flight.STATUS, Flight.Status.FLOWN));
    change(flight, Facts.none().with(Flight.ALTITUDE, Length.ofFeet(312), "312 ft"));
    RecordId second = made(Kind.FLIGHT, card.with(Flight.MOTOR, "C6-0, C6-7"));
    change(second, Facts.none().with(Flight.MASS.name(), Facts.Cell.unread("about 2")));
    change(second, Facts.none().with(Flight.STATUS, Flight.Status.FLOWN));
    return rocket;
  }

  private RecordId rocket() throws Fault {
    return made(
        Kind.ROCKET,
        Facts.none()
            .with(Rocket.NAME, "Tin Whistle")
            .with(Rocket.MASS, new Mass(0.0368543), "1.3oz")
            .with(Rocket.DIAMETER, Length.ofInches(0.976), "0.976in")
            .with(Rocket.NOTE, "fins re-glued – twice; \"loud\" µ"));
  }

  private void secondRun(RecordId rocket) throws Fault {
    RecordId day = made(Kind.DAY, Facts.none().with(Day.DATE, LocalDate.of(2026, 6, 13)));
    RecordId called =
        made(
            Kind.FLIGHT,
            Facts.none()
                .with(Flight.ROCKET, rocket)
                .with(Flight.DAY, day)
                .with(Flight.MOTOR, "B6-4")
                .with(Flight.STATUS, Flight.Status.CARD));
    RecordId wrong = made(Kind.ROCKET, Facts.none().with(Rocket.NAME, "Typed twice"));
    log.save(Action.remove("remove", Kind.ROCKET, wrong));
    change(called, Facts.none().with(Flight.MOTOR, "B6-2"));
    undoLast(called);
  }

  private void undoLast(RecordId flight) throws Fault {
    List<Operation> history = log.history(Kind.FLIGHT, flight);
    log.save(Operation.last(history).orElseThrow().undoing().action());
  }

  private RecordId made(Kind kind, Facts facts) throws Fault {
    return log.save(Action.create("add", kind, facts)).get(0);
  }

  private void change(RecordId flight, Facts facts) throws Fault {
    log.save(Action.change("edit", Kind.FLIGHT, flight, facts));
  }
}
