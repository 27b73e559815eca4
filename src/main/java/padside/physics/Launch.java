package padside.physics;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.units.Mass;
import padside.units.TimeSpan;

/**
 * One rocket on one motor on one rod in one air: all that decides a flight.
 *
 * @param delay burnout to ejection; empty for a plugged motor, which never ejects
 * @param recovery what opens at ejection; empty when nothing does
 * @param delaysOnSale the delays this motor is sold with, each answered in the delay table
 */
public record Launch(
    Airframe airframe,
    Motor motor,
    Rod rod,
    Air air,
    WindProfile wind,
    Optional<TimeSpan> delay,
    Optional<CanopyDrag> recovery,
    List<TimeSpan> delaysOnSale) {
  /** Refuses negative delays. */
  public Launch {
    delaysOnSale = List.copyOf(delaysOnSale);
    delay.ifPresent(Launch::requireDelay);
    delaysOnSale.forEach(Launch::requireDelay);
  }

  /** Rocket and motor together at ignition. */
  public Mass liftoffMass() {
    return new Mass(airframe.massWithoutMotor().kilograms() + motor.totalMass().kilograms());
  }

  /** The same launch in another wind. */
  public Launch withWind(WindProfile other) {
    return new Launch(airframe, motor, rod, air, other, delay, recovery, delaysOnSale);
  }

  private static void requireDelay(TimeSpan delay) {
    RefusedInput.unless(
        delay.seconds() >= 0 && delay.seconds() <= 60,
        String.format(
            Locale.ROOT, "Delay %.1f s is outside 0 to 60 s after burnout.", delay.seconds()));
  }
}
