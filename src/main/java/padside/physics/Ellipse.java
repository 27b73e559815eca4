package padside.physics;

import padside.units.Bearing;
import padside.units.Length;

/**
 * An ellipse over the ground, seen from the pad.
 *
 * @param east of the centre
 * @param north of the centre
 * @param longHalf half of its longest diameter
 * @param shortHalf half of its shortest
 * @param along where the longest points to, at least 0 and below 180 degrees
 */
public record Ellipse(Length east, Length north, Length longHalf, Length shortHalf, Bearing along) {

  /**
   * The ellipse that holds a share of a bivariate normal distribution with the mean and covariance
   * of some places: sqrt(-2 ln(1 - share)) times the deviations along the principal axes, the
   * radius of a Rayleigh distribution and root of the chi-square quantile with 2 degrees of freedom
   * (textbook identity; 50 %: 1.1774, 90 %: 2.1460).
   *
   * @param share above 0 and below 1
   */
  static Ellipse holding(double share, double[] eastM, double[] northM) {
    RefusedInput.unless(
        share > 0 && share < 1,
        () -> "An ellipse holds a share between 0 and 1, not %s.".formatted(share));
    double east = mean(eastM);
    double north = mean(northM);
    double ee = covariance(eastM, east, eastM, east);
    double nn = covariance(northM, north, northM, north);
    double en = covariance(eastM, east, northM, north);
    return of(share, new Moments(east, north, ee, en, nn));
  }

  /** Mean and covariance of a bivariate normal distribution, in metres and square metres. */
  record Moments(double east, double north, double ee, double en, double nn) {}

  /** The ellipse that holds a share of a bivariate normal distribution. */
  static Ellipse of(double share, Moments of) {
    double middle = (of.ee + of.nn) / 2;
    double apart = Math.hypot((of.nn - of.ee) / 2, of.en);
    double radius = radius(share);
    double along = Math.toDegrees(Math.atan2(of.en, (of.nn - of.ee) / 2)) / 2;
    return new Ellipse(
        new Length(of.east),
        new Length(of.north),
        new Length(radius * Math.sqrt(middle + apart)),
        new Length(radius * Math.sqrt(Math.max(0, middle - apart))),
        new Bearing(along < 0 ? along + 180 : along));
  }

  /** Half a principal diameter over the deviation along it. */
  static double radius(double share) {
    return Math.sqrt(-2 * Math.log1p(-share));
  }

  /** Of the same distribution the ellipse that holds one share, where this one holds another. */
  public Ellipse rescaled(double held, double share) {
    double factor = radius(share) / radius(held);
    return new Ellipse(
        east,
        north,
        new Length(factor * longHalf.metres()),
        new Length(factor * shortHalf.metres()),
        along);
  }

  /** Whether a place lies in it or on its edge. */
  boolean holds(double eastM, double northM) {
    double dx = eastM - east.metres();
    double dy = northM - north.metres();
    double sin = Math.sin(along.inRadians());
    double cos = Math.cos(along.inRadians());
    double lengthwise = (dx * sin + dy * cos) / longHalf.metres();
    double across = (dx * cos - dy * sin) / shortHalf.metres();
    return lengthwise * lengthwise + across * across <= 1;
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double covariance(double[] one, double oneMean, double[] other, double otherMean) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += (one[i] - oneMean) * (other[i] - otherMean);
    }
    return sum / Math.max(1, one.length - 1);
  }
}
