package padside.physics;

import java.util.Locale;
import padside.units.Impulse;
import padside.units.Mass;

/**
 * One or more equal motors lit together, and what falls off when they burn out. The stage above
 * lights at that moment, as a black-powder motor without delay lights the one on top of it.
 *
 * @param count how many of the motor burn side by side
 * @param dropped airframe that falls off at this stage's burnout, together with its empty cases;
 *     zero for the last stage, which keeps its cases
 */
public record Stage(Motor motor, int count, Mass dropped) {
  /** Refuses no motor at all and a negative mass. */
  public Stage {
    RefusedInput.unless(
        count >= 1, () -> "A stage needs at least one motor; %d given.".formatted(count));
    RefusedInput.unless(
        dropped.kilograms() >= 0,
        () ->
            String.format(
                Locale.ROOT,
                "The dropped part of the rocket cannot weigh %.2f g; weigh it or enter 0.",
                dropped.inGrams()));
  }

  /** A single motor under nothing that drops. */
  public static Stage of(Motor motor) {
    return cluster(motor, 1);
  }

  /** Equal motors side by side under nothing that drops. */
  public static Stage cluster(Motor motor, int count) {
    return new Stage(motor, count, new Mass(0));
  }

  /** Total impulse of all its motors. */
  public Impulse impulse() {
    return new Impulse(count * motor.curve().impulse().newtonSeconds());
  }

  /** All its motors at ignition, in kilograms. */
  double motorsKg() {
    return count * motor.totalMass().kilograms();
  }

  /** Propellant of all its motors, in kilograms. */
  double propellantKg() {
    return count * motor.propellantMass().kilograms();
  }

  /** What leaves at burnout when another stage is above: its airframe and its empty cases. */
  double shedKg() {
    return dropped.kilograms() + motorsKg() - propellantKg();
  }
}
