package padside.physics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The highest point of one launch as its drag coefficient makes it, and the way back. */
final class DragSearch {
  /** Less drag than this is none at all, more has no body of rocket's shape. */
  static final double LEAST = 0.01;

  static final double MOST = 20;

  /** The first bracket is the launch's own coefficient less and more by this factor. */
  private static final double STRIDE = 1.5;

  private static final double EXACT = 1e-9;
  private static final int MOST_TURNS = 100;

  private final Launch launch;
  private final Burn burn;
  private final Conditions planned;
  private final double areaM2;

  DragSearch(Launch launch) {
    this.launch =
        new Launch(
            launch.airframe(),
            launch.stages(),
            launch.rod(),
            launch.air(),
            launch.wind(),
            launch.delay(),
            launch.recovery(),
            List.of());
    burn = Burn.of(launch);
    planned = Conditions.planned(launch);
    areaM2 = launch.airframe().frontalAreaM2();
  }

  /** The highest point as flown with this drag coefficient and the thrust multiplied. */
  double highestM(double coefficient, double strength) {
    double[] strengths = new double[launch.stages().size()];
    Arrays.fill(strengths, strength);
    Burn burnt = strength == 1 ? burn : burn.strengthened(strengths);
    Conditions met = planned.withDragArea(coefficient * areaM2);
    FlightPath path = new FlightPath(launch, burnt, met, Flight.STANDARD_GRAVITY_MPS2);
    path.climb();
    return path.highestM();
  }

  /** The coefficient between {@link #LEAST} and {@link #MOST} that reaches this height. */
  Optional<Double> reaching(double metres) {
    double near = Math.min(MOST, Math.max(LEAST, launch.airframe().dragCoefficient()));
    double atNear = above(near, metres);
    boolean more = atNear > 0;
    double most = more ? MOST : LEAST;
    while (near != most) {
      double far = more ? Math.min(MOST, near * STRIDE) : Math.max(LEAST, near / STRIDE);
      double atFar = above(far, metres);
      if (atFar > 0 != more) {
        return Optional.of(
            new FalsePosition(EXACT * metres, 0, MOST_TURNS)
                .root(
                    coefficient -> above(coefficient, metres),
                    new FalsePosition.Bracket(near, atNear, far, atFar)));
      }
      near = far;
      atNear = atFar;
    }
    return Optional.empty();
  }

  private double above(double coefficient, double metres) {
    return highestM(coefficient, 1) - metres;
  }
}
