package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import padside.flight.MemoryFlightLog;
import padside.flight.OutcomeTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.insight.Confidence;
import padside.insight.Drag;
import padside.physics.Launch;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;

/** Cards of a rocket whose altitudes were measured. */
class LearnedTest {
  private static final OutcomeTable OUTCOMES =
      new OutcomeTable(
          List.of(
              new OutcomeTable.Outcome("burn", "nominal", "nominal", OutcomeTable.Mark.NOMINAL),
              new OutcomeTable.Outcome("burn", "weak", "weak", OutcomeTable.Mark.MALFUNCTION)));
  private static final double TRUE_DRAG = 0.55;

  private final MemoryFlightLog log = new MemoryFlightLog();
  private RecordId rocket = new RecordId("none");
  private RecordId chute = new RecordId("none");

  @BeforeEach
  void a_rocket_and_its_parachute() {
    chute =
        log.has(
            Kind.DEVICE,
            Facts.none()
                .with(RecoveryDevice.NAME, "12 in")
                .with(RecoveryDevice.DIAMETER, Length.ofInches(12)));
    rocket =
        log.has(
            Kind.ROCKET,
            Facts.none()
                .with(Rocket.NAME, "Alder")
                .with(Rocket.MASS, Mass.ofGrams(40))
                .with(Rocket.ROD, Length.ofCentimetres(90))
                .with(Rocket.DIAMETER, Length.ofMillimetres(31)));
  }

  private Facts card(String motor) {
    return Facts.none()
        .with(Flight.ROCKET, rocket)
        .with(Flight.DEVICE, chute)
        .with(Flight.MOTOR, motor)
        .with(Flight.WIND_MEAN, new Speed(2));
  }

  private Card put(Facts facts) {
    Flight flight = new Flight(new RecordId("card"), facts);
    try {
      Logbook book = Logbook.read(log, CardBuilder.table());
      return Card.of(flight, book, OUTCOMES, Optional.empty());
    } catch (Fault e) {
      throw new AssertionError("a log in memory failed", e);
    }
  }

  private Outlook foretold(Facts facts) {
    return Forecasts.of(put(facts)).outlook().orElseThrow();
  }

  /** How high it would go with its true drag, as flown. */
  private Length truth(Facts facts) {
    Card card = put(facts);
    Rocket real = card.rocket().orElseThrow();
    Facts known = real.facts().with(Rocket.DRAG_COEFFICIENT, TRUE_DRAG);
    return Forecasts.of(card.withRocket(new Rocket(real.id(), known)))
        .outlook()
        .orElseThrow()
        .top()
        .height();
  }

  private RecordId flew(String motor, double factor) {
    Facts flown = card(motor);
    double metres = factor * truth(flown).metres();
    return log.has(
        Kind.FLIGHT,
        flown
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.BURN, "nominal")
            .with(Flight.ALTITUDE, new Length(metres)));
  }

  @Test
  void without_an_altitude_the_usual_drag_is_taken_and_said_so() {
    assertThat(foretold(card("C6-5")).drag().words()).isEqualTo("0.75 as usual, no altitude yet");
  }

  @Test
  void altitudes_make_the_next_prediction_better() {
    double before = missM(card("B6-4"));
    double last = before;
    for (int flights = 1; flights <= 8; flights++) {
      flew(flights % 2 == 0 ? "C6-5" : "C6-7", 1);
      double now = missM(card("B6-4"));
      assertThat(now).isLessThanOrEqualTo(last + 1e-9);
      last = now;
    }
    assertThat(last).isLessThan(before / 4);
    assertThat(foretold(card("B6-4")).drag().words()).endsWith("from 8 flights");
  }

  /** It says how much an interval holds; where the rocket goes is not for it to say. */
  @Test
  void a_confidence_changes_no_drag_a_launch_is_flown_with() {
    flew("C6-5", 1);
    flew("C6-7", 1);
    Card card = put(card("B6-4"));

    Launch usual = Launches.of(card).launch().orElseThrow();
    Launch bolder = Launches.of(card, new Confidence(60)).launch().orElseThrow();
    assertThat(bolder).isEqualTo(usual);
    assertThat(usual.airframe().dragCoefficient()).isNotEqualTo(Launches.USUAL_ROCKET_DRAG);
  }

  private double missM(Facts card) {
    return Math.abs(foretold(card).top().height().metres() - truth(card).metres());
  }

  @Test
  void a_charge_that_ended_the_climb_is_not_taken_for_drag() {
    for (int i = 0; i < 6; i++) {
      flew("C6-3", 1);
    }

    Drag drag = put(card("C6-5")).drag(Confidence.usual()).drag().learned().orElseThrow();

    assertThat(TRUE_DRAG).isBetween(drag.low(), drag.high());
  }

  @Test
  void what_is_left_open_of_the_drag_narrows_the_spread() {
    Card unknown = put(card("C6-5"));
    double before = unknown.drag(Confidence.usual()).share();
    for (int i = 0; i < 8; i++) {
      flew("C6-5", 1);
    }
    Card known = put(card("C6-5"));

    assertThat(before).isCloseTo(Math.hypot(0.26, 0.1), within(1e-12));
    assertThat(known.drag(Confidence.usual()).share()).isLessThan(before / 2);
    Outlook.Top wide = top(unknown);
    Outlook.Top narrow = top(known);
    assertThat(width(narrow)).isLessThan(width(wide));
  }

  private static Outlook.Top top(Card card) {
    return new Preflight(Settings.standard()).answer(card).outlook().orElseThrow().top();
  }

  private static double width(Outlook.Top top) {
    return top.high().orElseThrow().metres() - top.low().orElseThrow().metres();
  }

  @Test
  void a_drag_fixed_by_its_flier_stays_and_what_was_learned_is_told() {
    flew("C6-5", 1);
    log.save(
        Action.change(
            "change rocket",
            Kind.ROCKET,
            rocket,
            Facts.none().with(Rocket.DRAG_COEFFICIENT, 0.9).with(Rocket.DRAG_FIXED, true)));

    DragUsed drag = foretold(card("C6-5")).drag();

    assertThat(drag.words()).isEqualTo("0.90 as typed, fixed");
    assertThat(drag.learned()).isPresent();
  }

  @Test
  void feet_typed_for_metres_and_another_motor_are_named() {
    for (int i = 0; i < 4; i++) {
      flew("C6-5", 1);
    }
    RecordId feet = flew("C6-5", 1 / 0.3048);
    double b6 = truth(card("B6-4")).metres();
    RecordId motor = flew("C6-5", b6 / truth(card("C6-5")).metres());

    Drag drag = put(card("C6-5")).drag(Confidence.usual()).drag().learned().orElseThrow();

    assertThat(drag.flights()).hasSize(4);
    assertThat(drag.odd()).extracting(Drag.Odd::flight).containsExactlyInAnyOrder(feet, motor);
    assertThat(drag.odd())
        .extracting(Drag.Odd::cause)
        .contains("reads as if feet were typed as metres")
        .anySatisfy(cause -> assertThat(cause).contains("better than C6"));
  }

  @Test
  void a_motor_that_failed_teaches_nothing_of_drag() {
    RecordId weak = flew("C6-5", 0.8);
    log.save(Action.change("debrief", Kind.FLIGHT, weak, Facts.none().with(Flight.BURN, "weak")));

    assertThat(put(card("C6-5")).drag(Confidence.usual()).drag().learned()).isEmpty();
  }

  @Test
  void cards_are_alike_while_no_altitude_is_added() {
    flew("C6-5", 1);
    Card card = put(card("C6-5"));

    assertThat(put(card("C6-5"))).isEqualTo(card);
    flew("C6-5", 1);
    assertThat(put(card("C6-5"))).isNotEqualTo(card);
  }
}
