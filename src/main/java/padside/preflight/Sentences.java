package padside.preflight;

import java.util.Locale;
import padside.motor.MotorStack;
import padside.physics.Prediction;

/** What the check says in more than one place. */
final class Sentences {
  private Sentences() {}

  /** The motor cannot lift it off the rod. */
  static String tooHeavy(Prediction flight, Card card) {
    return String.format(
        Locale.ROOT,
        "At %.0f g lift-off mass the rocket is too heavy to leave the rod on a %s; choose a"
            + " stronger motor or check the mass.",
        flight.liftoffMass().inGrams(),
        card.motors().map(MotorStack::designation).orElse("motor of this size"));
  }
}
