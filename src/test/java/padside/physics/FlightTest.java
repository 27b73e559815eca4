package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.TimeSpan;

/** What becomes of a launch when something is unusual. */
class FlightTest {
  private static final Airframe AIRFRAME = Rockets.nominal().airframe();

  private static Launch with(
      Airframe airframe, Motor motor, Rod rod, Optional<TimeSpan> delay, List<TimeSpan> onSale) {
    Launch usual = Rockets.nominal();
    return new Launch(
        airframe,
        List.of(Stage.of(motor)),
        rod,
        usual.air(),
        usual.wind(),
        delay,
        usual.recovery(),
        onSale);
  }

  private static Launch delayed(double seconds) {
    Launch usual = Rockets.nominal();
    return with(
        usual.airframe(),
        usual.stages().get(0).motor(),
        usual.rod(),
        Optional.of(new TimeSpan(seconds)),
        usual.delaysOnSale());
  }

  private static Motor pushing(ThrustCurve.Point... points) {
    ThrustCurve curve = ThrustCurve.ofPoints(List.of(points));
    return new Motor(curve, Mass.ofGrams(24), Mass.ofGrams(10.8));
  }

  private static ThrustCurve.Point at(double seconds, double newtons) {
    return new ThrustCurve.Point(new TimeSpan(seconds), new Force(newtons));
  }

  @Test
  void too_heavy_a_rocket_does_not_leave_the_rod() {
    Airframe brick = new Airframe(new Mass(2), Length.ofMillimetres(60), 0.75);
    Launch usual = Rockets.nominal();
    Launch launch =
        with(
            brick, usual.stages().get(0).motor(), usual.rod(), usual.delay(), usual.delaysOnSale());
    Prediction flight = Flight.predict(launch);
    assertThat(flight.leftRod()).isFalse();
    assertThat(flight.thrustToWeight()).isLessThan(1);
    assertThat(flight.apogee().metres()).isZero();
    assertThat(flight.maxSpeed().metresPerSecond()).isZero();
    assertThat(flight.ejection()).isEmpty();
    assertThat(flight.landing().distance().metres()).isZero();
    assertThat(Flight.track(launch, new TimeSpan(1))).hasSize(1);
  }

  @Test
  void rocket_that_only_hops_on_the_rod_does_not_leave_it() {
    Motor spike = pushing(at(0.02, 20), at(0.03, 0.1), at(1, 0.1));
    Rod longRod = Rod.vertical(new Length(3));
    Launch launch = with(AIRFRAME, spike, longRod, Optional.empty(), List.of());
    Prediction flight = Flight.predict(launch);
    assertThat(flight.leftRod()).isFalse();
    assertThat(flight.rodExitSpeed().metresPerSecond()).isZero();
    assertThat(flight.maxSpeed().metresPerSecond()).isZero();
  }

  @Test
  void rocket_that_falls_back_flies_when_thrust_returns() {
    Motor twice = pushing(at(0.02, 20), at(0.03, 0.1), at(1.2, 0.1), at(1.3, 10), at(2.5, 10));
    Motor once = pushing(at(0.1, 10), at(1.3, 10));
    Rod longRod = Rod.vertical(new Length(3));
    Prediction late = Flight.predict(with(AIRFRAME, twice, longRod, Optional.empty(), List.of()));
    Prediction prompt = Flight.predict(with(AIRFRAME, once, longRod, Optional.empty(), List.of()));
    assertThat(late.leftRod()).isTrue();
    assertThat(late.timeToApogee().seconds()).isGreaterThan(prompt.timeToApogee().seconds() + 1);
    assertThat(late.rodExitSpeed().metresPerSecond())
        .isCloseTo(prompt.rodExitSpeed().metresPerSecond(), within(0.3));
  }

  @Test
  void rocket_may_leave_a_long_rod_after_burnout() {
    Motor kick = pushing(at(0.02, 60), at(0.08, 60), at(0.1, 0));
    Rod longRod = Rod.vertical(new Length(6));
    Launch launch = with(AIRFRAME, kick, longRod, Optional.of(new TimeSpan(0)), List.of());
    Prediction flight = Flight.predict(launch);
    assertThat(flight.leftRod()).isTrue();
    assertThat(flight.burnoutAltitude().metres()).isBetween(1.0, 6.0);
    assertThat(flight.rodExitSpeed().metresPerSecond())
        .isLessThan(flight.maxSpeed().metresPerSecond());
    assertThat(flight.ejection()).isPresent();
  }

  /**
   * Topics in Advanced Model Rocketry (MIT Press 1973) ch. 4, F7 case c: 0.300 kg, k = 0.0045 kg/m,
   * 30 degrees, in the ground under power at 6.84 s. Its thrust curve is not printed; a constant 7
   * N stands for it, so only the outcome is held.
   */
  @Test
  void low_thrust_at_a_large_angle_hits_the_ground_under_power() {
    ThrustCurve curve = ThrustCurve.of(new Impulse(63), new TimeSpan(9), Optional.empty());
    Motor f7 = new Motor(curve, new Mass(0.11), new Mass(0.06));
    Rod rod = new Rod(new Length(1), Angle.ofDegrees(30), new Bearing(90));
    Prediction flight = Flight.predict(Rockets.launch(0.300, 0.0045, f7, rod), 9.8);
    assertThat(flight.impactUnderPower()).isTrue();
    assertThat(flight.ballistic()).isTrue();
    assertThat(flight.flightTime().seconds()).isLessThan(9);
    assertThat(flight.bestDelay().seconds()).isNegative();
    assertThat(flight.burnoutAltitude().metres()).isZero();
    assertThat(flight.landing().east().metres()).isPositive();
  }

  @Test
  void apogee_and_best_delay_do_not_depend_on_the_delay_flown() {
    Prediction early = Flight.predict(delayed(0));
    Prediction late = Flight.predict(delayed(7));
    assertThat(early.apogee()).isEqualTo(late.apogee());
    assertThat(early.bestDelay()).isEqualTo(late.bestDelay());
    assertThat(early.delays()).isEqualTo(late.delays());
    assertThat(early.ejection().orElseThrow().time()).isEqualTo(early.burnoutTime());
    assertThat(late.ejection().orElseThrow().speed()).isEqualTo(late.delays().get(3).speed());
  }

  @Test
  void delay_table_tells_early_from_late() {
    Prediction flight = Flight.predict(delayed(5));
    assertThat(flight.delays())
        .extracting(d -> d.delay().seconds())
        .containsExactly(0., 3., 5., 7.);
    for (Prediction.DelayFit fit : flight.delays()) {
      double error = fit.delay().seconds() - flight.bestDelay().seconds();
      assertThat(fit.error().seconds()).isCloseTo(error, within(1e-12));
      assertThat(fit.firesInFlight()).isTrue();
      assertThat(fit.altitude().metres()).isLessThanOrEqualTo(flight.apogee().metres());
    }
    assertThat(flight.delays().get(0).speed().metresPerSecond()).isGreaterThan(100);
  }

  @Test
  void delay_longer_than_the_flight_does_not_fire() {
    Launch usual = Rockets.nominal();
    TimeSpan minute = new TimeSpan(60);
    Prediction flight =
        Flight.predict(
            with(
                usual.airframe(),
                usual.stages().get(0).motor(),
                usual.rod(),
                Optional.of(minute),
                List.of(minute, new TimeSpan(3))));
    assertThat(flight.ejection()).isEmpty();
    assertThat(flight.ballistic()).isTrue();
    assertThat(flight.descentRate()).isEqualTo(flight.landing().verticalSpeed());
    Prediction.DelayFit late = flight.delays().get(0);
    assertThat(late.firesInFlight()).isFalse();
    assertThat(late.altitude().metres()).isZero();
    assertThat(late.speed().metresPerSecond())
        .isGreaterThanOrEqualTo(flight.landing().verticalSpeed().metresPerSecond());
    assertThat(flight.delays().get(1).firesInFlight()).isTrue();
  }

  @Test
  void ejection_with_nothing_to_open_is_ballistic() {
    Launch usual = Rockets.nominal();
    Launch bare =
        new Launch(
            usual.airframe(),
            usual.stages(),
            usual.rod(),
            usual.air(),
            usual.wind(),
            usual.delay(),
            Optional.empty(),
            List.of());
    Prediction flight = Flight.predict(bare);
    assertThat(flight.ejection()).isPresent();
    assertThat(flight.ballistic()).isTrue();
    List<TrackPoint> track = Flight.track(bare, new TimeSpan(0.5));
    assertThat(track.get(track.size() - 1).time()).isEqualTo(flight.flightTime());
  }

  @Test
  void track_runs_from_the_pad_to_the_landing_of_the_prediction() {
    Launch launch = Rockets.nominal();
    Prediction flight = Flight.predict(launch);
    List<TrackPoint> track = Flight.track(launch, new TimeSpan(0.1));
    assertThat(track.get(0).height().metres()).isZero();
    TrackPoint last = track.get(track.size() - 1);
    assertThat(last.height().metres()).isCloseTo(0, within(1e-6));
    assertThat(last.time().seconds()).isCloseTo(flight.flightTime().seconds(), within(0.01));
    assertThat(last.east().metres()).isCloseTo(flight.landing().east().metres(), within(0.03));
    double highest = track.stream().mapToDouble(p -> p.height().metres()).max().orElseThrow();
    assertThat(highest).isCloseTo(flight.apogee().metres(), within(0.5));
    for (int i = 0; i < track.size() - 1; i++) {
      assertThat(track.get(i).time().seconds()).isCloseTo(i * 0.1, within(1e-9));
    }
    assertThatThrownBy(() -> Flight.track(launch, new TimeSpan(0)))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining("0.0000 s");
  }

  @Test
  void impossible_launches_are_refused_with_the_value_seen() {
    Length diameter = Length.ofMillimetres(25);
    Mass mass = Mass.ofGrams(50);
    assertThatThrownBy(() -> new Airframe(new Mass(0), diameter, 0.75))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("Rocket mass 0.00 g must be above zero; weigh it.");
    assertThatThrownBy(() -> new Airframe(mass, new Length(-1), 0.75))
        .hasMessageContaining("-1000.00 mm");
    assertThatThrownBy(() -> new Airframe(mass, diameter, -0.1)).hasMessageContaining("-0.10");
    assertThatThrownBy(() -> new Airframe(mass, diameter, 100)).hasMessageContaining("100.00");
    ThrustCurve curve = Rockets.c6().curve();
    assertThatThrownBy(() -> new Motor(curve, Mass.ofGrams(10), Mass.ofGrams(10)))
        .hasMessageContaining("Propellant of 10.00 g does not fit a motor of 10.00 g");
    assertThatThrownBy(() -> new Motor(curve, Mass.ofGrams(10), Mass.ofGrams(-1)))
        .hasMessageContaining("-1.00 g");
    Length one = new Length(1);
    Bearing north = new Bearing(0);
    assertThatThrownBy(() -> Rod.vertical(new Length(0))).hasMessageContaining("0.000 m");
    assertThatThrownBy(() -> new Rod(one, Angle.ofDegrees(95), north)).hasMessageContaining("95.0");
    assertThatThrownBy(() -> new Rod(one, Angle.ofDegrees(-1), north)).hasMessageContaining("-1.0");
    assertThatThrownBy(() -> delayed(-1)).hasMessageContaining("Delay -1.0 s");
    assertThatThrownBy(() -> delayed(61)).hasMessageContaining("Delay 61.0 s");
  }
}
