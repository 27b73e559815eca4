package padside.preflight;

import java.util.Optional;
import padside.flight.Field;
import padside.physics.LandingFan;
import padside.site.FieldShape;
import padside.units.Speed;
import padside.units.UnitSystem;

/**
 * How many landings of a fan lie inside a field as the wind grows. Winds are told in steps of
 * {@link #STEP_MPS}: on one row of winds the limit is the same wherever the search began.
 */
final class LandingShares {
  /** Less than a tenth of what is shown. */
  static final double STEP_MPS = 1.0 / 256;

  /** Winds are searched up to here. */
  static final int LAST_STEP = (int) (FieldLimits.SEARCHED_TO.metresPerSecond() / STEP_MPS);

  /** So far the first stride goes, and by the share of the wind further. */
  private static final int STRIDE = 64;

  private static final int STRIDE_SHARE = 16;

  private final LandingFan fan;
  private final FieldShape field;
  private final double wanted;
  private final double[] eastM;
  private final double[] northM;

  /**
   * Of a fan on a field.
   *
   * @param wanted the share of landings that has to lie inside, from 0 to 1
   */
  LandingShares(LandingFan fan, FieldShape field, double wanted) {
    this.fan = fan;
    this.field = field;
    this.wanted = wanted;
    eastM = new double[fan.flights()];
    northM = new double[fan.flights()];
  }

  /**
   * The last step in which enough landings lie inside, before the first in which they do not.
   *
   * @param nearStep it is looked for from here, upward while enough lie inside, else downward
   * @return 0 where not even calm air keeps them inside, {@link #LAST_STEP} where every wind does
   */
  int limit(int nearStep) {
    return holds(nearStep) ? above(nearStep) : below(nearStep);
  }

  private int above(int holdingStep) {
    int low = holdingStep;
    while (low < LAST_STEP) {
      int high = Math.min(LAST_STEP, low + stride(low));
      if (!holds(high)) {
        return between(low, high);
      }
      low = high;
    }
    return LAST_STEP;
  }

  private int below(int losingStep) {
    int high = losingStep;
    while (high > 0) {
      int low = Math.max(0, high - stride(high));
      if (holds(low)) {
        return between(low, high);
      }
      high = low;
    }
    return 0;
  }

  private static int stride(int step) {
    return STRIDE + step / STRIDE_SHARE;
  }

  private int between(int holdingStep, int losingStep) {
    int low = holdingStep;
    int high = losingStep;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (holds(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Whether enough landings lie inside. */
  private boolean holds(int step) {
    land(step);
    int inside = 0;
    for (int i = 0; i < eastM.length; i++) {
      inside += field.contains(eastM[i], northM[i]) ? 1 : 0;
    }
    return inside >= wanted * eastM.length;
  }

  /** What most landings are lost to. */
  Optional<Field.Bound> mostLost(int step) {
    land(step);
    Losses losses = new Losses(field, UnitSystem.METRIC);
    for (int i = 0; i < eastM.length; i++) {
      losses.count(eastM[i], northM[i]);
    }
    return losses.most();
  }

  private void land(int step) {
    fan.land(new Speed(step * STEP_MPS), eastM, northM);
  }
}
