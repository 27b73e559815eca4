package padside.screen;

import java.util.ArrayList;
import java.util.List;
import padside.page.RoundStep;
import padside.preflight.Outlook;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** Height over time from ignition to the ground, with what happens on the way. */
final class ProfileChart {
  private static final int LEFT_OF_AXIS = 6;
  private static final int ROWS_A_TICK = 3;
  private static final int COLUMNS_A_TICK = 10;

  private final Canvas canvas;
  private final Outlook outlook;
  private final UnitNotation<Length> height;
  private final DotGrid grid;
  private final double topM;
  private final double endS;

  private ProfileChart(Canvas canvas, FormPane.Area area, Outlook outlook, World world) {
    this.canvas = canvas;
    this.outlook = outlook;
    UnitSystem units = world.settings().units();
    this.height = Notations.altitude(units);
    FormPane.Area plot =
        new FormPane.Area(
            area.left() + LEFT_OF_AXIS, area.top(), area.width() - LEFT_OF_AXIS, area.height() - 2);
    this.grid = new DotGrid(plot, world.braille());
    double highestM =
        outlook.path().stream().mapToDouble(point -> point.height().metres()).max().orElse(1);
    // One row is left above for the words at the apogee.
    double rows = Math.max(2, plot.height());
    this.topM = Math.max(1, Math.max(highestM, outlook.apogee().metres())) * rows / (rows - 1.5);
    this.endS = Math.max(1, outlook.flightTime().seconds()) * 1.02;
  }

  static void draw(Canvas canvas, FormPane.Area area, Outlook outlook, World world) {
    ProfileChart chart = new ProfileChart(canvas, area, outlook, world);
    chart.lines();
    chart.axes();
    chart.words();
  }

  private void lines() {
    grid.lines(
        outlook.path().stream().map(p -> dot(p.time(), p.height())).toList(), DotGrid.Ink.LINE);
    outlook
        .ejection()
        .ifPresent(
            e ->
                grid.lines(
                    List.of(dot(e.time(), new Length(0)), dot(e.time(), e.altitude())),
                    DotGrid.Ink.HAIR));
    grid.put(canvas);
  }

  private DotGrid.Dot dot(TimeSpan time, Length high) {
    return new DotGrid.Dot(
        (int) Math.round(time.seconds() / endS * (grid.across() - 1)),
        (int) Math.round((1 - high.metres() / topM) * (grid.down() - 1)));
  }

  private void axes() {
    FormPane.Area plot = grid.area();
    int axis = plot.left() - 1;
    int foot = plot.top() + plot.height();
    for (int row = plot.top(); row < foot; row++) {
      canvas.put(axis, row, "│", Style.LABEL);
    }
    canvas.put(axis, foot, "└" + "─".repeat(plot.width()), Style.LABEL);
    double unitM = height.read("1").value().orElseThrow().metres();
    double step = RoundStep.atLeast(topM / unitM * ROWS_A_TICK / plot.height());
    for (double at = step; at * unitM < topM; at += step) {
      Length high = new Length(at * unitM);
      String number = height.showBare(high);
      int row = plot.top() + dot(new TimeSpan(0), high).y() / grid.cellDown();
      canvas.put(axis, row, "┤", Style.LABEL);
      canvas.put(axis - number.length(), row, number, Style.LABEL);
    }
    canvas.put(axis - height.symbol().length(), foot, height.symbol(), Style.LABEL);
    times(axis, foot);
  }

  private void times(int axis, int foot) {
    FormPane.Area plot = grid.area();
    String landing = "landing " + OutlookText.seconds(whole(outlook.flightTime()));
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
    int ground = dot(outlook.flightTime(), new Length(0)).x() / grid.cellAcross();
    canvas.put(plot.left() + ground, foot, "×", Style.STRONG);
    canvas.put(end, foot + 1, landing, Style.PLAIN);
  }

  private void words() {
    ChartLabels labels = new ChartLabels(canvas, grid);
    List<Moment> moments = moments();
    moments.forEach(moment -> labels.mark(moment.dot(), moment.mark(), Style.STRONG));
    moments.forEach(
        moment -> labels.beside(moment.dot(), moment.right(), moment.down(), moment.label()));
  }

  /** What happens when, where the words go, and under which mark. */
  private record Moment(
      DotGrid.Dot dot, String mark, double right, double down, ChartLabels.Label label) {}

  private List<Moment> moments() {
    List<Moment> moments = new ArrayList<>();
    boolean early =
        outlook
            .ejection()
            .filter(e -> e.time().seconds() < outlook.timeToApogee().seconds())
            .isPresent();
    String apogee = early ? "apogee, were there no charge" : "apogee";
    moments.add(moment(apogee, outlook.timeToApogee(), outlook.apogee(), "▲", 0));
    outlook
        .ejection()
        .ifPresent(e -> moments.add(moment("ejection", e.time(), e.altitude(), "■", 1)));
    moments.add(moment("burnout", outlook.burnoutTime(), outlook.burnoutAltitude(), "•", 1));
    return moments;
  }

  private Moment moment(String name, TimeSpan time, Length high, String mark, double right) {
    String after = OutlookText.seconds(time);
    String full = name + " " + height.show(high) + ", " + after;
    return new Moment(
        dot(time, high), mark, right, -1, new ChartLabels.Label(List.of(full), Style.PLAIN));
  }

  private static TimeSpan whole(TimeSpan span) {
    return new TimeSpan(Math.round(span.seconds()));
  }
}
