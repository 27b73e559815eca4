package padside.physics;

import java.util.ArrayList;
import java.util.List;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/** Keeps a point of a flight at every multiple of one interval. */
final class Tracker {
  private final double everyS;
  private final List<TrackPoint> points = new ArrayList<>();

  Tracker(double everyS) {
    this.everyS = everyS;
  }

  /** Reads what the tried step of a path passes, up to a time. */
  void look(DormandPrince path, double untilS) {
    double due = points.size() * everyS;
    while (due <= untilS) {
      double[] state = path.copyAt(path.pointAt(due));
      points.add(point(due, state));
      due = points.size() * everyS;
    }
  }

  /** The points so far and, last, the landing. */
  List<TrackPoint> endingAt(double timeS, double[] state) {
    points.add(point(timeS, state));
    return List.copyOf(points);
  }

  private static TrackPoint point(double timeS, double[] state) {
    return new TrackPoint(
        new TimeSpan(timeS),
        new Length(state[0]),
        new Length(state[1]),
        new Length(state[2]),
        new Speed(Forces.speedMps(state)));
  }
}
