package padside.site;

import java.util.List;

/**
 * The outline of {@link FieldShape} in the plane, made for many questions: no sine, no object and
 * no list on the way to an answer.
 *
 * <p>A direction is sorted among the paced ones by its share of the turn from north clockwise
 * around the diamond |x| + |y| = 1, from 0 to 4, which grows with the bearing. Along a straight
 * stretch a place lies inside when it is on the pad's side of the line through both paced points,
 * elsewhere when it is no further than the nearer of them.
 */
final class Outline {
  /** Share of a distance, and of the diamond's turn, that is taken for rounding. */
  private static final double ROUNDING = 1e-9;

  private static final double ONCE_ROUND = 4;

  private final int count;
  private final double[] turn;

  /** Along the paced bearing itself. */
  private final double[] pacedM;

  /** Across a stretch that is not straight. */
  private final double[] nearerM;

  private final boolean[] straight;

  /** The line of a straight stretch: lineEast·east + lineNorth·north = line, less on our side. */
  private final double[] lineEast;

  private final double[] lineNorth;
  private final double[] line;

  Outline(List<FieldShape.Stretch> stretches) {
    count = stretches.size();
    turn = new double[count];
    pacedM = new double[count];
    nearerM = new double[count];
    straight = new boolean[count];
    lineEast = new double[count];
    lineNorth = new double[count];
    line = new double[count];
    for (int i = 0; i < count; i++) {
      set(i, stretches.get(i));
    }
  }

  private void set(int i, FieldShape.Stretch stretch) {
    Landing from = new Landing(stretch.from().bearing(), stretch.from().distance());
    Landing to = new Landing(stretch.to().bearing(), stretch.to().distance());
    turn[i] = turn(Math.sin(from.bearing().inRadians()), Math.cos(from.bearing().inRadians()));
    pacedM[i] = from.distance().metres();
    nearerM[i] = stretch.nearerM();
    straight[i] = stretch.straight() && stretch.nearerM() > 0;
    lineEast[i] = from.northM() - to.northM();
    lineNorth[i] = to.eastM() - from.eastM();
    line[i] = to.eastM() * from.northM() - to.northM() * from.eastM();
  }

  boolean contains(double eastM, double northM) {
    double turned = turn(eastM, northM);
    int on = on(turned);
    double most;
    if (isPaced(turned, on)) {
      most = pacedM[on];
    } else if (straight[on]) {
      return lineEast[on] * eastM + lineNorth[on] * northM <= line[on] * (1 + ROUNDING);
    } else {
      most = nearerM[on];
    }
    return eastM * eastM + northM * northM <= most * most * (1 + ROUNDING);
  }

  /** From the pad to the outline towards a place, which itself may be near or far. */
  double reachM(double east, double north) {
    double turned = turn(east, north);
    int on = on(turned);
    if (isPaced(turned, on)) {
      return pacedM[on];
    }
    return straight[on]
        ? line[on]
            * Math.sqrt(east * east + north * north)
            / (lineEast[on] * east + lineNorth[on] * north)
        : nearerM[on];
  }

  /** The stretch that begins at the last paced bearing before a direction, or at it. */
  private int on(double turned) {
    int on = count - 1;
    for (int i = 0; i < count && turn[i] <= turned + ROUNDING; i++) {
      on = i;
    }
    return on;
  }

  private boolean isPaced(double turned, int on) {
    return Math.abs(turned - turn[on]) <= ROUNDING;
  }

  /** North is 0, east 1, south 2, west 3; the pad itself counts as north. */
  private static double turn(double east, double north) {
    double size = Math.abs(east) + Math.abs(north);
    if (size == 0) {
      return 0;
    }
    double turned = east >= 0 ? 1 - north / size : 3 + north / size;
    return turned < ONCE_ROUND - ROUNDING ? turned : 0;
  }
}
