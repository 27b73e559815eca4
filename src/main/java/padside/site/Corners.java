package padside.site;

import java.util.ArrayList;
import java.util.List;
import padside.units.Bearing;
import padside.units.Length;

/**
 * The outline of {@link FieldShape} as corners, clockwise from north: the paced places where a
 * straight stretch ends, and between stretches that are not straight points of the arc.
 */
final class Corners {
  /** Neighbouring points of an arc lie no further apart, seen from its middle. */
  private static final double STEP_DEG = 5;

  private static final double TURN_DEG = 360;

  private final List<Landing> corners = new ArrayList<>();

  Corners(List<FieldShape.Stretch> stretches) {
    for (int i = 0; i < stretches.size(); i++) {
      FieldShape.Stretch before = stretches.get((i + stretches.size() - 1) % stretches.size());
      FieldShape.Stretch stretch = stretches.get(i);
      // Between two arcs a paced place further out than both is no room to land in.
      if (isLine(before) || isLine(stretch)) {
        add(stretch.from().bearing(), stretch.from().distance().metres());
      }
      if (!isLine(stretch)) {
        arc(stretch);
      }
    }
    dropRepeatedEnd();
  }

  List<Landing> list() {
    return List.copyOf(corners);
  }

  /** A circle of places around a middle, clockwise from north. */
  static List<Landing> circle(Landing middle, double radiusM) {
    List<Landing> places = new ArrayList<>();
    for (double toward = 0; toward < TURN_DEG; toward += STEP_DEG) {
      double radians = Math.toRadians(toward);
      places.add(
          Landing.of(
              middle.eastM() + radiusM * Math.sin(radians),
              middle.northM() + radiusM * Math.cos(radians)));
    }
    return List.copyOf(places);
  }

  private static boolean isLine(FieldShape.Stretch stretch) {
    return stretch.straight() && stretch.nearerM() > 0;
  }

  private void arc(FieldShape.Stretch stretch) {
    int steps = (int) Math.ceil(stretch.gapDeg() / STEP_DEG);
    for (int step = 0; step <= steps; step++) {
      add(
          new Bearing(stretch.from().bearing().degrees() + step * stretch.gapDeg() / steps),
          stretch.nearerM());
    }
  }

  private void add(Bearing bearing, double distanceM) {
    Landing next = new Landing(bearing, new Length(distanceM));
    if (corners.isEmpty() || !isSame(corners.get(corners.size() - 1), next)) {
      corners.add(next);
    }
  }

  private void dropRepeatedEnd() {
    while (corners.size() > 1 && isSame(corners.get(corners.size() - 1), corners.get(0))) {
      corners.remove(corners.size() - 1);
    }
  }

  /** Within a millimetre. */
  private static boolean isSame(Landing one, Landing other) {
    return Math.hypot(one.eastM() - other.eastM(), one.northM() - other.northM()) < 1e-3;
  }
}
