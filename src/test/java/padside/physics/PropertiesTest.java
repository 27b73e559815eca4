package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;

/** What must hold of every flight, tried on random ones. */
class PropertiesTest {
  private static final long SEED = 1976;
  private static final int FLIGHTS = 40;

  private static void each(Consumer<Trial> check) {
    Random random = new Random(SEED);
    for (int i = 0; i < FLIGHTS; i++) {
      Trial trial = Trial.random(random);
      try {
        check.accept(trial);
      } catch (AssertionError e) {
        throw new AssertionError("seed %d, flight %d: %s".formatted(SEED, i, trial), e);
      }
    }
  }

  private static Prediction fly(Trial trial, double windFromDeg, double tiltTowardDeg) {
    Speed wind = new Speed(trial.windMps());
    return Flight.predict(trial.launch(wind, new Bearing(windFromDeg), new Bearing(tiltTowardDeg)));
  }

  private static Launch onVerticalRod(Launch launch, WindProfile wind) {
    return with(launch, launch.airframe(), Rod.vertical(launch.rod().guidedLength()))
        .withWind(wind);
  }

  private static Launch with(Launch launch, Airframe airframe, Rod rod) {
    return new Launch(
        airframe,
        launch.stages(),
        rod,
        launch.air(),
        launch.wind(),
        launch.delay(),
        launch.recovery(),
        launch.delaysOnSale());
  }

  @Test
  void without_wind_and_tilt_it_lands_on_the_pad() {
    each(
        trial -> {
          Launch still = onVerticalRod(trial.launch(), WindProfile.calm());
          Prediction.Landing landing = Flight.predict(still).landing();
          assertThat(landing.distance().metres()).isLessThan(1e-9);
        });
  }

  @Test
  void landing_is_mirrored_when_wind_and_tilt_are() {
    each(
        trial -> {
          double from = trial.windFromDeg();
          double toward = trial.tiltTowardDeg();
          Prediction.Landing one = fly(trial, from, toward).landing();
          Prediction.Landing other = fly(trial, -from, -toward).landing();
          assertThat(other.east().metres()).isCloseTo(-one.east().metres(), within(1e-3));
          assertThat(other.north().metres()).isCloseTo(one.north().metres(), within(1e-3));
        });
  }

  @Test
  void landing_turns_with_wind_and_tilt_together() {
    each(
        trial -> {
          double from = trial.windFromDeg();
          double toward = trial.tiltTowardDeg();
          Prediction one = fly(trial, from, toward);
          Prediction turned = fly(trial, from + 137, toward + 137);
          double distance = one.landing().distance().metres();
          assertThat(turned.landing().distance().metres())
              .isCloseTo(distance, within(0.01 + 1e-4 * distance));
          double miss = turned.landing().bearing().degreesTo(one.landing().bearing()) + 137;
          assertThat(Math.toRadians(miss) * distance).isCloseTo(0, within(0.01 + 1e-4 * distance));
          assertThat(turned.apogee().metres())
              .isCloseTo(one.apogee().metres(), within(1e-4 * one.apogee().metres()));
        });
  }

  @Test
  void more_mass_never_raises_the_rod_exit_speed() {
    each(
        trial -> {
          Launch launch = trial.launch();
          double before = Double.POSITIVE_INFINITY;
          for (double grams = 0; grams < 100; grams += 5) {
            double kg = trial.rocketKg() + grams / 1000;
            Airframe airframe =
                new Airframe(new Mass(kg), new Length(trial.diameterM()), trial.cd());
            Launch heavier = with(launch, airframe, launch.rod());
            double exit = Flight.predict(heavier).rodExitSpeed().metresPerSecond();
            assertThat(exit).isLessThanOrEqualTo(before);
            before = exit;
          }
        });
  }

  @Test
  void rocket_from_a_vertical_rod_burns_out_upwind_and_stays_in_the_plane_of_the_wind() {
    each(
        trial -> {
          Launch launch = onVerticalRod(trial.launch(), trial.launch().wind());
          double burnoutS = launch.stages().get(0).motor().curve().burnTime().seconds();
          TrackPoint burnout = Flight.track(launch, new TimeSpan(burnoutS)).get(1);
          Prediction.Landing landing = Flight.predict(launch).landing();
          Conditions.Flow drift = launch.wind().flow();
          double east = drift.eastMps();
          double north = drift.northMps();
          double downwind = burnout.east().metres() * east + burnout.north().metres() * north;
          double across = landing.east().metres() * north - landing.north().metres() * east;
          assertThat(downwind).isLessThanOrEqualTo(0);
          assertThat(across).isCloseTo(0, within(1e-6));
        });
  }

  @Test
  void same_launch_gives_the_same_answer() {
    each(
        trial ->
            assertThat(Flight.predict(trial.launch())).isEqualTo(Flight.predict(trial.launch())));
  }

  @Test
  void tilt_lowers_the_apogee_in_a_calm() {
    Random random = new Random(SEED);
    Trial trial = Trial.random(random);
    Launch launch = trial.launch().withWind(WindProfile.calm());
    double before = Double.POSITIVE_INFINITY;
    for (int degrees = 0; degrees <= 30; degrees += 5) {
      Rod rod = new Rod(launch.rod().guidedLength(), Angle.ofDegrees(degrees), new Bearing(45));
      Launch leaning = with(launch, launch.airframe(), rod);
      double apogee = Flight.predict(leaning).apogee().metres();
      assertThat(apogee).isLessThan(before);
      before = apogee;
    }
  }
}
