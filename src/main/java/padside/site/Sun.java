package padside.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import padside.flight.Field;
import padside.units.Angle;
import padside.units.Bearing;

/**
 * Where the sun stands, as seen: lifted by the standard air at sea level, which in the air of any
 * field is right to a twentieth of a degree. I. Reda and A. Andreas, Solar position algorithm for
 * solar radiation applications, Solar Energy 76 (2004) 577–589.
 *
 * @param azimuth true bearing of its centre
 * @param elevation of its centre above the horizon, negative below
 */
public record Sun(Bearing azimuth, Angle elevation) {
  /** Standard atmosphere at sea level, ISO 2533. */
  private static final double PRESSURE_HPA = 1013.25;

  /** Standard atmosphere at sea level, ISO 2533. */
  private static final double TEMPERATURE_C = 15;

  /** From there its parallax, 9 seconds of arc at most, is all that height would change. */
  private static final double SEA_LEVEL_M = 0;

  /** The sun over a place at a moment. */
  public static Sun at(Field.Coordinates place, Instant moment) {
    SolarPosition position =
        SPA.calculateSolarPosition(
            moment.atZone(ZoneOffset.UTC),
            place.latitudeDeg(),
            place.longitudeDeg(),
            SEA_LEVEL_M,
            deltaT(moment.atZone(ZoneOffset.UTC).toLocalDate()),
            PRESSURE_HPA,
            TEMPERATURE_C);
    return new Sun(new Bearing(position.azimuth()), Angle.ofDegrees(90 - position.zenithAngle()));
  }

  /** Whether its centre stands above the horizon. */
  public boolean isUp() {
    return elevation.radians() > 0;
  }

  /** How far the uniform time of the heavens is ahead of UT, in seconds, as estimated. */
  static double deltaT(LocalDate date) {
    return DeltaT.estimate(date);
  }
}
