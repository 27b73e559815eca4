package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

class SearchAreaTest {
  private static final Length ZERO = new Length(0);

  private static Tracking.Line line(double east, double north, double toward, double deviation) {
    return new Tracking.Line(
        new Length(east), new Length(north), new Bearing(toward), Angle.ofDegrees(deviation));
  }

  // By hand: lines N 45 E from the pad and N 45 W from 200 m east of it cross at (100, 100), both
  // 141.42 m away; 3 degrees there are 7.4048 m across each, and the lines are square to each
  // other,
  // so the 90 % ellipse is a circle of 2.145966 times that.
  @Test
  void two_lines_square_to_each_other_leave_a_circle_where_they_cross() {
    Ellipse area =
        Tracking.search(List.of(line(0, 0, 45, 3), line(200, 0, 315, 3)), Optional.empty(), 0.9);
    assertThat(area.east().metres()).isCloseTo(100, within(1e-6));
    assertThat(area.north().metres()).isCloseTo(100, within(1e-6));
    assertThat(area.longHalf().metres()).isCloseTo(2.145966 * 7.40480, within(1e-3));
    assertThat(area.shortHalf().metres()).isCloseTo(area.longHalf().metres(), within(1e-6));
  }

  // By hand, product of two normal densities (textbook identity): a landing expected at (0, 200) to
  // 20 m each way, and a line due north seen 3 degrees wide from the pad: 10.472 m across, so the
  // deviation across is 1/sqrt(1/20² + 1/10.472²) = 9.2773 m; along the line nothing changes.
  @Test
  void one_line_narrows_the_expected_landing_across_itself_only() {
    double radius = Ellipse.radius(0.9);
    Ellipse expected =
        new Ellipse(
            ZERO,
            new Length(200),
            new Length(20 * radius),
            new Length(20 * radius),
            new Bearing(0));
    Ellipse area = Tracking.search(List.of(line(0, 0, 0, 3)), Optional.of(expected), 0.9);
    assertThat(area.shortHalf().metres() / radius).isCloseTo(9.2773, within(1e-3));
    assertThat(area.longHalf().metres() / radius).isCloseTo(20, within(1e-6));
    assertThat(area.along().degrees()).isCloseTo(0, within(1e-6));
    assertThat(area.north().metres()).isCloseTo(200, within(1e-9));
  }

  @Test
  void without_a_line_the_expected_landing_is_the_place_to_search() {
    Ellipse expected =
        new Ellipse(
            new Length(30), new Length(-40), new Length(50), new Length(20), new Bearing(70));
    Ellipse area = Tracking.search(List.of(), Optional.of(expected), 0.9);
    assertThat(area.longHalf().metres()).isCloseTo(50, within(1e-9));
    assertThat(area.shortHalf().metres()).isCloseTo(20, within(1e-9));
    assertThat(area.along().degrees()).isCloseTo(70, within(1e-9));
    Tracking.Way way = Tracking.way(area, ZERO, ZERO);
    assertThat(way.distance().metres()).isCloseTo(50, within(1e-9));
    assertThat(way.toward().degrees()).isCloseTo(143.1301, within(1e-4));
  }

  @Test
  void nine_of_ten_true_places_lie_inside_when_bearings_err_as_said() {
    long seed = 20261017;
    Random random = new Random(seed);
    int inside = 0;
    int tries = 4000;
    for (int i = 0; i < tries; i++) {
      double east = 120;
      double north = 180;
      double one = Math.toDegrees(Math.atan2(east, north)) + 3 * random.nextGaussian();
      double other = Math.toDegrees(Math.atan2(east - 150, north)) + 3 * random.nextGaussian();
      Ellipse area =
          Tracking.search(
              List.of(line(0, 0, one, 3), line(150, 0, other, 3)), Optional.empty(), 0.9);
      inside += area.holds(east, north) ? 1 : 0;
    }
    // Linearised in the bearings: a little off 90 % is expected, more is not.
    assertThat(inside / (double) tries).as("seed " + seed).isBetween(0.87, 0.92);
  }

  @Test
  void lines_side_by_side_and_one_line_alone_are_refused_with_a_sentence() {
    assertThatThrownBy(
            () ->
                Tracking.search(
                    List.of(line(0, 0, 45, 3), line(200, 0, 45, 3)), Optional.empty(), 0.9))
        .isInstanceOf(RefusedInput.class)
        .hasMessageContaining("side by side");
    assertThatThrownBy(() -> Tracking.search(List.of(line(0, 0, 45, 3)), Optional.empty(), 0.9))
        .hasMessageContaining("second one");
    assertThatThrownBy(() -> line(0, 0, 45, 0)).hasMessageContaining("0.1 to 45");
  }
}
