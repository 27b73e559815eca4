package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.MemoryFlightLog;
import padside.flight.OutcomeTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Ruling.Verdict;
import padside.flight.Weather;
import padside.motor.MotorTable;
import padside.units.Length;
import padside.units.Mass;

/** Typed texts that cannot be read: never answered to as if the usual value had been typed. */
class UnreadTest {
  private final Preflight preflight = new Preflight(Settings.standard());

  /** A card on a log in which one field of one record was typed in a way that cannot be read. */
  private Answer answer(Kind kind, Column<?> column) throws Fault {
    MemoryFlightLog log = new MemoryFlightLog();
    RecordId rocket =
        log.has(
            Kind.ROCKET,
            spoilt(
                Facts.none().with(Rocket.NAME, "Wren").with(Rocket.MASS, Mass.ofGrams(34)),
                kind == Kind.ROCKET,
                column));
    RecordId field = log.has(Kind.FIELD, spoilt(Facts.none(), kind == Kind.FIELD, column));
    RecordId day =
        log.has(Kind.DAY, spoilt(Facts.none().with(Day.FIELD, field), kind == Kind.DAY, column));
    RecordId device =
        log.has(
            Kind.DEVICE,
            spoilt(Facts.none().with(RecoveryDevice.NAME, "12 in"), kind == Kind.DEVICE, column));
    log.has(
        Kind.WEATHER, spoilt(Facts.none().with(Weather.DAY, day), kind == Kind.WEATHER, column));
    Facts card =
        spoilt(
            Facts.none()
                .with(Flight.DAY, day)
                .with(Flight.ROCKET, rocket)
                .with(Flight.DEVICE, device)
                .with(Flight.ROD, new Length(0.9)),
            kind == Kind.FLIGHT,
            column);
    Logbook book = Logbook.read(log, new MotorTable(List.of()));
    return preflight.answer(
        Card.of(
            new Flight(new RecordId("test.9"), card),
            book,
            new OutcomeTable(List.of()),
            Optional.empty()));
  }

  private static Facts spoilt(Facts facts, boolean spoils, Column<?> column) {
    return spoils ? facts.with(column.name(), Facts.Cell.unread("6 mhp")) : facts;
  }

  @Test
  void what_cannot_be_read_is_missing_wherever_it_was_typed() throws Fault {
    assertMissing(Kind.FLIGHT, Flight.TILT, "rod tilt");
    assertMissing(Kind.FLIGHT, Flight.ROD, "rod length");
    assertMissing(Kind.ROCKET, Rocket.OWN_LIMIT, "own wind limit of Wren");
    assertMissing(Kind.ROCKET, Rocket.DRAG_COEFFICIENT, "drag coefficient of Wren");
    assertMissing(Kind.DEVICE, RecoveryDevice.SHAPE, "shape of 12 in");
    assertMissing(Kind.WEATHER, Weather.CLOUD_BASE, "cloud base");
    assertMissing(Kind.FIELD, Field.ELEVATION, "elevation of the field");
    assertMissing(Kind.FIELD, Field.HAZARDS, "hazards on the field");
    assertMissing(Kind.DAY, Day.FIRE_BAN, "fire ban");
  }

  private void assertMissing(Kind kind, Column<?> column, String noun) throws Fault {
    Answer answer = answer(kind, column);
    assertThat(answer.ruling().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(answer.ruling().reason()).contains(noun);
    assertThat(answer(Kind.LOT, column).ruling().reason()).doesNotContain(noun);
  }

  @Test
  void the_rockets_usual_mass_does_not_stand_in_for_one_that_cannot_be_read() throws Fault {
    assertThat(answer(Kind.FLIGHT, Flight.MASS).ruling().reason()).contains("mass without motor");
    assertThat(answer(Kind.LOT, Flight.MASS).ruling().reason())
        .doesNotContain("mass without motor");
  }

  @Test
  void a_wind_that_cannot_be_read_is_not_called_one_that_was_not_entered() throws Fault {
    assertThat(answer(Kind.FLIGHT, Flight.WIND_MEAN).headline())
        .startsWith("UNKNOWN  wind cannot be read · missing: ")
        .contains("wind");
    assertThat(answer(Kind.LOT, Flight.WIND_MEAN).headline()).contains("no wind entered");
  }
}
