package padside.wire;

import java.util.Optional;
import padside.units.Bearing;
import padside.units.Wind;

/**
 * A wind that is gone on with until the newest differs enough to be told, so that what is made of
 * it is not made anew with every reading.
 */
public final class Standing {
  /** Well below what a meter is sure of, ±0.5 m/s and ±5° by WMO-No. 8, from memory. */
  private static final double STEP_MPS = 0.2;

  private static final double STEP_DEG = 5;

  private Optional<Wind> told = Optional.empty();

  /** What stands, after one more wind. */
  public Wind next(Wind newest) {
    Wind wind = told.filter(old -> isNear(old, newest)).orElse(newest);
    told = Optional.of(wind);
    return wind;
  }

  private static boolean isNear(Wind old, Wind newest) {
    double mean = old.mean().metresPerSecond() - newest.mean().metresPerSecond();
    double gust = old.gust().metresPerSecond() - newest.gust().metresPerSecond();
    return Math.abs(mean) < STEP_MPS
        && Math.abs(gust) < STEP_MPS
        && isNear(old.from(), newest.from());
  }

  private static boolean isNear(Optional<Bearing> old, Optional<Bearing> newest) {
    if (old.isEmpty() || newest.isEmpty()) {
      return old.isEmpty() && newest.isEmpty();
    }
    double turn = Math.abs(old.get().degrees() - newest.get().degrees());
    return Math.min(turn, 360 - turn) < STEP_DEG;
  }
}
