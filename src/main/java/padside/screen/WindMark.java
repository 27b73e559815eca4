package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.units.Bearing;
import padside.units.Wind;

/** An arrow the way the wind blows, in the upper left corner of a chart, under its name. */
final class WindMark {
  private static final int CELLS = 5;
  private static final int ROWS = 3;
  private static final double BARB_DEG = 150;
  private static final double POINT_DEG = 45;

  /** Shaft and head without braille, from north clockwise. */
  private static final List<String> SIGNS =
      List.of("|^", "/>", "->", "\\>", "|v", "/<", "-<", "\\<");

  private final Optional<Bearing> toward;
  private final DotGrid grid;

  private WindMark(Optional<Bearing> toward, DotGrid grid) {
    this.toward = toward;
    this.grid = grid;
  }

  static WindMark of(Optional<Wind> wind, DotGrid grid) {
    return new WindMark(wind.flatMap(Wind::from).map(Bearing::reversed), grid);
  }

  /** Draws it where there are dots enough for an arrow. */
  void lines() {
    toward.filter(way -> grid.isFine()).ifPresent(this::arrow);
  }

  private void arrow(Bearing way) {
    double half = CELLS * grid.cellAcross() / 2.0 - 0.5;
    DotGrid.Dot middle =
        new DotGrid.Dot((int) Math.ceil(half), (int) Math.ceil(half) + grid.cellDown());
    DotGrid.Dot head = from(middle, way, half);
    grid.lines(List.of(from(middle, way, -half), head), DotGrid.Ink.LINE);
    for (double turn : new double[] {BARB_DEG, -BARB_DEG}) {
      Bearing back = new Bearing(way.degrees() + turn);
      grid.lines(List.of(head, from(head, back, half * 0.7)), DotGrid.Ink.LINE);
    }
  }

  void words(ChartLabels labels) {
    toward.ifPresent(
        way -> {
          labels.mark(new DotGrid.Dot(0, 0), "wind", Style.PLAIN);
          if (!grid.isFine()) {
            signs(labels, way);
          }
        });
  }

  private void signs(ChartLabels labels, Bearing way) {
    int point = (int) Math.round(way.degrees() / POINT_DEG) % SIGNS.size();
    int right = Integer.signum((int) Math.round(2 * Math.sin(point * Math.PI / 4)));
    int down = -Integer.signum((int) Math.round(2 * Math.cos(point * Math.PI / 4)));
    for (int i = -1; i < ROWS - 1; i++) {
      DotGrid.Dot cell =
          new DotGrid.Dot(
              (2 + i * right) * grid.cellAcross(), (ROWS - 1 + i * down) * grid.cellDown());
      String sign = SIGNS.get(point).substring(i == 1 ? 1 : 0, i == 1 ? 2 : 1);
      labels.mark(cell, sign, Style.STRONG);
    }
  }

  private static DotGrid.Dot from(DotGrid.Dot dot, Bearing way, double dots) {
    return new DotGrid.Dot(
        (int) Math.round(dot.x() + dots * Math.sin(way.inRadians())),
        (int) Math.round(dot.y() - dots * Math.cos(way.inRadians())));
  }
}
