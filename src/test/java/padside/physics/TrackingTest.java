package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

class TrackingTest {
  private static final Length ZERO = new Length(0);

  /** A baseline due east from the pad; azimuths are measured inward from it, as contests do. */
  private static Tracking.Reduction onBaseline(
      double baselineM, double a1, double e1, double a2, double e2) {
    return Tracking.reduce(
        new Tracking.Sight(ZERO, ZERO, new Bearing(90 - a1), Angle.ofDegrees(e1)),
        new Tracking.Sight(
            new Length(baselineM), ZERO, new Bearing(270 + a2), Angle.ofDegrees(e2)));
  }

  // Computed with the two reductions of the association's contest rules, chapter 14 (formulas from
  // memory, rows computed elsewhere). The first row's truth is the point (140, 90, 210).
  @ParameterizedTest
  @CsvSource({
    "32.7352262721, 51.6018063219, 29.3577535428, 48.8410358534, 210, 210, 210, 0, 210, 0",
    "60, 45, 60, 45, 300, 300, 300, 0, 300, 0",
    "33, 52, 29, 49, 210.8374, 212.8786, 211.8580, 0.4817, 211.9208, 0.7962",
    "32.7, 58.0, 29.4, 44.0, 266.6805, 177.0958, 221.8882, 20.1869, 209.1377, 33.1006"
  })
  void two_stations_reduce_as_the_contest_rules_do(
      double a1,
      double e1,
      double a2,
      double e2,
      double h1,
      double h2,
      double height,
      double closurePercent,
      double geodesic,
      double gap) {
    Tracking.Reduction found = onBaseline(300, a1, e1, a2, e2);
    assertThat(found.first().metres()).isCloseTo(h1, within(1e-4));
    assertThat(found.second().metres()).isCloseTo(h2, within(1e-4));
    assertThat(found.height().metres()).isCloseTo(height, within(1e-4));
    assertThat(found.closure() * 100).isCloseTo(closurePercent, within(1e-4));
    assertThat(found.geodesicHeight().metres()).isCloseTo(geodesic, within(1e-4));
    assertThat(found.gap().metres()).isCloseTo(gap, within(2e-4));
    assertThat(found.closes()).isEqualTo(closurePercent <= 10);
  }

  @Test
  void turning_stations_and_sights_together_changes_no_height() {
    Tracking.Reduction straight = onBaseline(300, 33, 52, 29, 49);
    double turn = 117;
    double east = 300 * Math.sin(Math.toRadians(90 + turn));
    double north = 300 * Math.cos(Math.toRadians(90 + turn));
    Tracking.Reduction turned =
        Tracking.reduce(
            new Tracking.Sight(ZERO, ZERO, new Bearing(57 + turn), Angle.ofDegrees(52)),
            new Tracking.Sight(
                new Length(east),
                new Length(north),
                new Bearing(270 + 29 + turn),
                Angle.ofDegrees(49)));
    assertThat(turned.height().metres()).isCloseTo(straight.height().metres(), within(1e-9));
    assertThat(turned.gap().metres()).isCloseTo(straight.gap().metres(), within(1e-9));
  }

  // h = b tan(elevation): 100 m at 45 and 60 degrees, 150 m at 35 (textbook formula, computed).
  @ParameterizedTest
  @CsvSource({"100, 45, 100.000", "100, 60, 173.2051", "150, 35, 105.0311"})
  void one_station_tells_distance_times_tangent(double distance, double elevation, double height) {
    assertThat(Tracking.single(new Length(distance), Angle.ofDegrees(elevation)).metres())
        .isCloseTo(height, within(1e-4));
  }

  @Test
  void sights_along_the_baseline_and_sights_that_part_are_refused_with_a_sentence() {
    assertThatThrownBy(() -> onBaseline(300, 0, 50, 0, 50))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining("cross nowhere");
    assertThatThrownBy(() -> onBaseline(300, 120, 50, 100, 50))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining("part");
    assertThatThrownBy(() -> Tracking.single(ZERO, Angle.ofDegrees(45)))
        .hasMessageContaining("above zero");
    assertThatThrownBy(() -> Tracking.single(new Length(100), Angle.ofDegrees(90)))
        .hasMessageContaining("90.0°");
  }
}
