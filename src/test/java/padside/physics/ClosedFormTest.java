package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.TimeSpan;

/** Vertical flights whose answer is known in closed form. */
class ClosedFormTest {
  private static final double G = Flight.STANDARD_GRAVITY_MPS2;
  private static final Rod SHORT_ROD = Rod.vertical(new Length(1e-3));

  /** A motor of constant thrust that weighs hardly more than its propellant. */
  private static Motor constant(double impulse, double burnS, double propellantKg) {
    ThrustCurve curve = ThrustCurve.of(new Impulse(impulse), new TimeSpan(burnS), Optional.empty());
    return new Motor(curve, new Mass(propellantKg + 1e-3), new Mass(propellantKg));
  }

  /**
   * Boost at constant mass and thrust: Fehskens and Malewicki's burnout speed and height, Topics in
   * Advanced Model Rocketry (MIT Press 1973) ch. 4 eqs. 20, 21; numbers computed beforehand with
   * the mean of lift-off and burnout mass. Coast: eqs. 64, 67 from that burnout.
   */
  @ParameterizedTest
  @CsvSource({
    "A8, 2.32, 0.73, 0.050, 0.0033, 39.05982, 14.57319",
    "B6, 4.33, 0.86, 0.055, 0.0056, 68.41398, 30.68491",
    "C6, 8.82, 1.86, 0.060, 0.0108, 107.14443, 114.46078"
  })
  void constant_thrust_flight_is_the_closed_form_with_drag(
      String motor, double impulse, double burnS, double m0, double mp, double vb, double yb) {
    double k = 2.219016847e-4;
    double mass = m0 - mp / 2;
    Launch launch = Rockets.launch(mass, k, constant(impulse, burnS, 0), SHORT_ROD);
    Prediction flight = Flight.predict(launch);

    double coastS = Math.sqrt(mass / (G * k)) * Math.atan(vb * Math.sqrt(k / (mass * G)));
    double coastM = mass / (2 * k) * Math.log(1 + k * vb * vb / (mass * G));
    assertThat(flight.maxSpeed().metresPerSecond()).as(motor).isCloseTo(vb, within(1e-3));
    assertThat(flight.burnoutAltitude().metres()).isCloseTo(yb, within(1e-3));
    assertThat(flight.bestDelay().seconds()).isCloseTo(coastS, within(5e-4));
    assertThat(flight.apogee().metres()).isCloseTo(yb + coastM, within(2e-3));
  }

  /**
   * Four-number curves, falling mass and drag in air of one density: worked beforehand with another
   * step method on similar curves, so within half a per cent; not published.
   */
  @ParameterizedTest
  @CsvSource({
    "A8, 2.32, 9.73, 0.226, 0.289, 0.73, 0.050, 0.0033, 73.98, 3.26",
    "B6, 4.33, 12.14, 0.171, 0.298, 0.86, 0.055, 0.0056, 158.08, 4.59",
    "C6, 8.82, 14.09, 0.192, 0.255, 1.86, 0.060, 0.0108, 317.39, 5.47"
  })
  void small_rockets_reach_the_worked_apogee(
      String motor,
      double impulse,
      double fm,
      double tm,
      double ts,
      double tb,
      double m0,
      double mp,
      double apogee,
      double coast) {
    ThrustCurve curve = Rockets.curve(impulse, tb, fm, tm, ts);
    Motor burning = new Motor(curve, new Mass(mp + 1e-3), new Mass(mp));
    Rod rod = Rod.vertical(new Length(0.9));
    Prediction flight = Flight.predict(Rockets.launch(m0, 2.219016847e-4, burning, rod));
    assertThat(flight.apogee().metres()).as(motor).isCloseTo(apogee, within(apogee * 5e-3));
    assertThat(flight.bestDelay().seconds()).as(motor).isCloseTo(coast, within(0.02));
  }

  /**
   * Without drag and with falling mass: vb = c ln(m0/mb) - g tb (Tsiolkovsky), and its integral;
   * the textbook B4 rocket at g = 9.8, numbers computed beforehand.
   */
  @Test
  void falling_mass_in_a_vacuum_is_the_rocket_equation() {
    Launch launch = Rockets.launch(0.040, 0, constant(5, 1.2, 0.00833), SHORT_ROD);
    Prediction flight = Flight.predict(launch, 9.8);
    assertThat(flight.maxSpeed().metresPerSecond()).isCloseTo(128.401821, within(1e-4));
    assertThat(flight.burnoutAltitude().metres()).isCloseTo(73.771150, within(1e-4));
    assertThat(flight.apogee().metres()).isCloseTo(914.946028, within(1e-3));
    assertThat(flight.bestDelay().seconds()).isCloseTo(128.401821 / 9.8, within(1e-5));
  }

  /** Constant thrust-to-weight on a rod without drag: v = sqrt(2 L (F/m - g)). */
  @ParameterizedTest
  @CsvSource({"5, 0.9, 8.40285", "5, 1.0, 8.85738", "5, 1.8, 11.88342", "10.197, 0.9, 12.74159"})
  void constant_thrust_leaves_the_rod_at_the_closed_form_speed(
      double thrustToWeight, double rodM, double exitMps) {
    double mass = 0.1;
    Motor motor = constant(thrustToWeight * mass * G * 2, 2, 0);
    Launch launch = Rockets.launch(mass, 0, motor, Rod.vertical(new Length(rodM)));
    Prediction flight = Flight.predict(launch);
    assertThat(flight.thrustToWeight()).isCloseTo(thrustToWeight, within(1e-12));
    assertThat(flight.rodExitSpeed().metresPerSecond()).isCloseTo(exitMps, within(2e-4));
  }

  /** The same on a rod that leans: gravity counts along the rod only. */
  @Test
  void leaning_rod_carries_part_of_the_weight() {
    Rod rod = new Rod(new Length(1), Angle.ofDegrees(30), new Bearing(120));
    Prediction flight = Flight.predict(Rockets.launch(0.1, 0, constant(10, 2, 0), rod));
    double exit = Math.sqrt(2 * (50 - G * Math.cos(Math.PI / 6)));
    assertThat(flight.rodExitSpeed().metresPerSecond()).isCloseTo(exit, within(1e-4));
  }
}
