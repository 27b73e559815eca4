package padside.physics;

import java.util.List;
import java.util.Optional;
import padside.units.Length;
import padside.units.Mass;

/** Launches for the tests. */
final class Rockets {
  private static final double DENSITY = 1.225;

  private Rockets() {}

  /** A ballistic launch in still air of one density, drag given as k = ½ρCdA in kg/m. */
  static Launch launch(double liftoffKg, double kKgpm, Motor motor, Rod rod) {
    // A body of 1 m² frontal area makes Cd = 2k/ρ.
    Length diameter = new Length(Math.sqrt(4 / Math.PI));
    Mass mass = new Mass(liftoffKg - motor.totalMass().kilograms());
    return new Launch(
        new Airframe(mass, diameter, 2 * kKgpm / DENSITY),
        motor,
        rod,
        Air.uniform(new Density(DENSITY)),
        WindProfile.calm(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }
}
