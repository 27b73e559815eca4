package padside.physics;

import java.util.Locale;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.Wind;

/**
 * The mean wind at every height: as read up to the reading height, growing above it with height to
 * the power of 1/7 (neutral air over open land; not reliable behind obstacles, in unstable air or
 * at night). It blows along the ground only and keeps its direction.
 */
public record WindProfile(Wind wind, Length readingHeight) {
  /** A wind meter held up by hand; common practice, no source. */
  public static final Length HAND_HELD = new Length(2);

  /** The one-seventh power law for neutral air over open land: read in several texts. */
  static final double EXPONENT = 1.0 / 7.0;

  /** Refuses reading heights outside 0.1 to 100 m. */
  public WindProfile {
    double metres = readingHeight.metres();
    RefusedInput.unless(
        metres >= 0.1 && metres <= 100,
        () ->
            String.format(
                Locale.ROOT,
                "Wind reading height %.2f m is outside 0.1 to 100 m; check the unit.",
                metres));
  }

  /** The profile of a wind read by hand at 2 m. */
  public static WindProfile of(Wind wind) {
    return new WindProfile(wind, HAND_HELD);
  }

  /** No wind at all. */
  public static WindProfile calm() {
    return of(Wind.calm());
  }

  /**
   * Whether anybody noted where it comes from. If not, it is taken as from north: distances from a
   * vertical rod hold, bearings mean nothing.
   */
  public boolean directionKnown() {
    return wind.from().isPresent() || isCalm();
  }

  /** Mean speed at a height above the ground. */
  public Speed speedAt(Length height) {
    double ratio = Math.max(1, height.metres() / readingHeight.metres());
    return new Speed(meanMps() * Math.pow(ratio, EXPONENT));
  }

  private boolean isCalm() {
    return meanMps() == 0;
  }

  /** Motion of the air at the reading height. */
  Conditions.Flow flow() {
    return Conditions.Flow.from(meanMps(), fromRadians());
  }

  double meanMps() {
    return wind.mean().metresPerSecond();
  }

  /** Where it comes from, clockwise from north. */
  double fromRadians() {
    return wind.from().orElse(new Bearing(0)).inRadians();
  }
}
