package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.trace.KeptTrace;
import padside.units.TimeSpan;

/** The line an altimeter wrote, with its apogee, its ejection and its touchdown. */
final class TraceChart {
  private TraceChart() {}

  static void draw(Canvas canvas, FormPane.Area area, KeptTrace trace, World world) {
    List<HeightChart.Spot> path =
        trace.points().stream()
            .filter(point -> point.time().seconds() >= 0)
            .map(TraceChart::spot)
            .toList();
    if (path.isEmpty()) {
      return;
    }
    Optional<TimeSpan> touchdown = trace.at(KeptTrace.Event.TOUCHDOWN).map(KeptTrace.Point::time);
    TimeSpan end = touchdown.orElse(path.get(path.size() - 1).time());
    HeightChart.draw(
        canvas,
        area,
        new HeightChart.Course(path, trace.highest(), end, touchdown.isPresent(), moments(trace)),
        world);
  }

  private static List<HeightChart.Moment> moments(KeptTrace trace) {
    List<HeightChart.Moment> moments = new ArrayList<>();
    for (KeptTrace.Mark mark : trace.marks()) {
      String shape =
          switch (mark.event()) {
            case APOGEE -> HeightChart.TOP;
            case EJECTION -> HeightChart.CHARGE;
            case SECOND, TOUCHDOWN -> HeightChart.OTHER;
          };
      double right = mark.event() == KeptTrace.Event.APOGEE ? 0 : 1;
      if (mark.event() != KeptTrace.Event.TOUCHDOWN) { // the axis has it
        moments.add(new HeightChart.Moment(mark.event().word(), spot(mark.at()), shape, right));
      }
    }
    return moments;
  }

  private static HeightChart.Spot spot(KeptTrace.Point point) {
    return new HeightChart.Spot(point.time(), point.height());
  }
}
