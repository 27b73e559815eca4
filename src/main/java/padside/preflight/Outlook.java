package padside.preflight;

import java.util.List;
import java.util.Optional;
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
 * @param bestDelay from burnout to apogee of the free flight
 * @param descentRate near the ground; absent when nothing opens
 * @param bearingKnown false when the wind has no direction or a tilted rod leans nobody said where:
 *     both are then taken as north, and the landing's bearing means nothing
 * @param motorData how good the motor's numbers are, in words
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
    TimeSpan bestDelay,
    List<DelayFit> delays,
    Optional<Ejection> ejection,
    Optional<Speed> descentRate,
    TimeSpan flightTime,
    Bearing landingBearing,
    boolean bearingKnown,
    Length landingDistance,
    String motorData) {

  /**
   * How one delay on sale would fit.
   *
   * @param error ejection minus apogee: negative is early
   * @param altitude above the pad when the charge fires
   * @param speed over the ground
   * @param airspeed through the air, which loads the canopy
   */
  public record DelayFit(
      String delay, TimeSpan error, Length altitude, Speed speed, Speed airspeed) {}

  /** Where and how fast the rocket is when the charge of the chosen delay fires. */
  public record Ejection(TimeSpan time, Length altitude, Speed speed, Speed airspeed) {}

  /** Keeps its own list. */
  public Outlook {
    delays = List.copyOf(delays);
  }
}
