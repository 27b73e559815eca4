package padside.physics;

import java.util.List;

/**
 * The burn as a row of stretches, in each of which thrust is a straight line in time; plain SI
 * numbers for the integrator. More motors or stages are more stretches, a dropped stage a fall in
 * the mass at the start of the next.
 */
final class Burn {
  private final int stretches;
  private final double[] startS;
  private final double[] thrustN;
  private final double[] slopeNps;
  private final double[] massKg;
  private final double kgPerNs;

  private Burn(ThrustCurve curve, double liftoffKg, double propellantKg) {
    List<ThrustCurve.Point> points = curve.points();
    stretches = points.size() - 1;
    startS = new double[stretches + 1];
    thrustN = new double[stretches + 1];
    slopeNps = new double[stretches + 1];
    massKg = new double[stretches + 1];
    kgPerNs = propellantKg / curve.impulse().newtonSeconds();
    massKg[0] = liftoffKg;
    for (int i = 0; i < stretches; i++) {
      ThrustCurve.Point a = points.get(i);
      ThrustCurve.Point b = points.get(i + 1);
      double span = b.seconds() - a.seconds();
      startS[i + 1] = b.seconds();
      thrustN[i] = a.newtons();
      slopeNps[i] = (b.newtons() - a.newtons()) / span;
      massKg[i + 1] = massKg[i] - kgPerNs * span * (a.newtons() + b.newtons()) / 2;
    }
  }

  /** The burn of a launch's motor, starting from its lift-off mass. */
  static Burn of(Launch launch) {
    Motor motor = launch.motor();
    return new Burn(
        motor.curve(), launch.liftoffMass().kilograms(), motor.propellantMass().kilograms());
  }

  int stretches() {
    return stretches;
  }

  /** Start of a stretch; the stretch numbered {@link #stretches()} is the coast. */
  double startS(int stretch) {
    return startS[stretch];
  }

  double endS(int stretch) {
    return startS[stretch + 1];
  }

  double burnoutS() {
    return startS[stretches];
  }

  double thrustN(int stretch) {
    return thrustN[stretch];
  }

  double slopeNps(int stretch) {
    return slopeNps[stretch];
  }

  double massKg(int stretch) {
    return massKg[stretch];
  }

  /** Propellant leaves in proportion to impulse delivered. */
  double kgPerNs() {
    return kgPerNs;
  }
}
