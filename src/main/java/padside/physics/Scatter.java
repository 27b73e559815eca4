package padside.physics;

import java.util.Locale;
import padside.units.Angle;
import padside.units.TimeSpan;

/**
 * How far one flight differs from the next that is set up the same way, one standard deviation
 * each. The sizes are data and come from outside.
 *
 * @param impulseShare of the total impulse of one motor; thrust is scaled, burn time kept. The
 *     motors of a cluster differ independently of each other, so their sum scatters by this over
 *     the square root of their number; stages differ independently too
 * @param dragShare of the rocket's drag coefficient
 * @param canopyDragShare of the recovery device's drag coefficient
 * @param delayShare of the delay
 * @param leastDelayDeviation where the share of the delay is less
 * @param windShare of the wind as read; the mean of one whole flight
 * @param windDirection of one whole flight
 * @param gustDeviations how many standard deviations the gust stands above the mean wind. One draw
 *     a flight, a lull as likely as a gust, felt from rod exit to ejection; over the descent gusts
 *     average out
 * @param rodTilt in each of two axes across the rod
 */
public record Scatter(
    double impulseShare,
    double dragShare,
    double canopyDragShare,
    double delayShare,
    TimeSpan leastDelayDeviation,
    double windShare,
    Angle windDirection,
    double gustDeviations,
    Angle rodTilt) {
  private static final TimeSpan NO_TIME = new TimeSpan(0);
  private static final Angle NO_ANGLE = new Angle(0);

  /** Refuses negative sizes, shares above a half and angles above a right one. */
  public Scatter {
    requireShare("impulse", impulseShare);
    requireShare("drag", dragShare);
    requireShare("canopy drag", canopyDragShare);
    requireShare("delay", delayShare);
    requireShare("wind", windShare);
    require("delay in seconds", leastDelayDeviation.seconds(), 60);
    require("wind direction in degrees", windDirection.inDegrees(), 90);
    require("rod tilt in degrees", rodTilt.inDegrees(), 30);
    RefusedInput.unless(
        gustDeviations > 0,
        () ->
            String.format(
                Locale.ROOT,
                "A gust %.1f standard deviations above the mean wind cannot be; 2 is usual.",
                gustDeviations));
  }

  /** Every flight is as planned, in the mean wind. */
  public static Scatter none() {
    return new Scatter(0, 0, 0, 0, NO_TIME, 0, NO_ANGLE, Double.POSITIVE_INFINITY, NO_ANGLE);
  }

  /** The same for a rocket whose drag differs by another share. */
  public Scatter withDragShare(double share) {
    return new Scatter(
        impulseShare,
        share,
        canopyDragShare,
        delayShare,
        leastDelayDeviation,
        windShare,
        windDirection,
        gustDeviations,
        rodTilt);
  }

  private static void requireShare(String what, double share) {
    require(what + " as a share", share, 0.5);
  }

  private static void require(String what, double value, double most) {
    RefusedInput.unless(
        value >= 0 && value <= most,
        () ->
            String.format(
                Locale.ROOT, "The scatter of %s is %.3f, outside 0 to %.1f.", what, value, most));
  }
}
