package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.TimeSpan;

class ThrustCurveTest {
  /**
   * Sustained thrust of Topics in Advanced Model Rocketry (MIT Press 1973) ch. 4 eqs. 73-75: the
   * last row is the book's own (3.5 N printed), the others computed beforehand from the formula
   * with motor figures from memory, the impulse then rounded.
   */
  @ParameterizedTest
  @CsvSource({
    "A8, 2.320, 9.73, 0.226, 0.289, 1.9348, 0.730",
    "A10T, 1.998, 12.64, 0.166, 0.224, 0.8889, 0.850",
    "B4, 4.290, 12.75, 0.136, 0.247, 3.2384, 1.030",
    "B6, 4.328, 12.14, 0.171, 0.298, 4.0276, 0.860",
    "C6, 8.817, 14.09, 0.192, 0.255, 4.2901, 1.860",
    "D12, 16.839, 29.73, 0.282, 0.374, 8.5322, 1.650",
    "E9, 28.070, 18.44, 0.273, 0.461, 8.7479, 3.090",
    "E12, 27.136, 32.97, 0.287, 0.384, 9.8860, 2.440",
    "F15, 49.512, 25.26, 0.419, 0.818, 13.8375, 3.450",
    "B4 (1973), 5.000, 13.0, 0.14, 0.22, 3.5, 1.20"
  })
  void four_numbers_give_the_sustained_thrust(
      String motor, double impulse, double fm, double tm, double ts, double fs, double tb) {
    ThrustCurve curve = Rockets.curve(impulse, tb, fm, tm, ts);
    boolean printed = motor.contains("1973");
    assertThat(newtons(curve, tb)).as(motor).isCloseTo(fs, within(printed ? 0.05 : 5e-4));
    assertThat(curve.impulse().newtonSeconds()).isCloseTo(impulse, within(1e-12));
    assertThat(curve.peakThrust()).isEqualTo(new Force(fm));
    assertThat(newtons(curve, tm / 2)).isCloseTo(fm / 2, within(1e-12));
    assertThat(curve.quality()).isEqualTo(ThrustCurve.Quality.FOUR_NUMBER);
  }

  @Test
  void without_the_peak_thrust_is_constant_and_marked_approximate() {
    ThrustCurve curve = ThrustCurve.of(new Impulse(9), new TimeSpan(1.5), Optional.empty());
    assertThat(curve.quality()).isEqualTo(ThrustCurve.Quality.APPROXIMATE);
    assertThat(newtons(curve, 0)).isEqualTo(6);
    assertThat(newtons(curve, 1.5)).isEqualTo(6);
    assertThat(newtons(curve, 1.6)).isZero();
    assertThat(curve.averageThrust()).isEqualTo(new Force(6));
    assertThat(curve.burnTime()).isEqualTo(new TimeSpan(1.5));
  }

  @Test
  void a_peak_is_whole_or_nothing() {
    Optional<Force> thrust = Optional.of(new Force(10));
    Optional<TimeSpan> time = Optional.of(new TimeSpan(0.2));
    assertThat(ThrustCurve.Peak.of(thrust, time, time)).isPresent();
    assertThat(ThrustCurve.Peak.of(thrust, time, Optional.empty())).isEmpty();
    assertThat(ThrustCurve.Peak.of(thrust, Optional.empty(), time)).isEmpty();
    assertThat(ThrustCurve.Peak.of(Optional.empty(), time, time)).isEmpty();
  }

  @Test
  void entered_points_start_at_ignition_and_end_with_the_thrust() {
    ThrustCurve curve =
        ThrustCurve.ofPoints(List.of(point(0.1, 8), point(0.5, 4), point(1, 0), point(2, 0)));
    assertThat(curve.points()).first().isEqualTo(point(0, 0));
    assertThat(curve.burnTime()).isEqualTo(new TimeSpan(1));
    assertThat(curve.quality()).isEqualTo(ThrustCurve.Quality.ENTERED);
    // Trapezia by hand: 0.1*8/2 + 0.4*(8+4)/2 + 0.5*4/2.
    assertThat(curve.impulse().newtonSeconds()).isCloseTo(3.8, within(1e-12));
    assertThat(curve.impulseUntil(new TimeSpan(0.3)).newtonSeconds())
        .isCloseTo(0.4 + 0.2 * (8 + 6) / 2, within(1e-12));
    assertThat(curve.impulseUntil(new TimeSpan(9)).newtonSeconds()).isCloseTo(3.8, within(1e-12));
  }

  @Test
  void points_from_ignition_on_stay_as_entered() {
    List<ThrustCurve.Point> points = List.of(point(0, 5), point(1, 5));
    assertThat(ThrustCurve.ofPoints(points).points()).isEqualTo(points);
  }

  @Test
  void impossible_points_are_refused() {
    refuse("at least two points; 0 given");
    refuse("0.5000 s follows 0.5000 s", point(0.5, 1), point(0.5, 2));
    refuse("Thrust -1.000 N at 1.0000 s is negative", point(0, 1), point(1, -1));
    refuse("zero throughout", point(0, 0), point(1, 0));
    assertThatThrownBy(
            () -> new ThrustCurve(List.of(point(1, 1), point(2, 1)), ThrustCurve.Quality.ENTERED))
        .hasMessageContaining("starts at 0 s");
  }

  @Test
  void impossible_catalogue_figures_are_refused() {
    assertThatThrownBy(() -> ThrustCurve.of(new Impulse(0), new TimeSpan(1), Optional.empty()))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("Total impulse 0.000 N·s must be above zero.");
    assertThatThrownBy(() -> ThrustCurve.of(new Impulse(5), new TimeSpan(0), Optional.empty()))
        .hasMessage("Burn time 0.000 s must be above zero.");
    assertThatThrownBy(() -> Rockets.curve(5, 1, 40, 0.2, 0.4))
        .hasMessage(
            "A peak of 40.00 N lasting to 0.400 s alone gives 8.000 N·s, more than the total"
                + " impulse of 5.000 N·s; check peak and impulse.");
    assertThatThrownBy(() -> Rockets.curve(50, 1, 40, 0.2, 0.4))
        .hasMessageContaining("needs more than the peak of 40.00 N");
    assertThatThrownBy(() -> Rockets.curve(5, 1, 10, 0, 0.4)).hasMessageContaining("0.000 s");
    assertThatThrownBy(() -> Rockets.curve(5, 1, 10, 0.4, 0.2))
        .hasMessageContaining("must follow each other");
    assertThatThrownBy(() -> Rockets.curve(5, 1, 10, 0.2, 1)).hasMessageContaining("1.000 s");
  }

  private static void refuse(String part, ThrustCurve.Point... points) {
    assertThatThrownBy(() -> ThrustCurve.ofPoints(List.of(points)))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining(part);
  }

  private static ThrustCurve.Point point(double seconds, double newtons) {
    return ThrustCurve.Point.of(seconds, newtons);
  }

  private static double newtons(ThrustCurve curve, double seconds) {
    return curve.thrustAt(new TimeSpan(seconds)).newtons();
  }
}
