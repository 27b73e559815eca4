package padside.physics;

import java.util.Locale;
import padside.units.Mass;

/**
 * A motor as the flight feels it. Total mass and propellant mass are those of the motor in hand;
 * the propellant leaves in proportion to the impulse delivered, the empty case stays aboard.
 */
public record Motor(ThrustCurve curve, Mass totalMass, Mass propellantMass) {
  /** Refuses a propellant mass below zero or not below the total. */
  public Motor {
    RefusedInput.unless(
        propellantMass.kilograms() >= 0 && propellantMass.kilograms() < totalMass.kilograms(),
        () ->
            String.format(
                Locale.ROOT,
                "Propellant of %.2f g does not fit a motor of %.2f g in total; check both masses.",
                propellantMass.inGrams(),
                totalMass.inGrams()));
  }
}
