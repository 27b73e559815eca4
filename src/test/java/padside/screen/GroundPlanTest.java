package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.preflight.Spread;
import padside.units.Bearing;
import padside.units.Length;

class GroundPlanTest {
  private static final FormPane.Area AREA = new FormPane.Area(3, 2, 60, 20);

  private static Spread.Area ellipse(double along, double aside, double bearing) {
    return new Spread.Area(
        new Length(40),
        new Length(-25),
        new Length(along),
        new Length(aside),
        new Bearing(bearing));
  }

  /** A cell is about twice as high as wide: a circle is twice as many columns wide as rows high. */
  @Test
  void a_circle_looks_round() {
    for (boolean braille : new boolean[] {true, false}) {
      DotGrid grid = new DotGrid(AREA, braille);
      List<GroundPlan.Place> circle = GroundPlan.around(ellipse(80, 80, 0));
      GroundPlan plan = GroundPlan.of(circle, grid, new Size(1, 1));
      grid.lines(plan.dots(circle), DotGrid.Ink.BORDER);

      assertThat(columns(grid) / (double) rows(grid)).isCloseTo(2, within(0.15));
    }
  }

  private static long columns(DotGrid grid) {
    return java.util.stream.IntStream.range(0, 80)
        .filter(c -> java.util.stream.IntStream.range(0, 30).anyMatch(r -> grid.isDrawn(c, r)))
        .count();
  }

  private static long rows(DotGrid grid) {
    return java.util.stream.IntStream.range(0, 30)
        .filter(r -> java.util.stream.IntStream.range(0, 80).anyMatch(c -> grid.isDrawn(c, r)))
        .count();
  }

  @Test
  void north_is_up_and_east_is_right() {
    DotGrid grid = new DotGrid(AREA, true);
    GroundPlan plan =
        GroundPlan.of(
            List.of(new GroundPlan.Place(-100, -100), new GroundPlan.Place(100, 100)),
            grid,
            new Size(0, 0));
    DotGrid.Dot pad = plan.dot(GroundPlan.Place.PAD);

    assertThat(plan.dot(new GroundPlan.Place(0, 50)).y()).isLessThan(pad.y());
    assertThat(plan.dot(new GroundPlan.Place(50, 0)).x()).isGreaterThan(pad.x());
    assertThat(plan.dot(GroundPlan.Place.of(new Bearing(180), new Length(50))).y())
        .isGreaterThan(pad.y());
  }

  @Test
  void the_place_a_dot_shows_is_within_half_a_dot() {
    DotGrid grid = new DotGrid(AREA, true);
    List<GroundPlan.Place> places =
        List.of(new GroundPlan.Place(-320, 11), new GroundPlan.Place(75, 190));
    GroundPlan plan = GroundPlan.of(places, grid, new Size(1, 1));

    for (GroundPlan.Place place : places) {
      GroundPlan.Place back = plan.place(plan.dot(place));
      assertThat(back.eastM()).isCloseTo(place.eastM(), within(0.5 / plan.dotsPerMetre()));
      assertThat(back.northM()).isCloseTo(place.northM(), within(0.5 / plan.dotsPerMetre()));
    }
  }

  /** The area of an ellipse is π times its halves. */
  @Test
  void an_ellipse_holds_as_much_as_its_halves_say() {
    Spread.Area ellipse = ellipse(60, 25, 35);
    int inside = 0;
    for (int east = -60; east <= 140; east++) {
      for (int north = -125; north <= 75; north++) {
        inside += GroundPlan.holds(ellipse, new GroundPlan.Place(east, north)) ? 1 : 0;
      }
    }

    assertThat((double) inside).isCloseTo(Math.PI * 60 * 25, within(40.0));
  }

  @Test
  void the_longest_diameter_points_along_the_bearing_told() {
    Spread.Area ellipse = ellipse(60, 25, 35);
    GroundPlan.Place tip = GroundPlan.Place.of(new Bearing(35), new Length(59.9));

    assertThat(
            GroundPlan.holds(ellipse, new GroundPlan.Place(40 + tip.eastM(), -25 + tip.northM())))
        .isTrue();
    GroundPlan.Place first = GroundPlan.around(ellipse).get(0);
    assertThat(Math.toDegrees(Math.atan2(first.eastM() - 40, first.northM() + 25)))
        .isCloseTo(35, within(1e-9));
  }
}
