package padside.physics;

import java.util.List;
import java.util.Optional;
import padside.units.Bearing;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * What one launch comes to. Times run from ignition, heights are above the pad, speeds are over the
 * ground unless the name says otherwise.
 *
 * @param totalImpulse of all motors of all stages
 * @param thrustToWeight average thrust of the first stage over lift-off weight
 * @param leftRod false when the rocket is too heavy for the motor; nothing after the rod is then
 *     computed: every later answer but burnout time is zero
 * @param maxSpeed largest speed up to apogee
 * @param burnoutAltitude at burnout of the last stage, as burnout is everywhere here; zero when the
 *     rocket hits the ground under power
 * @param apogee of the free flight, as if no ejection came first; so is {@code timeToApogee}
 * @param highest point of the flight as flown, which a charge before apogee ends
 * @param bestDelay apogee minus burnout of the free flight; negative when the path turns down
 *     before burnout
 * @param ejection empty when there is no delay or the ground comes first
 * @param descentRate steady rate under the recovery device near the ground; the vertical speed at
 *     impact when ballistic
 * @param ballistic nothing was open when it reached the ground
 * @param impactUnderPower it reached the ground before burnout
 */
public record Prediction(
    Mass liftoffMass,
    Impulse totalImpulse,
    double thrustToWeight,
    boolean leftRod,
    Speed rodExitSpeed,
    Speed maxSpeed,
    Length burnoutAltitude,
    TimeSpan burnoutTime,
    Length apogee,
    TimeSpan timeToApogee,
    Length highest,
    TimeSpan bestDelay,
    List<DelayFit> delays,
    Optional<Ejection> ejection,
    Speed descentRate,
    TimeSpan flightTime,
    Landing landing,
    boolean ballistic,
    boolean impactUnderPower) {
  /** Keeps its own copy of the table. */
  public Prediction {
    delays = List.copyOf(delays);
  }

  /**
   * How one delay on sale fits the free flight.
   *
   * @param error delay minus best delay: positive fires late, on the way down
   * @param firesInFlight false when the ground comes first; altitude is then zero and the speeds
   *     are those at impact
   * @param airspeed speed through the air, which loads the canopy
   */
  public record DelayFit(
      TimeSpan delay,
      TimeSpan error,
      boolean firesInFlight,
      Length altitude,
      Speed speed,
      Speed airspeed) {}

  /** The ejection charge firing: when, how high, how fast over ground and through the air. */
  public record Ejection(TimeSpan time, Length altitude, Speed speed, Speed airspeed) {}

  /** Where and how hard it comes down; the pad is the origin, verticalSpeed counts downward. */
  public record Landing(Length east, Length north, Speed verticalSpeed) {
    /** Straight line from the pad. */
    public Length distance() {
      return new Length(Math.hypot(east.metres(), north.metres()));
    }

    /** Direction from the pad; north when it lands on the pad itself. */
    public Bearing bearing() {
      return new Bearing(Math.toDegrees(Math.atan2(east.metres(), north.metres())));
    }
  }
}
