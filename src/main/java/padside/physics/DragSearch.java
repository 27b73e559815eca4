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
        return Optional.of(between(new Bracket(near, atNear, far, atFar), metres));
      }
      near = far;
      atNear = atFar;
    }
    return Optional.empty();
  }

  private double above(double coefficient, double metres) {
    return highestM(coefficient, 1) - metres;
  }

  /** Two coefficients and how far above the wanted height they reach, one above and one below. */
  private record Bracket(double one, double atOne, double other, double atOther) {}

  /** By false position with the Illinois rule (Dowell and Jarratt, BIT 11 (1971) 168-174). */
  private double between(Bracket bracket, double metres) {
    double low = bracket.one();
    double atLow = bracket.atOne();
    double high = bracket.other();
    double atHigh = bracket.atOther();
    for (int turn = 0; turn < MOST_TURNS && Math.abs(atHigh) > EXACT * metres; turn++) {
      double found = low + (high - low) * atLow / (atLow - atHigh);
      double at = above(found, metres);
      if (at * atHigh < 0) {
        low = high;
        atLow = atHigh;
      } else {
        atLow /= 2;
      }
      high = found;
      atHigh = at;
    }
    return high;
  }
}
