package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.units.Bearing;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

class DescentTest {
  private static final double EMPTY_CASE_KG = 0.010;

  /**
   * A rocket of this mass once its propellant is gone, thrown up at some 40 m/s so that it stays
   * below 100 m, where the wind is the same at all heights.
   */
  private static Launch launch(double descentKg, double density, CanopyDrag device, double wind) {
    ThrustCurve curve =
        ThrustCurve.of(new Impulse(40 * descentKg), new TimeSpan(0.2), Optional.empty());
    Optional<Bearing> west = Optional.of(new Bearing(270));
    return new Launch(
        new Airframe(new Mass(descentKg - EMPTY_CASE_KG), Length.ofMillimetres(24.8), 0.75),
        List.of(Stage.of(new Motor(curve, new Mass(EMPTY_CASE_KG + 0.001), new Mass(0.001)))),
        Rod.vertical(new Length(1)),
        Air.uniform(new Density(density)),
        new WindProfile(new Wind(new Speed(wind), new Speed(wind), west), new Length(100)),
        Optional.of(new TimeSpan(3)),
        Optional.of(device),
        List.of());
  }

  /** Worked example, dthrocket.blogspot.com (February 2010): 8.54 m/s printed, g = 9.8. */
  @Test
  void descent_rate_is_that_of_the_worked_example() {
    CanopyDrag canopy = new CanopyDrag(0.75, 0.164, CanopyDrag.ReferenceArea.FLAT_CANOPY);
    Launch launch = launch(0.550, 1.2, canopy, 0);
    FlightPath path = FlightPath.planned(launch, 9.8);
    path.fly();
    assertThat(path.terminalMps()).isCloseTo(8.546, within(0.001));
  }

  /** Computed beforehand from v = sqrt(2 m g/(rho Cd A)), Cd 0.75 on the flat area. */
  @ParameterizedTest
  @CsvSource({"0.05, 12, 3.8247", "0.10, 12, 5.4090", "0.10, 18, 3.6060"})
  void descent_rate_follows_mass_and_canopy(double kg, double inches, double rate) {
    CanopyDrag canopy = CanopyDrag.parachute(Length.ofInches(inches), 0.75);
    Prediction flight = Flight.predict(launch(kg, 1.225, canopy, 0));
    assertThat(flight.ballistic()).isFalse();
    assertThat(flight.descentRate().metresPerSecond()).isCloseTo(rate, within(1e-4));
    assertThat(flight.landing().verticalSpeed().metresPerSecond()).isCloseTo(rate, within(1e-3));
  }

  /**
   * Closed forms under a canopy in a wind that is the same at all heights: it drifts with the wind
   * and falls at the terminal speed, once the first second has passed.
   */
  @Test
  void open_canopy_drifts_with_the_wind() {
    CanopyDrag canopy = CanopyDrag.parachute(Length.ofInches(12), 0.75);
    Launch launch = launch(0.05, 1.225, canopy, 4);
    List<TrackPoint> track = Flight.track(launch, new TimeSpan(1));
    TrackPoint high = track.get(8);
    TrackPoint landing = track.get(track.size() - 1);
    double seconds = landing.time().seconds() - high.time().seconds();
    Prediction flight = Flight.predict(launch);
    assertThat(landing.east().metres() - high.east().metres()).isCloseTo(4 * seconds, within(0.02));
    assertThat(high.height().metres() / seconds)
        .isCloseTo(flight.descentRate().metresPerSecond(), within(1e-3));
    assertThat(flight.landing().east().metres()).isCloseTo(landing.east().metres(), within(0.02));
  }

  @Test
  void streamer_counts_one_side_of_its_area() {
    CanopyDrag streamer = CanopyDrag.streamer(new Length(0.1), new Length(1), 0.15);
    assertThat(streamer.areaM2()).isEqualTo(0.1);
    assertThat(streamer.reference()).isEqualTo(CanopyDrag.ReferenceArea.STREAMER_ONE_SIDE);
    Prediction flight = Flight.predict(launch(0.05, 1.225, streamer, 0));
    double rate = Math.sqrt(2 * 0.05 * 9.80665 / (1.225 * 0.15 * 0.1));
    assertThat(flight.descentRate().metresPerSecond()).isCloseTo(rate, within(1e-6));
  }

  @Test
  void impossible_devices_are_refused() {
    Length zero = new Length(0);
    Length one = new Length(1);
    assertThatThrownBy(() -> CanopyDrag.parachute(zero, 0.75))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("Parachute diameter 0.000 m must be above zero.");
    assertThatThrownBy(() -> CanopyDrag.streamer(one, zero, 0.15))
        .hasMessageContaining("Streamer length");
    assertThatThrownBy(() -> CanopyDrag.parachute(one, 0)).hasMessageContaining("0.000");
    assertThatThrownBy(() -> CanopyDrag.parachute(one, 750)).hasMessageContaining("750.000");
    CanopyDrag.ReferenceArea flat = CanopyDrag.ReferenceArea.FLAT_CANOPY;
    assertThatThrownBy(() -> new CanopyDrag(0.75, 0, flat)).hasMessageContaining("no area");
    assertThatThrownBy(() -> new CanopyDrag(0.75, Double.POSITIVE_INFINITY, flat))
        .hasMessageContaining("no area");
  }
}
