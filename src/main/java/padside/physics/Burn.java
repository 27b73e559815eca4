package padside.physics;

import java.util.List;

/**
 * The burn as a row of stretches, in each of which thrust is a straight line in time; plain SI
 * numbers for the integrator. Stages follow each other without a pause, a dropped stage is a fall
 * in the mass at the start of the next.
 */
final class Burn {
  private final int stretches;
  private final double[] startS;
  private final double[] thrustN;
  private final double[] slopeNps;
  private final double[] massKg;
  private final double[] kgPerNs;

  private Burn(int stretches) {
    this.stretches = stretches;
    startS = new double[stretches + 1];
    thrustN = new double[stretches + 1];
    slopeNps = new double[stretches + 1];
    massKg = new double[stretches + 1];
    kgPerNs = new double[stretches + 1];
  }

  /** The burn of a launch's motors, starting from its lift-off mass. */
  static Burn of(Launch launch) {
    int stretches = launch.stages().stream().mapToInt(Burn::stretches).sum();
    Burn burn = new Burn(stretches);
    burn.massKg[0] = launch.liftoffMass().kilograms();
    int next = 0;
    for (Stage stage : launch.stages()) {
      next = burn.append(next, stage);
      if (next < stretches) {
        burn.massKg[next] -= stage.shedKg();
      }
    }
    return burn;
  }

  private static int stretches(Stage stage) {
    return stage.motor().curve().points().size() - 1;
  }

  /** Fills in a stage from stretch {@code first}; answers the stretch after its last. */
  private int append(int first, Stage stage) {
    List<ThrustCurve.Point> points = stage.motor().curve().points();
    double litS = startS[first];
    double perNs = stage.propellantKg() / stage.impulse().newtonSeconds();
    int end = first + stretches(stage);
    for (int i = first; i < end; i++) {
      ThrustCurve.Point a = points.get(i - first);
      ThrustCurve.Point b = points.get(i - first + 1);
      double span = b.seconds() - a.seconds();
      double from = stage.count() * a.newtons();
      double to = stage.count() * b.newtons();
      startS[i + 1] = litS + b.seconds();
      thrustN[i] = from;
      slopeNps[i] = (to - from) / span;
      kgPerNs[i] = perNs;
      massKg[i + 1] = massKg[i] - perNs * span * (from + to) / 2;
    }
    return end;
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

  /** Burnout of the last stage. */
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
  double kgPerNs(int stretch) {
    return kgPerNs[stretch];
  }
}
