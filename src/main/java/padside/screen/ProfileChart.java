package padside.screen;

import java.util.ArrayList;
import java.util.List;
import padside.preflight.Outlook;
import padside.units.Length;
import padside.units.TimeSpan;

/** The foretold height over time from ignition to the ground, with what happens on the way. */
final class ProfileChart {
  private ProfileChart() {}

  static void draw(Canvas canvas, FormPane.Area area, Outlook outlook, World world) {
    List<HeightChart.Spot> path =
        outlook.path().stream().map(p -> new HeightChart.Spot(p.time(), p.height())).toList();
    HeightChart.Course course =
        new HeightChart.Course(
            path, outlook.apogee(), outlook.flightTime(), true, moments(outlook));
    HeightChart.draw(canvas, area, course, world);
  }

  private static List<HeightChart.Moment> moments(Outlook outlook) {
    List<HeightChart.Moment> moments = new ArrayList<>();
    boolean early =
        outlook
            .ejection()
            .filter(e -> e.time().seconds() < outlook.timeToApogee().seconds())
            .isPresent();
    String apogee = early ? "apogee, were there no charge" : "apogee";
    moments.add(moment(apogee, outlook.timeToApogee(), outlook.apogee(), HeightChart.TOP, 0));
    outlook
        .ejection()
        .ifPresent(
            e -> moments.add(moment("ejection", e.time(), e.altitude(), HeightChart.CHARGE, 1)));
    moments.add(
        moment("burnout", outlook.burnoutTime(), outlook.burnoutAltitude(), HeightChart.OTHER, 1));
    return moments;
  }

  private static HeightChart.Moment moment(
      String name, TimeSpan time, Length high, String mark, double right) {
    return new HeightChart.Moment(name, new HeightChart.Spot(time, high), mark, right);
  }
}
