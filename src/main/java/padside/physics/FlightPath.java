package padside.physics;

import java.util.Optional;

/**
 * One flight carried through its phases: held on the pad, along the rod, boost, coast to apogee and
 * past the last delay asked for, and from ejection down to the ground. Plain SI numbers.
 */
final class FlightPath {
  /**
   * Error allowed in one step, in metres and metres per second. Over four thousand random flights
   * it keeps apogee within 0.006 % of the reference integrator, and landing within 6 cm or 0.13 %.
   */
  private static final double TOLERANCE = 1e-4;

  private static final double FIRST_STEP_S = 0.01;
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final double[] PAD = new double[6];

  private final Burn burn;
  private final Forces forces;
  private final DormandPrince path;
  private final SettledDescent settled;
  private final Conditions conditions;
  private final double rodLengthM;
  private final Passage passage;

  private int stretch;
  private boolean standing = true;
  private boolean leftRod;
  private boolean landed;
  private boolean descending;
  private boolean impactUnderPower;
  private double rodExitMps;
  private double burnoutAltitudeM;
  private double underCanopyM;
  private Optional<Tracker> tracker = Optional.empty();

  FlightPath(Launch launch, Burn burn, Conditions conditions, double gravityMps2) {
    this.burn = burn;
    this.conditions = conditions;
    forces = new Forces(launch, burn, conditions, gravityMps2);
    path = new DormandPrince(forces, TOLERANCE);
    settled = new SettledDescent(forces);
    rodLengthM = launch.rod().guidedLength().metres();
    passage = new Passage(launch, conditions.lateness(), burn.burnoutS());
  }

  /** The flight of a launch as planned. */
  static FlightPath planned(Launch launch, double gravityMps2) {
    return new FlightPath(launch, Burn.of(launch), Conditions.planned(launch), gravityMps2);
  }

  /** Shows every step of the flight as flown to {@code watcher}. */
  void trackWith(Tracker watcher) {
    tracker = Optional.of(watcher);
  }

  /** Flies from ignition to the ground, or nowhere when the rocket never leaves the rod. */
  void fly() {
    path.restart(0, PAD, FIRST_STEP_S);
    climbRod();
    if (!leftRod) {
      return;
    }
    boost();
    while (!landed && passage.waits()) {
      advance(NEVER);
    }
    if (opens()) {
      descend();
    }
    while (!landed) {
      advance(NEVER);
    }
  }

  /** Flies no further than it rises, or nowhere when the rocket never leaves the rod. */
  void climb() {
    path.restart(0, PAD, FIRST_STEP_S);
    climbRod();
    if (!leftRod) {
      return;
    }
    boost();
    while (!landed && !passage.topped()) {
      advance(NEVER);
    }
    if (opensOnTheWayUp()) {
      open();
      while (!landed && path.state()[5] > 0) {
        advance(NEVER);
      }
    }
  }

  /** On the pad and along the rod, until it leaves the rod or stays for good. */
  private void climbRod() {
    for (stretch = 0; stretch < burn.stretches(); stretch++) {
      double end = burn.endS(stretch);
      forces.stretch(stretch);
      path.resume();
      while (path.time() < end && !leftRod) {
        if (standing) {
          liftOff(end);
        } else {
          slide(end);
        }
      }
      if (leftRod) {
        return;
      }
    }
    burnOut();
    while (!standing && !leftRod) {
      slide(NEVER);
    }
  }

  /** Waits on the pad until thrust exceeds the weight along the rod, to the end at most. */
  private void liftOff(double end) {
    double low = path.time();
    double high = end;
    if (forces.liftN(low) > 0) {
      high = low;
    } else if (forces.liftN(end) > 0) {
      while (high - low > 1e-12) {
        double middle = (low + high) / 2;
        if (forces.liftN(middle) > 0) {
          high = middle;
        } else {
          low = middle;
        }
      }
    }
    standing = high >= end;
    path.restart(high, PAD, FIRST_STEP_S);
  }

  /** One step along the rod; a rocket that comes to rest on it stands on the pad again. */
  private void slide(double end) {
    path.tryStep(end);
    double reached = forces.alongRod(path.end(), 0);
    if (reached >= rodLengthM) {
      leaveRod();
    } else if (forces.alongRod(path.end(), 3) <= 0) {
      standing = true;
      path.restart(path.timeAt(1), PAD, FIRST_STEP_S);
    } else {
      look(1);
      path.commit();
    }
  }

  private void leaveRod() {
    double theta = path.crossing(2, rodLengthM * forces.rodUp());
    look(theta);
    path.commitAt(theta);
    leftRod = true;
    rodExitMps = forces.alongRod(path.state(), 3);
    forces.leaveRod();
    forces.aboveReading(path.state()[2] > forces.readingHeightM());
    path.resume();
  }

  private void boost() {
    while (stretch < burn.stretches()) {
      double end = burn.endS(stretch);
      while (path.time() < end && !landed) {
        advance(end);
      }
      if (landed) {
        impactUnderPower = true;
        return;
      }
      stretch++;
      if (stretch < burn.stretches()) {
        forces.stretch(stretch);
        path.resume();
      } else {
        burnOut();
      }
    }
  }

  private void burnOut() {
    burnoutAltitudeM = path.state()[2];
    forces.stretch(burn.stretches());
    path.resume();
  }

  private void open() {
    landed = false;
    descending = true;
    forces.open(conditions);
    double[] ejected = passage.ejectionState().orElseThrow();
    underCanopyM = ejected[2];
    forces.aboveReading(ejected[2] > forces.readingHeightM());
    path.restart(passage.ejectionS(), ejected, FIRST_STEP_S);
  }

  /** From ejection down under the device. */
  private void descend() {
    open();
    while (!landed) {
      if (tracker.isEmpty() && settled.reached(path.state())) {
        double seconds = settled.glide(path.state());
        path.restart(path.time() + seconds, settled.state(), FIRST_STEP_S);
        landed = settled.landed();
      }
      if (!landed) {
        advance(NEVER);
      }
    }
  }

  /** One step through the air, ended early where the wind law changes and at the ground. */
  private void advance(double until) {
    path.tryStep(until);
    double z = path.end()[2];
    boolean above = forces.aboveReading();
    boolean turns = !forces.calm() && above != (z > forces.readingHeightM());
    landed = z < 0 && !turns;
    double theta = 1;
    if (turns) {
      theta = path.crossing(2, forces.readingHeightM());
    } else if (landed) {
      theta = path.crossing(2, 0);
    }
    look(theta);
    if (theta == 1) {
      path.commit();
    } else {
      path.commitAt(theta);
    }
    if (turns) {
      forces.aboveReading(!above);
      path.resume();
    }
  }

  /** Reads from the tried step, up to {@code theta}, what it passes. */
  private void look(double theta) {
    if (tracker.isPresent()) {
      tracker.orElseThrow().look(path, Math.min(path.timeAt(theta), trackEnd()));
    }
    if (!descending) {
      passage.look(path, theta, landed);
    } else if (path.state()[5] > 0) {
      double top = path.within(theta, 5) < 0 ? path.crossing(5, 0) : theta;
      underCanopyM = Math.max(underCanopyM, path.within(top, 2));
    }
  }

  private double trackEnd() {
    return descending || conditions.canopyDragAreaM2() == 0 ? NEVER : passage.ejectionS();
  }

  /** Whether a device opens before the ground. */
  boolean opens() {
    return conditions.canopyDragAreaM2() > 0 && passage.ejectionState().isPresent();
  }

  private boolean opensOnTheWayUp() {
    return opens() && passage.ejectionS() < passage.apogeeS();
  }

  /**
   * The highest point of the flight as flown: the apogee, unless a device opens before it. Zero for
   * a rocket that never left the rod.
   */
  double highestM() {
    return opensOnTheWayUp() ? underCanopyM : passage.apogeeM();
  }

  /** Speed of a state of the free flight through the air around it. */
  double airspeedMps(double[] state) {
    forces.blow(conditions.climb());
    forces.aboveReading(state[2] > forces.readingHeightM());
    double dx = state[3] - forces.windEast(state[2]);
    double dy = state[4] - forces.windNorth(state[2]);
    return Math.sqrt(dx * dx + dy * dy + state[5] * state[5]);
  }

  /** Terminal speed under the open canopy, or of the falling rocket, in the air at the pad. */
  double terminalMps() {
    return forces.terminalMps(0);
  }

  /** What the free flight passed. */
  Passage passage() {
    return passage;
  }

  boolean leftRod() {
    return leftRod;
  }

  boolean impactUnderPower() {
    return impactUnderPower;
  }

  double rodExitMps() {
    return rodExitMps;
  }

  double burnoutAltitudeM() {
    return burnoutAltitudeM;
  }

  double burnoutS() {
    return burn.burnoutS();
  }

  /** Time of landing once flown. */
  double timeS() {
    return path.time();
  }

  /** The state at landing once flown. */
  double[] state() {
    return path.state();
  }
}
