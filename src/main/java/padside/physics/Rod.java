package padside.physics;

import java.util.Locale;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

/**
 * The launch rod or rail: how far it guides the rocket, how far it leans from the vertical and
 * towards where.
 */
public record Rod(Length guidedLength, Angle tilt, Bearing tiltToward) {
  /** Refuses a length not above zero and a tilt outside 0 to 89 degrees. */
  public Rod {
    RefusedInput.unless(
        guidedLength.metres() > 0,
        () ->
            String.format(
                Locale.ROOT,
                "Rod length %.3f m must be above zero; measure from the lug to the tip.",
                guidedLength.metres()));
    RefusedInput.unless(
        tilt.radians() >= 0 && tilt.inDegrees() <= 89,
        () ->
            String.format(
                Locale.ROOT,
                "Rod tilt %.1f° is outside 0 to 89° from the vertical.",
                tilt.inDegrees()));
  }

  /** A rod that stands straight up. */
  public static Rod vertical(Length guidedLength) {
    return new Rod(guidedLength, new Angle(0), new Bearing(0));
  }

  /** The unit vector along the rod. */
  Conditions.Lean lean() {
    double aside = Math.sin(tilt.radians());
    return new Conditions.Lean(
        aside * Math.sin(tiltToward.inRadians()),
        aside * Math.cos(tiltToward.inRadians()),
        Math.cos(tilt.radians()));
  }
}
