package padside.screen;

import java.util.List;
import padside.page.RoundStep;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** Height over time, with axes and what happens on the way; foretold or written down. */
final class HeightChart {
  /** The mark of the ejection, from which a line goes down to the ground. */
  static final String CHARGE = "■";

  static final String TOP = "▲";
  static final String OTHER = "•";

  private static final int LEFT_OF_AXIS = 6;
  private static final int COLUMNS_A_TICK = 10;

  private final Canvas canvas;
  private final Course course;
  private final UnitNotation<Length> height;
  private final DotGrid grid;
  private final double topM;
  private final double endS;

  /** A height at a time. */
  record Spot(TimeSpan time, Length height) {}

  /**
   * What happens when, where its words go, and under which mark.
   *
   * @param right where outward is, as for {@link ChartLabels#beside}
   */
  record Moment(String name, Spot at, String mark, double right) {}

  /**
   * What is drawn.
   *
   * @param highest at least so high the drawing is
   * @param end where the time ends; the landing where that is known
   */
  record Course(
      List<Spot> path, Length highest, TimeSpan end, boolean lands, List<Moment> moments) {
    Course {
      path = List.copyOf(path);
      moments = List.copyOf(moments);
    }
  }

  private HeightChart(Canvas canvas, FormPane.Area area, Course course, World world) {
    this.canvas = canvas;
    this.course = course;
    UnitSystem units = world.settings().units();
    this.height = Notations.altitude(units);
    FormPane.Area plot =
        new FormPane.Area(
            area.left() + LEFT_OF_AXIS, area.top(), area.width() - LEFT_OF_AXIS, area.height() - 2);
    this.grid = new DotGrid(plot, world.braille());
    double highestM = course.path.stream().mapToDouble(p -> p.height.metres()).max().orElse(1);
    // One row is left above for the words at the apogee.
    double rows = Math.max(2, plot.height());
    this.topM = Math.max(1, Math.max(highestM, course.highest.metres())) * rows / (rows - 1.5);
    this.endS = Math.max(1, course.end.seconds()) * 1.02;
  }

  static void draw(Canvas canvas, FormPane.Area area, Course course, World world) {
    HeightChart chart = new HeightChart(canvas, area, course, world);
    chart.lines();
    chart.axes();
    chart.words();
  }

  private void lines() {
    grid.lines(course.path.stream().map(this::dot).toList(), DotGrid.Ink.LINE);
    course.moments.stream()
        .filter(moment -> moment.mark.equals(CHARGE))
        .forEach(
            e -> grid.lines(List.of(dot(e.at.time, new Length(0)), dot(e.at)), DotGrid.Ink.HAIR));
    grid.put(canvas);
  }

  private DotGrid.Dot dot(Spot spot) {
    return dot(spot.time, spot.height);
  }

  private DotGrid.Dot dot(TimeSpan time, Length high) {
    return new DotGrid.Dot(
        (int) Math.round(time.seconds() / endS * (grid.across() - 1)),
        new HeightAxis(canvas, grid, height, topM).dotDown(high.metres()));
  }

  private void axes() {
    HeightAxis axis = new HeightAxis(canvas, grid, height, topM);
    axis.draw();
    canvas.put(axis.column() - height.symbol().length(), axis.foot(), height.symbol(), Style.LABEL);
    times(axis.column(), axis.foot());
  }

  private void times(int axis, int foot) {
    FormPane.Area plot = grid.area();
    String landing = course.lands ? "landing " + OutlookText.seconds(whole(course.end)) : "";
    int end = plot.left() + plot.width() - landing.length();
    double step = RoundStep.atLeast(endS * COLUMNS_A_TICK / plot.width());
    for (double at = 0; at < endS; at += step) {
      int column = plot.left() + dot(new TimeSpan(at), new Length(0)).x() / grid.cellAcross();
      String number = OutlookText.seconds(new TimeSpan(at));
      canvas.put(at == 0 ? axis : column, foot, at == 0 ? "└" : "┴", Style.LABEL);
      if (column + number.length() < end) {
        canvas.put(column, foot + 1, number, Style.LABEL);
      }
    }
    if (!course.lands) {
      return;
    }
    int ground = dot(course.end, new Length(0)).x() / grid.cellAcross();
    canvas.put(plot.left() + ground, foot, "×", Style.STRONG);
    canvas.put(end, foot + 1, landing, Style.PLAIN);
  }

  private void words() {
    ChartLabels labels = new ChartLabels(canvas, grid);
    course.moments.forEach(each -> labels.mark(dot(each.at), each.mark, Style.STRONG));
    course.moments.forEach(
        each -> {
          String full =
              each.name
                  + " "
                  + height.show(each.at.height)
                  + ", "
                  + OutlookText.seconds(each.at.time);
          labels.beside(
              dot(each.at), each.right, -1, new ChartLabels.Label(List.of(full), Style.PLAIN));
        });
  }

  private static TimeSpan whole(TimeSpan span) {
    return new TimeSpan(Math.round(span.seconds()));
  }
}
