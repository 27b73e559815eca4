package padside.site;

import padside.units.Bearing;
import padside.units.Length;

/**
 * A place on the ground as seen from the pad.
 *
 * @param bearing toward it, true; north when it is the pad itself
 * @param distance over the ground, not negative
 */
public record Landing(Bearing bearing, Length distance) {
  /** Refuses a negative distance. */
  public Landing {
    if (distance.metres() < 0) {
      throw new IllegalArgumentException("negative distance: " + distance);
    }
  }

  /** The place so many metres east and north of the pad. */
  public static Landing of(double eastM, double northM) {
    return new Landing(
        new Bearing(Math.toDegrees(Math.atan2(eastM, northM))),
        new Length(Math.hypot(eastM, northM)));
  }

  /** How far east of the pad, in metres. */
  public double eastM() {
    return distance.metres() * Math.sin(bearing.inRadians());
  }

  /** How far north of the pad, in metres. */
  public double northM() {
    return distance.metres() * Math.cos(bearing.inRadians());
  }
}
