package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.OutcomeTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.motor.MotorTable;
import padside.units.Length;

/** What is free to fly, counted by hand from a few records. */
class BoxTest {
  private final MemoryFlightLog log = new MemoryFlightLog();
  private RecordId rocket;
  private RecordId chute;
  private RecordId lot;

  @BeforeEach
  void fill() {
    rocket = log.has(Kind.ROCKET, Facts.none().with(Rocket.MOUNT, Length.ofMillimetres(18)));
    chute = log.has(Kind.DEVICE, Facts.none().with(RecoveryDevice.NAME, "12in red"));
    log.has(Kind.DEVICE, Facts.none().with(RecoveryDevice.NAME, "15in blue"));
    lot = lot("C6-5", "K1", 4);
  }

  private RecordId lot(String motor, String code, int bought) {
    return log.has(
        Kind.LOT,
        Facts.none().with(Lot.MOTOR, motor).with(Lot.CODE, code).with(Lot.BOUGHT, bought));
  }

  private RecordId flight(Flight.Status status, String motor) {
    return log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.STATUS, status)
            .with(Flight.MOTOR, motor)
            .with(Flight.LOT, lot)
            .with(Flight.DEVICE, chute));
  }

  private void debriefed(RecordId flight, String burn) {
    log.save(Action.change("debrief", Kind.FLIGHT, flight, Facts.none().with(Flight.BURN, burn)));
  }

  private Box box() throws Fault, IOException {
    Flight card = new Flight(new RecordId("test.card"), Facts.none().with(Flight.ROCKET, rocket));
    return Box.of(card, Logbook.read(log, table()), outcomes());
  }

  private static MotorTable table() throws IOException {
    return new MotorTable(MotorTable.read(data("motors.csv"), "motors.csv").types());
  }

  private static OutcomeTable outcomes() throws IOException {
    return OutcomeTable.read(data("outcomes.csv"));
  }

  private static Reader data(String name) {
    return new InputStreamReader(
        BoxTest.class.getResourceAsStream("/data/" + name), StandardCharsets.UTF_8);
  }

  private static List<String> devices(Box box) {
    return box.devices().stream().map(RecoveryDevice::name).toList();
  }

  @Test
  void motors_that_flew_are_out_of_the_box_and_those_on_waiting_cards_are_promised()
      throws Fault, IOException {
    flight(Flight.Status.FLOWN, "C6-5");
    assertThat(box().motors()).extracting(Box.Stock::left).containsExactly(Optional.of(3));

    flight(Flight.Status.CARD, "2xC6-5");
    assertThat(box().motors()).extracting(Box.Stock::left).containsExactly(Optional.of(1));

    flight(Flight.Status.CARD, "C6-5");
    assertThat(box().motors()).isEmpty();
  }

  @Test
  void a_draft_and_a_flight_called_off_hold_nothing() throws Fault, IOException {
    flight(Flight.Status.DRAFT, "C6-5");
    flight(Flight.Status.SCRUBBED, "C6-5");

    assertThat(box().motors()).extracting(Box.Stock::left).containsExactly(Optional.of(4));
    assertThat(devices(box())).containsExactly("12in red", "15in blue");
  }

  @Test
  void motors_too_wide_for_the_mount_are_left_out_and_narrower_ones_stay()
      throws Fault, IOException {
    // Cases of 24 and 13 mm against a mount of 18 mm: the motor table.
    lot("D12-5", "D1", 3);
    lot("A10T-3", "T1", 3);

    assertThat(box().motors())
        .extracting(stock -> stock.motor().designation())
        .containsExactly("C6-5", "A10T-3");
  }

  @Test
  void a_lot_never_counted_is_taken_to_hold_some_and_an_unknown_motor_is_none()
      throws Fault, IOException {
    log.has(Kind.LOT, Facts.none().with(Lot.MOTOR, "B6-4"));
    lot("Q99-1", "?", 3);

    assertThat(box().motors())
        .extracting(stock -> stock.motor().designation())
        .containsExactly("C6-5", "B6-4");
    assertThat(box().motors().get(1).left()).isEmpty();
  }

  @Test
  void a_chute_is_free_again_once_its_flight_has_been_debriefed() throws Fault, IOException {
    RecordId flown = flight(Flight.Status.FLOWN, "C6-5");
    assertThat(devices(box())).containsExactly("15in blue");

    debriefed(flown, "nominal");
    assertThat(devices(box())).containsExactly("12in red", "15in blue");
  }

  @Test
  void a_card_is_no_hindrance_to_itself() throws Fault, IOException {
    RecordId own = flight(Flight.Status.CARD, "C6-5");
    Logbook book = Logbook.read(log, table());
    Box box = Box.of(book.flight(own).orElseThrow(), book, outcomes());

    assertThat(devices(box)).containsExactly("12in red", "15in blue");
    assertThat(box.motors()).extracting(Box.Stock::left).containsExactly(Optional.of(4));
  }

  @Test
  void each_lot_tells_how_it_has_done() throws Fault, IOException {
    RecordId flown = flight(Flight.Status.FLOWN, "C6-5");
    debriefed(flown, "cato_case");

    assertThat(box().motors())
        .extracting(Box.Stock::record)
        .containsExactly(CardBuilder.record("K1", 1, 1));
  }

  @Test
  void a_card_is_told_which_delay_its_rocket_has_been_well_with() throws Fault, IOException {
    RecordId flown = flight(Flight.Status.FLOWN, "C6-3");
    Facts late = Facts.none().with(Flight.ROCKET, rocket).with(Flight.EJECTION, "early");
    log.save(Action.change("debrief", Kind.FLIGHT, flown, late));
    Flight next =
        new Flight(
            new RecordId("test.card"),
            Facts.none().with(Flight.ROCKET, rocket).with(Flight.MOTOR, "C6-3"));
    Logbook book = Logbook.read(log, table());
    Card card = Card.of(next, book, outcomes(), Optional.empty());

    assertThat(card.suits().orElseThrow().words())
        .isEqualTo("1 of 1 own flight on C6 says delay 5");
    assertThat(
            card.withMotors(book.motors().chooseAll("C6-7").value().orElseThrow(), Optional.empty())
                .suits())
        .isPresent();
    assertThat(
            card.withMotors(book.motors().chooseAll("B6-4").value().orElseThrow(), Optional.empty())
                .suits())
        .isEmpty();
  }
}
