package padside.physics;

import java.util.Arrays;
import java.util.List;

/**
 * The burn as a row of stretches, in each of which thrust is a straight line in time; plain SI
 * numbers for the integrator. Stages follow each other without a pause, a dropped stage is a fall
 * in the mass at the start of the next.
 */
final class Burn {
  private final int stretches;
  private final int[] stage;
  private final double[] startS;
  private final double[] thrustN;
  private final double[] slopeNps;
  private final double[] massKg;
  private final double[] kgPerNs;

  private Burn(int stretches) {
    this.stretches = stretches;
    stage = new int[stretches];
    startS = new double[stretches + 1];
    thrustN = new double[stretches + 1];
    slopeNps = new double[stretches + 1];
    massKg = new double[stretches + 1];
    kgPerNs = new double[stretches + 1];
  }

  /** Another burn of the same length and masses. */
  private Burn(Burn like, double[] strength) {
    stretches = like.stretches;
    stage = like.stage;
    startS = like.startS;
    massKg = like.massKg;
    thrustN = like.thrustN.clone();
    slopeNps = like.slopeNps.clone();
    kgPerNs = like.kgPerNs.clone();
    for (int i = 0; i < stretches; i++) {
      double factor = strength[stage[i]];
      thrustN[i] *= factor;
      slopeNps[i] *= factor;
      kgPerNs[i] /= factor;
    }
  }

  /** The burn of a launch's motors, starting from its lift-off mass. */
  static Burn of(Launch launch) {
    int stretches = launch.stages().stream().mapToInt(Burn::stretches).sum();
    Burn burn = new Burn(stretches);
    burn.massKg[0] = launch.liftoffMass().kilograms();
    int next = 0;
    for (int number = 0; number < launch.stages().size(); number++) {
      Stage stage = launch.stages().get(number);
      int end = next + stretches(stage);
      Arrays.fill(burn.stage, next, end, number);
      burn.append(next, end, stage);
      if (end < stretches) {
        burn.massKg[end] -= stage.shedKg();
      }
      next = end;
    }
    return burn;
  }

  /**
   * The same burn with the thrust of each stage multiplied, a factor a stage; burn time and
   * propellant stay.
   */
  Burn strengthened(double[] strength) {
    return new Burn(this, strength);
  }

  private static int stretches(Stage stage) {
    return stage.motor().curve().points().size() - 1;
  }

  private void append(int first, int end, Stage stage) {
    List<ThrustCurve.Point> points = stage.motor().curve().points();
    double litS = startS[first];
    double perNs = stage.propellantKg() / stage.impulse().newtonSeconds();
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
