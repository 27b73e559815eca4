package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.DOUBLE;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.TimeSpan;

/** The way back from a measured altitude to the drag coefficient. */
class DragSearchTest {
  private static final long SEED = 1875;
  private static final int FLIGHTS = 300;

  /** The highest point of a path as it is drawn, to compare with the one looked for. */
  private static double drawnM(Launch launch) {
    return Flight.track(launch, new TimeSpan(0.001)).stream()
        .mapToDouble(point -> point.height().metres())
        .max()
        .orElseThrow();
  }

  @Test
  void the_coefficient_a_flight_was_flown_with_is_found_again() {
    Random random = new Random(SEED);
    int early = 0;
    for (int i = 0; i < FLIGHTS; i++) {
      Launch launch = Trial.random(random).launch();
      Prediction flown = Flight.predict(launch);
      early += flown.highest().metres() < flown.apogee().metres() ? 1 : 0;
      Launch guessed = launch.withDrag(0.2 + random.nextDouble());

      assertThat(Flight.dragReaching(guessed, flown.highest()))
          .as("seed %d, flight %d", SEED, i)
          .get(DOUBLE)
          .isCloseTo(launch.airframe().dragCoefficient(), within(1e-5));
    }
    assertThat(early).as("flights whose charge fired on the way up").isBetween(20, FLIGHTS - 20);
  }

  /** Fehskens and Malewicki, as in check values 6.4: a C6 at 60 g with Cd 0.75 goes 318.147 m. */
  @Test
  void the_closed_form_s_altitude_gives_its_coefficient() {
    ThrustCurve constant = ThrustCurve.of(new Impulse(8.82), new TimeSpan(1.86), Optional.empty());
    Motor motor = new Motor(constant, Mass.ofGrams(24), Mass.ofGrams(10.8));
    Launch launch =
        new Launch(
            new Airframe(Mass.ofGrams(36), Length.ofMillimetres(24.8), 0.3),
            List.of(Stage.of(motor)),
            Rod.vertical(new Length(0.01)),
            Air.uniform(new Density(1.225)),
            WindProfile.calm(),
            Optional.empty(),
            Optional.empty(),
            List.of());

    // The closed form burns at the mean mass, the program lets the propellant go.
    assertThat(Flight.dragReaching(launch, new Length(318.14717)).orElseThrow())
        .isCloseTo(0.75, within(0.02));
  }

  @Test
  void a_charge_on_the_way_up_ends_the_climb() {
    Launch launch = Rockets.nominal().withDelay(Optional.of(new TimeSpan(2)));
    Prediction flown = Flight.predict(launch);

    assertThat(flown.highest().metres())
        .isCloseTo(drawnM(launch), within(0.001))
        .isGreaterThan(flown.ejection().orElseThrow().altitude().metres())
        .isLessThan(flown.apogee().metres() - 10);
    assertThat(Flight.highest(launch, 1)).isEqualTo(flown.highest());
  }

  @Test
  void a_charge_after_apogee_leaves_it_as_the_highest_point() {
    Launch launch = Rockets.nominal().withDelay(Optional.of(new TimeSpan(7)));
    Prediction flown = Flight.predict(launch);

    assertThat(flown.highest()).isEqualTo(flown.apogee());
    assertThat(flown.highest().metres()).isCloseTo(drawnM(launch), within(0.001));
    assertThat(Flight.predict(launch.withDelay(Optional.empty())).highest())
        .isEqualTo(flown.apogee());
  }

  @Test
  void stronger_motors_go_higher_and_more_drag_less_high() {
    Launch launch = Rockets.nominal();

    assertThat(Flight.highest(launch, 1.05).metres())
        .isGreaterThan(Flight.highest(launch, 1).metres());
    assertThat(Flight.highest(launch.withDrag(0.8), 1).metres())
        .isLessThan(Flight.highest(launch, 1).metres());
  }

  @Test
  void what_no_drag_explains_has_no_coefficient() {
    Launch launch = Rockets.nominal();

    assertThat(Flight.dragReaching(launch, new Length(1000))).isEmpty();
    assertThat(Flight.dragReaching(launch, new Length(3))).isEmpty();
    assertThat(Flight.dragReaching(launch, Flight.highest(launch, 1)))
        .get(DOUBLE)
        .isCloseTo(0.75, within(1e-6));
  }
}
