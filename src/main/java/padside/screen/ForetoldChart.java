package padside.screen;

import java.util.List;
import java.util.stream.Stream;
import padside.insight.Scores;
import padside.page.RoundStep;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitNotation;

/** Measured altitude over predicted; on the line from corner to corner the two are the same. */
final class ForetoldChart {
  private static final int LEFT_OF_AXIS = 6;
  private static final int COLUMNS_A_TICK = 12;
  private static final double ROOM_ABOVE = 1.05;
  private static final String NOTHING = "No altitude of these was both predicted and measured.";

  private final Canvas canvas;
  private final UnitNotation<Length> height;
  private final DotGrid grid;
  private final double topM;
  private final HeightAxis axis;

  private ForetoldChart(Canvas canvas, FormPane.Area area, List<Scores.Top> tops, World world) {
    this.canvas = canvas;
    this.height = Notations.altitude(world.settings().units());
    FormPane.Area plot =
        new FormPane.Area(
            area.left() + LEFT_OF_AXIS,
            area.top() + 1,
            area.width() - LEFT_OF_AXIS,
            area.height() - 3);
    this.grid = new DotGrid(plot, world.braille());
    this.topM =
        ROOM_ABOVE
            * tops.stream()
                .flatMap(top -> Stream.of(top.predicted(), top.measured()))
                .mapToDouble(Length::metres)
                .max()
                .orElse(1);
    this.axis = new HeightAxis(canvas, grid, height, topM);
  }

  static void draw(Canvas canvas, FormPane.Area area, Scores scores, World world) {
    List<Scores.Top> tops = scores.flights().stream().flatMap(each -> each.top().stream()).toList();
    if (tops.isEmpty()) {
      canvas.put(area.left() + 1, area.top(), NOTHING, Style.PLAIN);
      return;
    }
    ForetoldChart chart = new ForetoldChart(canvas, area, tops, world);
    chart.line();
    chart.axes();
    tops.forEach(chart::point);
    canvas.put(area.left(), area.top(), "measured", Style.LABEL);
  }

  private void line() {
    grid.lines(List.of(dot(0, 0), dot(topM, topM)), DotGrid.Ink.FAINT);
    grid.put(canvas);
  }

  private DotGrid.Dot dot(double predictedM, double measuredM) {
    return new DotGrid.Dot(
        (int) Math.round(predictedM / topM * (grid.across() - 1)), axis.dotDown(measuredM));
  }

  private void point(Scores.Top top) {
    DotGrid.Dot dot = dot(top.predicted().metres(), top.measured().metres());
    canvas.put(
        grid.area().left() + dot.x() / grid.cellAcross(),
        grid.area().top() + dot.y() / grid.cellDown(),
        "×",
        Style.STRONG);
  }

  private void axes() {
    axis.draw();
    FormPane.Area plot = grid.area();
    int foot = axis.foot();
    double unitM = axis.unitM();
    String predicted = "predicted, " + height.symbol();
    int end = plot.left() + plot.width() - predicted.length();
    double across = RoundStep.atLeast(topM / unitM * COLUMNS_A_TICK / plot.width());
    for (double at = across; at * unitM < topM; at += across) {
      String number = height.showBare(new Length(at * unitM));
      int column = plot.left() + dot(at * unitM, 0).x() / grid.cellAcross();
      canvas.put(column, foot, "┴", Style.LABEL);
      if (column + number.length() < end) {
        canvas.put(column, foot + 1, number, Style.LABEL);
      }
    }
    canvas.put(end, foot + 1, predicted, Style.LABEL);
  }
}
