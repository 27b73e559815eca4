package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.TimeSpan;

/**
 * The rockets of Topics in Advanced Model Rocketry (MIT Press 1973), chapter 4: constant density, g
 * = 9.8 m/s², drag given as k in kg/m.
 */
class TextbookRocketTest {
  private static final double BOOK_GRAVITY_MPS2 = 9.8;

  /** The book's B4: 5 N·s, 13 N at 0.14 s, sustained from 0.22 s, burnout at 1.20 s. */
  private static ThrustCurve b4() {
    return ThrustCurve.of(
        new Impulse(5),
        new TimeSpan(1.2),
        ThrustCurve.Peak.of(
            Optional.of(new Force(13)),
            Optional.of(new TimeSpan(0.14)),
            Optional.of(new TimeSpan(0.22))));
  }

  private static Launch launch(double liftoffKg, double kKgpm, Rod rod) {
    Motor motor = new Motor(b4(), Mass.ofGrams(9), Mass.ofGrams(8.33));
    return Rockets.launch(liftoffKg, kKgpm, motor, rod);
  }

  /** Tables 1 and 2, zero-roll rows; tolerances are those of the printed interval method. */
  @Test
  void b4_rocket_reaches_the_printed_burnout_and_apex() {
    Prediction flight =
        Flight.predict(launch(0.040, 0.92e-4, Rod.vertical(new Length(0.001))), BOOK_GRAVITY_MPS2);

    double burnoutM = flight.burnoutAltitude().metres();
    assertThat(flight.maxSpeed().metresPerSecond()).isCloseTo(111.4, within(0.1));
    assertThat(burnoutM).isCloseTo(78.1, within(0.1));
    assertThat(flight.bestDelay().seconds()).isCloseTo(6.46, within(0.01));
    assertThat(flight.apogee().metres() - burnoutM).isCloseTo(265.5, within(0.3));
    assertThat(flight.apogee().metres()).isCloseTo(343.6, within(0.3));
  }

  /** Captions of figs. 10-14, burnout only: the printed apex times do not follow from the book. */
  @ParameterizedTest
  @CsvSource({"0.021, 0.00005, 82, 131", "0.050, 0.00012, 35, 51", "0.100, 0.002, 15, 19"})
  void b4_from_thirty_degrees_burns_out_where_printed(
      double liftoffKg, double kKgpm, double acrossM, double upM) {
    Rod rod = new Rod(new Length(1), Angle.ofDegrees(30), new Bearing(90));
    Launch launch = launch(liftoffKg, kKgpm, rod);
    FlightPath path = FlightPath.planned(launch, BOOK_GRAVITY_MPS2);
    Tracker tracker = new Tracker(1.2);
    path.trackWith(tracker);
    path.fly();
    TrackPoint burnout = tracker.endingAt(path.timeS(), path.state()).get(1);

    assertThat(burnout.time().seconds()).isEqualTo(1.2);
    assertThat(burnout.east().metres()).isCloseTo(acrossM, within(0.6));
    assertThat(burnout.height().metres()).isCloseTo(upM, within(0.6));
  }
}
