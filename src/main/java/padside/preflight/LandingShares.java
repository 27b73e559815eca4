package padside.preflight;

import java.util.Optional;
import padside.flight.Field;
import padside.physics.LandingFan;
import padside.site.FieldShape;
import padside.units.Speed;
import padside.units.UnitSystem;

/** How many landings of a fan lie inside a field as the wind grows. Winds are in m/s. */
final class LandingShares {
  /** The wind grows by so much while it is looked where landings begin to be lost. */
  static final double STEP_MPS = 1;

  /** A tenth of what is shown. */
  private static final double RESOLUTION_MPS = 0.004;

  /** Nine of ten have to lie inside. */
  private static final double WANTED = 0.9;

  private final LandingFan fan;
  private final FieldShape field;
  private final double[] eastM;
  private final double[] northM;

  LandingShares(LandingFan fan, FieldShape field) {
    this.fan = fan;
    this.field = field;
    eastM = new double[fan.flights()];
    northM = new double[fan.flights()];
  }

  /** Whether nine of ten landings lie inside in a wind. */
  boolean holds(double mps) {
    fan.land(new Speed(mps), eastM, northM);
    int inside = 0;
    for (int i = 0; i < eastM.length; i++) {
      inside += field.contains(eastM[i], northM[i]) ? 1 : 0;
    }
    return inside >= WANTED * eastM.length;
  }

  /** The first wind in steps from one on in which too few lie inside, at most {@code mostMps}. */
  double firstLost(double fromMps, double mostMps) {
    double mps = fromMps;
    while (mps < mostMps && holds(mps)) {
      mps += STEP_MPS;
    }
    return Math.min(mps, mostMps);
  }

  /** Between two winds: the largest in which nine of ten lie inside; the lower is not asked. */
  double crossing(double lowMps, double highMps) {
    double low = lowMps;
    double high = highMps;
    while (high - low > RESOLUTION_MPS) {
      double middle = (low + high) / 2;
      if (holds(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** What most landings in a wind are lost to. */
  Optional<Field.Bound> mostLost(double mps) {
    fan.land(new Speed(mps), eastM, northM);
    Losses losses = new Losses(field, UnitSystem.METRIC);
    for (int i = 0; i < eastM.length; i++) {
      losses.count(eastM[i], northM[i]);
    }
    return losses.most();
  }
}
