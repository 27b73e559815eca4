package padside.physics;

import java.util.Locale;
import padside.units.Length;
import padside.units.Mass;

/**
 * The rocket without its motors, boosters that drop on the way included. The drag coefficient is
 * that at zero angle of attack on the frontal area of the body tube, the same while coasting as
 * under thrust and with or without a booster.
 */
public record Airframe(Mass massWithoutMotor, Length bodyDiameter, double dragCoefficient) {
  /** Refuses a mass or diameter not above zero and a negative drag coefficient. */
  public Airframe {
    RefusedInput.unless(
        massWithoutMotor.kilograms() > 0,
        say("Rocket mass %.2f g must be above zero; weigh it.", massWithoutMotor.inGrams()));
    RefusedInput.unless(
        bodyDiameter.metres() > 0,
        say("Body diameter %.2f mm must be above zero.", bodyDiameter.inMillimetres()));
    RefusedInput.unless(
        dragCoefficient >= 0 && dragCoefficient < 100,
        say("Drag coefficient %.2f must lie from 0 to 100; 0.75 is usual.", dragCoefficient));
  }

  /** The same rocket with another drag coefficient. */
  Airframe withDrag(double coefficient) {
    return new Airframe(massWithoutMotor, bodyDiameter, coefficient);
  }

  /** Drag coefficient times frontal area. */
  double dragAreaM2() {
    return dragCoefficient * frontalAreaM2();
  }

  double frontalAreaM2() {
    double diameter = bodyDiameter.metres();
    return Math.PI * diameter * diameter / 4;
  }

  private static String say(String sentence, double value) {
    return String.format(Locale.ROOT, sentence, value);
  }
}
