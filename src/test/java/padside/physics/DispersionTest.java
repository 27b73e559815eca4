package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/** Flights repeated with scatter. */
class DispersionTest {
  private static final long SEED = 20;
  private static final Draws DRAWS = Draws.of(400, SEED);

  private static Dispersion fly(Launch launch, Scatter scatter) {
    return Dispersion.fly(launch, scatter, DRAWS, () -> false);
  }

  private static Launch in(double meanMps, double gustMps, double fromDeg) {
    Wind wind = new Wind(new Speed(meanMps), new Speed(gustMps), Optional.of(new Bearing(fromDeg)));
    Launch launch = Rockets.nominal().withWind(WindProfile.of(wind));
    return launch.withRod(Rod.vertical(launch.rod().guidedLength()));
  }

  private static double deviation(DoubleStream values) {
    double[] all = values.toArray();
    double mean = DoubleStream.of(all).average().orElseThrow();
    double square = DoubleStream.of(all).map(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(square / (all.length - 1));
  }

  private static DoubleStream apogees(Dispersion flown) {
    return IntStream.range(0, flown.flights()).mapToDouble(flown::apogeeM);
  }

  private static DoubleStream distances(Dispersion flown) {
    return IntStream.range(0, flown.flights())
        .mapToDouble(i -> Math.hypot(flown.landingEastM(i), flown.landingNorthM(i)));
  }

  @Test
  void without_scatter_every_flight_is_the_nominal_one() {
    Launch launch = Rockets.nominal();
    Prediction nominal = Flight.predict(launch);
    Dispersion flown = Dispersion.fly(launch, Scatter.none(), Draws.of(20, SEED), () -> false);
    for (int i = 0; i < flown.flights(); i++) {
      assertThat(flown.landingEastM(i)).isEqualTo(nominal.landing().east().metres());
      assertThat(flown.landingNorthM(i)).isEqualTo(nominal.landing().north().metres());
      assertThat(flown.apogeeM(i)).isEqualTo(nominal.apogee().metres());
      for (int row = 0; row < launch.delaysOnSale().size(); row++) {
        assertThat(flown.firingAirspeedMps(row, i))
            .isEqualTo(nominal.delays().get(row).airspeed().metresPerSecond());
      }
    }
    assertThat(flown.landing(0.9).longHalf().metres()).isCloseTo(0, within(1e-9));
  }

  @Test
  void same_seed_gives_the_same_answer() {
    Launch launch = in(3, 5, 200);
    Dispersion one = Dispersion.fly(launch, Rockets.scatter(), Draws.of(50, 3), () -> false);
    Dispersion again = Dispersion.fly(launch, Rockets.scatter(), Draws.of(50, 3), () -> false);
    Dispersion other = Dispersion.fly(launch, Rockets.scatter(), Draws.of(50, 4), () -> false);
    assertThat(one).usingRecursiveComparison().isEqualTo(again);
    assertThat(one).usingRecursiveComparison().isNotEqualTo(other);
  }

  @Test
  void an_abandoned_dispersion_ends_at_the_next_flight() {
    AtomicInteger asked = new AtomicInteger();
    assertThatThrownBy(
            () ->
                Dispersion.fly(
                    in(3, 5, 0), Rockets.scatter(), DRAWS, () -> asked.incrementAndGet() > 3))
        .isInstanceOf(CancellationException.class);
    assertThat(asked).hasValue(4);
  }

  /** Steps and events depend a little on the axes, so within the promised error. */
  @Test
  void wind_and_rod_turned_together_turn_every_flight() {
    Launch launch = Rockets.nominal();
    double turn = 77;
    double sin = Math.sin(Math.toRadians(turn));
    double cos = Math.cos(Math.toRadians(turn));
    Wind wind = new Wind(new Speed(2.7), new Speed(5), Optional.of(new Bearing(240)));
    Wind turnedWind = new Wind(wind.mean(), wind.gust(), Optional.of(new Bearing(240 + turn)));
    Rod rod = new Rod(new Length(0.9), Angle.ofDegrees(8), new Bearing(200));
    Rod turnedRod = new Rod(rod.guidedLength(), rod.tilt(), new Bearing(200 + turn));
    Dispersion one = fly(launch.withRod(rod).withWind(WindProfile.of(wind)), Rockets.scatter());
    Dispersion other =
        fly(launch.withRod(turnedRod).withWind(WindProfile.of(turnedWind)), Rockets.scatter());
    for (int i = 0; i < one.flights(); i++) {
      double east = one.landingEastM(i) * cos + one.landingNorthM(i) * sin;
      double north = one.landingNorthM(i) * cos - one.landingEastM(i) * sin;
      assertThat(other.landingEastM(i)).as("flight %d", i).isCloseTo(east, within(0.05));
      assertThat(other.landingNorthM(i)).as("flight %d", i).isCloseTo(north, within(0.05));
      assertThat(other.apogeeM(i)).isCloseTo(one.apogeeM(i), within(0.01));
    }
    assertThat(one.landing(0.9).along().degreesTo(other.landing(0.9).along()) % 180)
        .isCloseTo(turn, within(0.1));
  }

  /** Burnout speed is proportional to impulse where gravity, drag and propellant count little. */
  @Test
  void motors_of_a_cluster_average_their_scatter() {
    Scatter impulse = new Scatter(0.02, 0, 0, 0, new TimeSpan(0), 0, new Angle(0), 2, new Angle(0));
    ThrustCurve curve = ThrustCurve.of(new Impulse(8), new TimeSpan(0.1), Optional.empty());
    Motor motor = new Motor(curve, Mass.ofGrams(2), new Mass(0));
    double[] spread = new double[2];
    for (int i = 0; i < 2; i++) {
      int count = i == 0 ? 1 : 4;
      Launch launch = Rockets.launch(0.1 * count, 0, motor, Rod.vertical(new Length(0.001)));
      double airframeKg = 0.1 * count - 0.002 * count;
      Launch cluster =
          new Launch(
              new Airframe(new Mass(airframeKg), launch.airframe().bodyDiameter(), 0),
              List.of(Stage.cluster(motor, count)),
              launch.rod(),
              launch.air(),
              launch.wind(),
              launch.delay(),
              launch.recovery(),
              launch.delaysOnSale());
      spread[i] = deviation(apogees(fly(cluster, impulse)).map(Math::sqrt));
    }
    // v = I/m - g t with 8 N·s in 0.1 kg and 0.1 s; height v²/2g above burnout.
    double oneSqrt = 0.02 * 80 / Math.sqrt(2 * Flight.STANDARD_GRAVITY_MPS2);
    assertThat(spread[0]).isCloseTo(oneSqrt, within(0.02 * oneSqrt));
    assertThat(spread[1]).isCloseTo(oneSqrt / 2, within(0.02 * oneSqrt));
  }

  /**
   * Without drag the airspeed is g times the seconds from apogee, which a delay misses by a normal
   * error; shares from the reference library's distribution.
   */
  @Test
  void delays_fire_within_a_speed_as_often_as_their_scatter_says() {
    TimeSpan least = new TimeSpan(0.75);
    Scatter late = new Scatter(0, 0, 0, 0.1, least, 0, new Angle(0), 2, new Angle(0));
    Launch still = Rockets.launch(0.08, 0, Rockets.c6(), Rod.vertical(new Length(0.9)));
    double best = Flight.predict(still).bestDelay().seconds();
    Launch launch = onSale(still, 0, best - 1, best, best + 2, 60);
    Dispersion flown = fly(launch, late);
    for (int row = 1; row <= 3; row++) {
      double delay = launch.delaysOnSale().get(row).seconds();
      NormalDistribution error = new NormalDistribution(delay - best, 0.1 * delay);
      double seconds = 12 / Flight.STANDARD_GRAVITY_MPS2;
      assertThat(flown.shareFiringWithin(row, new Speed(12)))
          .as("delay %s", delay)
          .isCloseTo(error.probability(-seconds, seconds), within(0.01));
    }
    double burnoutMps = best * Flight.STANDARD_GRAVITY_MPS2;
    for (int i = 0; i < flown.flights(); i++) {
      assertThat(flown.firingAirspeedMps(0, i)).isBetween(0.5 * burnoutMps, burnoutMps + 0.01);
      assertThat(flown.firingAirspeedMps(4, i)).isInfinite();
    }
    assertThat(flown.shareFiringWithin(4, new Speed(1000))).isZero();
  }

  private static Launch onSale(Launch launch, double... seconds) {
    return new Launch(
        launch.airframe(),
        launch.stages(),
        launch.rod(),
        launch.air(),
        launch.wind(),
        launch.delay(),
        launch.recovery(),
        DoubleStream.of(seconds).mapToObj(TimeSpan::new).toList());
  }

  @Test
  void direction_alone_turns_the_landing_and_keeps_its_distance() {
    Scatter turning =
        new Scatter(
            0,
            0,
            0,
            0,
            new TimeSpan(0),
            0,
            Angle.ofDegrees(10),
            Double.POSITIVE_INFINITY,
            new Angle(0));
    Dispersion flown = fly(in(4, 6, 0), turning);
    double distance = Flight.predict(in(4, 6, 0)).landing().distance().metres();
    assertThat(distances(flown)).allSatisfy(d -> assertThat(d).isCloseTo(distance, within(0.05)));
    double degrees =
        deviation(
            IntStream.range(0, flown.flights())
                .mapToDouble(
                    i ->
                        Math.toDegrees(
                            Math.atan2(flown.landingEastM(i), -flown.landingNorthM(i)))));
    assertThat(degrees).isCloseTo(10, within(0.1));
  }

  /** A flight that drifts under its parachute lands the further the more wind, in proportion. */
  @Test
  void wind_alone_moves_the_landing_along_the_wind() {
    Scatter windy =
        new Scatter(
            0, 0, 0, 0, new TimeSpan(0), 0.1, new Angle(0), Double.POSITIVE_INFINITY, new Angle(0));
    Dispersion flown = fly(in(4, 4, 90), windy);
    double stronger = Flight.predict(in(4.4, 4.4, 90)).landing().distance().metres();
    double weaker = Flight.predict(in(3.6, 3.6, 90)).landing().distance().metres();
    assertThat(deviation(distances(flown)))
        .isCloseTo((stronger - weaker) / 2, within(0.02 * (stronger - weaker)));
    assertThat(fly(in(0, 0, 90), windy).landing(0.9).longHalf().metres())
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void gusts_are_felt_until_ejection_and_not_in_the_descent() {
    Scatter gusty = new Scatter(0, 0, 0, 0, new TimeSpan(0), 0, new Angle(0), 2, new Angle(0));
    ScatteredFlights flights = new ScatteredFlights(in(3, 5, 180), gusty, DRAWS);
    for (int i = 0; i < DRAWS.flights(); i++) {
      Conditions conditions = flights.conditions(i, 3, 5);
      double climb = Math.max(0, 3 + DRAWS.normal(i, Draws.GUST));
      assertThat(conditions.climb().northMps()).isCloseTo(climb, within(1e-12));
      assertThat(conditions.drift().northMps()).isEqualTo(3);
    }
  }

  /**
   * Without drag and wind a small lean puts the apogee aside in proportion: a normal lean in two
   * axes spreads the places normally and alike in every direction.
   */
  @Test
  void rod_alone_spreads_apogees_evenly_round_the_pad() {
    Scatter leaning =
        new Scatter(0, 0, 0, 0, new TimeSpan(0), 0, new Angle(0), 2, Angle.ofDegrees(1));
    Launch still = Rockets.launch(0.06, 0, Rockets.c6(), Rod.vertical(new Length(0.9)));
    Ellipse apogee = fly(still, leaning).apogee(0.5);
    Rod oneDegree = new Rod(new Length(0.9), Angle.ofDegrees(1), new Bearing(0));
    Dispersion leaned =
        Dispersion.fly(still.withRod(oneDegree), Scatter.none(), Draws.of(1, 1), () -> false);
    double deviation = leaned.apogeeNorthM(0);
    assertThat(deviation).isPositive();
    assertThat(apogee.longHalf().metres() / deviation).isCloseTo(1.177410, within(0.02));
    assertThat(apogee.shortHalf().metres() / deviation).isCloseTo(1.177410, within(0.02));
  }

  @Test
  void rod_near_the_ground_is_never_drawn_into_it() {
    Scatter leaning =
        new Scatter(0, 0, 0, 0, new TimeSpan(0), 0, new Angle(0), 2, Angle.ofDegrees(20));
    Rod low = new Rod(new Length(0.9), Angle.ofDegrees(85), new Bearing(300));
    ScatteredFlights flights = new ScatteredFlights(in(3, 5, 40).withRod(low), leaning, DRAWS);
    for (int i = 0; i < DRAWS.flights(); i++) {
      Conditions.Lean rod = flights.conditions(i, 3, 5).rod();
      assertThat(rod.up()).isGreaterThanOrEqualTo(Math.sin(Math.toRadians(1)) - 1e-15);
      assertThat(rod.east() * rod.east() + rod.north() * rod.north() + rod.up() * rod.up())
          .isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void rocket_too_heavy_for_a_weak_motor_stays_on_the_pad() {
    Scatter weak = new Scatter(0.5, 0, 0, 0, new TimeSpan(0), 0, new Angle(0), 2, new Angle(0));
    Launch heavy = Rockets.launch(1.1, 1e-4, Rockets.c6(), Rod.vertical(new Length(0.02)));
    Dispersion flown = fly(onSale(heavy, 0), weak);
    long held = apogees(flown).filter(apogee -> apogee == 0).count();
    assertThat(held).isBetween(100L, 300L);
    for (int i = 0; i < flown.flights(); i++) {
      if (flown.apogeeM(i) == 0) {
        assertThat(flown.firingAirspeedMps(0, i)).isInfinite();
        assertThat(flown.landingEastM(i)).isZero();
      }
    }
  }

  @Test
  void nine_of_ten_landings_lie_in_their_ellipse() {
    Dispersion flown = fly(in(3, 4.5, 240), Rockets.scatter());
    Ellipse ellipse = flown.landing(0.9);
    long inside =
        IntStream.range(0, flown.flights())
            .filter(i -> ellipse.holds(flown.landingEastM(i), flown.landingNorthM(i)))
            .count();
    assertThat(inside / (double) flown.flights()).isCloseTo(0.9, within(0.02));
    Ellipse half = flown.landing(0.5);
    assertThat(ellipse.longHalf().metres() / half.longHalf().metres())
        .isCloseTo(2.145966 / 1.177410, within(1e-5));
  }

  @Test
  void impossible_scatter_is_refused_with_the_value_seen() {
    TimeSpan none = new TimeSpan(0);
    Angle still = new Angle(0);
    assertThatThrownBy(() -> new Scatter(-0.1, 0, 0, 0, none, 0, still, 2, still))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("The scatter of impulse as a share is -0.100, outside 0 to 0.5.");
    assertThatThrownBy(() -> new Scatter(0, 0.6, 0, 0, none, 0, still, 2, still))
        .hasMessageContaining("drag as a share is 0.600");
    assertThatThrownBy(() -> new Scatter(0, 0, 0, 0, new TimeSpan(-1), 0, still, 2, still))
        .hasMessageContaining("delay in seconds is -1.000");
    assertThatThrownBy(() -> new Scatter(0, 0, 0, 0, none, 0, still, 0, still))
        .hasMessageContaining("gust 0.0 standard deviations");
  }
}
