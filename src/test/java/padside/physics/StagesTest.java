package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.TimeSpan;

/** Rockets on several motors: side by side, and one on top of the other. */
class StagesTest {
  private static final Rod SHORT_ROD = Rod.vertical(new Length(1e-3));

  /** The two-stage rocket of the closed forms: 30 g on a booster of 12 g. */
  private static final Mass AIRFRAME = Mass.ofGrams(42);

  private static final Mass BOOSTER = Mass.ofGrams(12);

  private static Motor motor(double impulse, double burnS, double totalG, double propellantG) {
    ThrustCurve curve = ThrustCurve.of(new Impulse(impulse), new TimeSpan(burnS), Optional.empty());
    return new Motor(curve, Mass.ofGrams(totalG), Mass.ofGrams(propellantG));
  }

  private static Launch stacked(Launch like, Motor lower, Motor upper) {
    return with(like, AIRFRAME, List.of(new Stage(lower, 1, BOOSTER), Stage.of(upper)));
  }

  private static Launch with(Launch like, Mass mass, List<Stage> stages) {
    Airframe airframe = like.airframe();
    return new Launch(
        new Airframe(mass, airframe.bodyDiameter(), airframe.dragCoefficient()),
        stages,
        like.rod(),
        like.air(),
        like.wind(),
        like.delay(),
        like.recovery(),
        like.delaysOnSale());
  }

  private static Launch drag(double kKgpm) {
    return Rockets.launch(1, kKgpm, motor(1, 1, 1, 0), SHORT_ROD);
  }

  /**
   * Without drag, stage after stage from lift-off mass m0 to burnout mass mb = m0 - mp: v rises by
   * c ln(m0/mb) - g t with c = I/mp (Tsiolkovsky), height by v0 t + c t (1 - mb/mp ln(m0/mb)) - g
   * t²/2; then 12 g of booster and 12.4 g of empty case fall off. Worked by hand beforehand.
   */
  @Test
  void two_burns_in_a_vacuum_are_two_rocket_equations_in_series() {
    Launch launch = stacked(drag(0), motor(4.3, 0.8, 18, 5.6), motor(2.3, 0.7, 16.2, 3.3));
    Prediction flight = Flight.predict(launch);
    assertThat(flight.liftoffMass().inGrams()).isCloseTo(76.2, within(1e-9));
    List<TrackPoint> track = Flight.track(launch, new TimeSpan(0.8));
    assertThat(track.get(1).speed().metresPerSecond()).isCloseTo(50.766228, within(2e-4));
    assertThat(track.get(1).height().metres()).isCloseTo(20.008260, within(2e-4));
    assertThat(flight.burnoutTime().seconds()).isCloseTo(1.5, within(1e-12));
    assertThat(flight.maxSpeed().metresPerSecond()).isCloseTo(95.552584, within(2e-4));
    assertThat(flight.burnoutAltitude().metres()).isCloseTo(70.996579, within(3e-4));
    assertThat(flight.apogee().metres()).isCloseTo(536.512136, within(2e-3));
    assertThat(flight.bestDelay().seconds()).isCloseTo(9.743652, within(2e-5));
  }

  /**
   * With drag k v² and constant thrust and mass a stage that starts at v0 ends at v = q tanh(u),
   * higher by (m/k) ln(cosh u/cosh u0), where q² = (F - mg)/k, tanh u0 = v0/q and u - u0 = (t/m)
   * sqrt(k(F - mg)): Fehskens and Malewicki, Topics in Advanced Model Rocketry (MIT Press 1973) ch.
   * 4 eqs. 20, 21 carried on from a start in flight; coast by eqs. 64, 67. Worked beforehand.
   */
  @Test
  void two_burns_with_drag_are_the_closed_form_stage_by_stage() {
    Launch still = drag(2.219016847e-4);
    Launch launch = stacked(still, motor(4.3, 0.8, 18, 0), motor(2.3, 0.7, 16.2, 0));
    Prediction flight = Flight.predict(launch);
    TrackPoint separation = Flight.track(launch, new TimeSpan(0.8)).get(1);
    assertThat(separation.speed().metresPerSecond()).isCloseTo(46.831405, within(5e-4));
    assertThat(separation.height().metres()).isCloseTo(19.078134, within(5e-4));
    assertThat(flight.maxSpeed().metresPerSecond()).isCloseTo(76.327027, within(1e-3));
    assertThat(flight.burnoutAltitude().metres()).isCloseTo(62.903418, within(1e-3));
    assertThat(flight.bestDelay().seconds()).isCloseTo(4.774820, within(5e-4));
    assertThat(flight.apogee().metres()).isCloseTo(203.328513, within(3e-3));
  }

  /**
   * Differences over 20 ms; at the corners of the thrust the speed bends by up to 2 m/s in them.
   */
  @Test
  void track_of_a_stack_tells_the_speed_at_which_its_places_follow_each_other() {
    Random random = new Random(8);
    for (int i = 0; i < 20; i++) {
      Launch launch = Trial.stacked(random).launch();
      Prediction flight = Flight.predict(launch);
      List<TrackPoint> track = Flight.track(launch, new TimeSpan(0.01));
      double climbS = flight.timeToApogee().seconds();
      double openS = flight.ejection().map(at -> at.time().seconds()).orElse(climbS);
      double fastest = 0;
      for (int k = 1; k < Math.min(climbS, openS) / 0.01 - 1; k++) {
        TrackPoint now = track.get(k);
        fastest = Math.max(fastest, now.speed().metresPerSecond());
        double between = distanceM(track.get(k - 1), track.get(k + 1)) / 0.02;
        assertThat(now.speed().metresPerSecond()).as("%d", k).isCloseTo(between, within(2.0));
      }
      double top = flight.maxSpeed().metresPerSecond();
      assertThat(fastest).isBetween(0.985 * top, 1.0001 * top);
    }
  }

  private static double distanceM(TrackPoint from, TrackPoint to) {
    double aside =
        Math.hypot(
            to.east().metres() - from.east().metres(), to.north().metres() - from.north().metres());
    return Math.hypot(aside, to.height().metres() - from.height().metres());
  }

  /** All forces and all masses are n times as large, so every acceleration is the same. */
  @Test
  void cluster_under_a_rocket_as_many_times_as_large_flies_like_one_motor() {
    Launch one = Rockets.nominal();
    for (int n = 2; n <= 5; n++) {
      Airframe airframe = one.airframe();
      CanopyDrag canopy = one.recovery().orElseThrow();
      Launch cluster =
          new Launch(
              new Airframe(
                  new Mass(n * airframe.massWithoutMotor().kilograms()),
                  new Length(Math.sqrt(n) * airframe.bodyDiameter().metres()),
                  airframe.dragCoefficient()),
              List.of(Stage.cluster(Rockets.c6(), n)),
              one.rod(),
              one.air(),
              one.wind(),
              one.delay(),
              Optional.of(
                  new CanopyDrag(
                      canopy.dragCoefficient(), n * canopy.areaM2(), canopy.reference())),
              one.delaysOnSale());
      assertThat(Flight.predict(cluster))
          .as("%d motors", n)
          .usingRecursiveComparison()
          .withEqualsForType((a, b) -> Math.abs(a - b) < 1e-7 * (1 + Math.abs(b)), Double.class)
          .ignoringFields("liftoffMass", "totalImpulse")
          .isEqualTo(Flight.predict(one));
    }
  }

  /** A stage that drops nothing and keeps no case is only the rest of the same burn. */
  @Test
  void burn_cut_in_two_stages_flies_like_the_whole() {
    Launch one = Rockets.nominal();
    Mass mass = one.airframe().massWithoutMotor();
    Motor whole = motor(8, 2, 20, 8);
    Motor half = motor(4, 1, 4 + 1e-9, 4);
    Motor rest = motor(4, 1, 16, 4);
    Prediction once = Flight.predict(with(one, mass, List.of(Stage.of(whole))));
    Prediction twice = Flight.predict(with(one, mass, List.of(Stage.of(half), Stage.of(rest))));
    assertThat(twice.apogee().metres()).isCloseTo(once.apogee().metres(), within(0.01));
    assertThat(twice.landing().distance().metres())
        .isCloseTo(once.landing().distance().metres(), within(0.05));
    assertThat(twice.bestDelay().seconds()).isCloseTo(once.bestDelay().seconds(), within(1e-4));
  }

  @Test
  void launch_adds_up_its_motors() {
    Launch nominal = Rockets.nominal();
    Motor known = Rockets.c6();
    Motor rough = motor(4.3, 0.8, 18, 5.6);
    Stage booster = new Stage(rough, 3, Mass.ofGrams(5));
    Launch launch = with(nominal, Mass.ofGrams(36), List.of(booster, Stage.of(known)));
    assertThat(launch.totalImpulse().newtonSeconds()).isCloseTo(3 * 4.3 + 8.82, within(1e-9));
    assertThat(launch.propellantMass().inGrams()).isCloseTo(3 * 5.6 + 10.8, within(1e-9));
    assertThat(launch.liftoffMass().inGrams()).isCloseTo(36 + 3 * 18 + 24, within(1e-9));
    assertThat(launch.curveQuality()).isEqualTo(ThrustCurve.Quality.APPROXIMATE);
    assertThat(nominal.curveQuality()).isEqualTo(ThrustCurve.Quality.FOUR_NUMBER);
  }

  @Test
  void thrust_to_weight_is_that_of_the_first_stage() {
    Motor weak = motor(4.3, 0.8, 18, 5.6);
    Stage booster = new Stage(weak, 2, Mass.ofGrams(5));
    Launch launch =
        with(Rockets.nominal(), Mass.ofGrams(36), List.of(booster, Stage.of(Rockets.c6())));
    double weight = 0.096 * Flight.STANDARD_GRAVITY_MPS2;
    assertThat(Flight.predict(launch).thrustToWeight())
        .isCloseTo(2 * 4.3 / 0.8 / weight, within(1e-9));
  }

  @Test
  void delays_count_from_the_burnout_of_the_last_stage() {
    Motor lower = motor(4.3, 0.8, 18, 5.6);
    Launch launch = stacked(Rockets.nominal(), lower, Rockets.c6());
    Prediction flight = Flight.predict(launch);
    assertThat(flight.burnoutTime().seconds()).isCloseTo(0.8 + 1.86, within(1e-12));
    assertThat(flight.ejection().orElseThrow().time().seconds()).isCloseTo(7.66, within(1e-12));
    double best = flight.timeToApogee().seconds() - 2.66;
    assertThat(flight.bestDelay().seconds()).isCloseTo(best, within(1e-9));
    assertThat(flight.delays().get(2).error().seconds()).isCloseTo(5 - best, within(1e-9));
  }

  @Test
  void impossible_stages_are_refused_with_the_value_seen() {
    Motor motor = Rockets.c6();
    Launch launch = Rockets.nominal();
    Mass mass = Mass.ofGrams(36);
    Mass none = new Mass(0);
    assertThatThrownBy(() -> new Stage(motor, 0, none))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("A stage needs at least one motor; 0 given.");
    assertThatThrownBy(() -> new Stage(motor, 1, Mass.ofGrams(-2)))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining("-2.00 g");
    assertThatThrownBy(() -> with(launch, mass, List.of()))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("The rocket has no motor; choose one.");
    assertThatThrownBy(() -> with(launch, mass, List.of(new Stage(motor, 1, BOOSTER))))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining("last stage");
    List<Stage> heavy = List.of(new Stage(motor, 1, mass), Stage.of(motor));
    assertThatThrownBy(() -> with(launch, mass, heavy))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining("36.00 g, but the whole rocket 36.00 g");
    Stage stage = Stage.of(motor);
    assertThatThrownBy(() -> with(launch, mass, List.of(stage, stage, stage, stage, stage)))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining("5 stages");
  }
}
