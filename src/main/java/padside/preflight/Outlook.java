package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.insight.Confidence;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * The flight a card would make, as predicted for still hands and a steady wind.
 *
 * @param thrustToWeight average thrust over lift-off weight
 * @param apogee of the free flight, above the pad
 * @param top the highest point as flown
 * @param confidence what its interval, that of the drag and the larger areas of the spread hold
 * @param drag what the rocket's drag coefficient was taken as, and why
 * @param bestDelay from burnout to apogee of the free flight
 * @param descentRate near the ground; absent when nothing opens
 * @param bearingKnown false when the wind has no direction or a tilted rod leans nobody said where:
 *     both are then taken as north, and the landing's bearing means nothing
 * @param motorData how good the motor's numbers are, in words
 * @param densityAltitude height in the standard atmosphere where dry air is as thin as at the pad
 * @param path from ignition to the ground, points at equal times; empty where nobody draws it
 * @param spread where flights like it come to; absent while wind or recovery are not known
 * @param sun absent without coordinates of the field, without a time, and at night
 */
public record Outlook(
    Mass liftoffMass,
    Impulse totalImpulse,
    double thrustToWeight,
    Speed rodExitSpeed,
    Speed maxSpeed,
    Length burnoutAltitude,
    TimeSpan burnoutTime,
    Length apogee,
    TimeSpan timeToApogee,
    Top top,
    Confidence confidence,
    DragUsed drag,
    TimeSpan bestDelay,
    List<DelayFit> delays,
    Optional<Ejection> ejection,
    Optional<Speed> descentRate,
    TimeSpan flightTime,
    Bearing landingBearing,
    boolean bearingKnown,
    Length landingDistance,
    String motorData,
    Length densityAltitude,
    List<PathPoint> path,
    Optional<Spread> spread,
    Optional<InSun> sun) {

  /**
   * How one delay on sale would fit.
   *
   * @param error ejection minus apogee: negative is early
   * @param altitude above the pad when the charge fires
   * @param speed over the ground
   * @param airspeed through the air, which loads the canopy
   * @param safeShare share of scattered flights in which it fires in the air and at an advised
   *     airspeed, from 0 to 1; absent where no scatter was flown
   */
  public record DelayFit(
      String delay,
      TimeSpan error,
      Length altitude,
      Speed speed,
      Speed airspeed,
      Optional<Double> safeShare) {}

  /**
   * The highest point of the flight as flown: the apogee, unless the charge fires before.
   *
   * @param low with high holds as many flights like it as the confidence tells; absent where no
   *     scatter was flown
   * @param high as many go above this as stay below the other
   */
  public record Top(Length height, Optional<Length> low, Optional<Length> high) {}

  /** A point of the predicted path; east and north from the pad, height above it. */
  public record PathPoint(TimeSpan time, Length east, Length north, Length height) {}

  /**
   * The sun during the flight.
   *
   * @param azimuth true bearing of the sun
   * @param elevation above the horizon
   * @param stand bearing from the pad at which to stand so that the path keeps clear of the sun
   * @param standOff how far from the pad that is
   * @param clearance least angle between sun and path as seen from there
   * @param apogeeClearance angle between sun and apogee as seen from there
   */
  public record InSun(
      Bearing azimuth,
      Angle elevation,
      Bearing stand,
      Length standOff,
      Angle clearance,
      Angle apogeeClearance) {}

  /** Where and how fast the rocket is when the charge of the chosen delay fires. */
  public record Ejection(TimeSpan time, Length altitude, Speed speed, Speed airspeed) {}

  /** Keeps its own list. */
  public Outlook {
    delays = List.copyOf(delays);
    path = List.copyOf(path);
  }
}
