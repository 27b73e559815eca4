package padside.physics;

/**
 * The embedded Runge-Kutta pair 5(4) of Dormand and Prince (J. Comp. Appl. Math. 6 (1980) 19-26,
 * RK5(4)7M) with the fourth-order continuous extension of Hairer, Norsett and Wanner, Solving
 * Ordinary Differential Equations I (1993), section II.6. Six states, no allocation in a step.
 *
 * <p>A step is first tried and kept beside the state; the caller looks for events inside it and
 * then commits all of it or its beginning.
 */
final class DormandPrince {
  private static final int SIZE = 6;

  /** A state this near a level, in metres or metres per second, is on it. */
  private static final double LEVEL = 1e-9;

  /** Where to look for the side a step takes that starts on the level. */
  private static final double START = 1e-3;

  private static final FalsePosition CROSSING = new FalsePosition(LEVEL / 10, 1e-13, 60);

  private static final int MOST_STEPS = 200_000;

  private final Forces forces;
  private final double tolerance;
  private final double[] state = new double[SIZE];
  private final double[] trial = new double[SIZE];
  private double[] next = new double[SIZE];
  private double[] k1 = new double[SIZE];
  private final double[] k2 = new double[SIZE];
  private final double[] k3 = new double[SIZE];
  private final double[] k4 = new double[SIZE];
  private final double[] k5 = new double[SIZE];
  private final double[] k6 = new double[SIZE];
  private double[] k7 = new double[SIZE];
  private double time;
  private double taken;
  private double endTime;
  private double proposed;
  private int steps;

  /**
   * @param tolerance error allowed in one step, metres or metres per second, plus a thousandth of
   *     it for each metre or metre per second reached
   */
  DormandPrince(Forces forces, double tolerance) {
    this.forces = forces;
    this.tolerance = tolerance;
  }

  double time() {
    return time;
  }

  /** The state itself, to read; the integrator goes on owning it. */
  double[] state() {
    return state;
  }

  /** The state at the end of the tried step, to read. */
  double[] end() {
    return next;
  }

  /** Begins anew from a state under the forces of now; {@code step} is a first guess. */
  void restart(double t, double[] from, double step) {
    System.arraycopy(from, 0, state, 0, SIZE);
    time = t;
    proposed = step;
    resume();
  }

  /** Goes on from the same state after the forces have changed. */
  void resume() {
    forces.rates(time, state, k1);
  }

  /** Tries one step that ends at {@code until} or before, within the tolerance. */
  void tryStep(double until) {
    double h = Math.min(proposed, until - time);
    while (true) {
      if (++steps > MOST_STEPS) {
        throw new IllegalStateException("the flight does not converge at t = " + time);
      }
      stages(h);
      double error = error(h);
      double factor = Math.min(6, Math.max(0.2, 0.9 * Math.pow(error + 1e-12, -0.2)));
      if (error <= 1) {
        taken = h;
        boolean whole = h == until - time;
        endTime = whole ? until : time + h;
        proposed = whole ? Math.max(proposed, h * factor) : h * factor;
        return;
      }
      h *= Math.min(0.9, factor);
      proposed = h;
    }
  }

  /** Makes the end of the tried step the state. */
  void commit() {
    System.arraycopy(next, 0, state, 0, SIZE);
    time = endTime;
    double[] spare = k1;
    k1 = k7;
    k7 = spare;
  }

  /** Makes a point inside the tried step the state; {@link #resume} must follow. */
  void commitAt(double theta) {
    for (int i = 0; i < SIZE; i++) {
      trial[i] = within(theta, i);
    }
    System.arraycopy(trial, 0, state, 0, SIZE);
    time = timeAt(theta);
  }

  /** Time at a point inside the tried step. */
  double timeAt(double theta) {
    return theta == 1 ? endTime : time + theta * taken;
  }

  /** The point inside the tried step at a time, at its start or end when outside. */
  double pointAt(double t) {
    return Math.min(1, Math.max(0, (t - time) / taken));
  }

  /** Copies the whole state at a point inside the tried step. */
  double[] copyAt(double theta) {
    double[] copy = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      copy[i] = within(theta, i);
    }
    return copy;
  }

  /** Speed at a point inside the tried step. */
  double speedAt(double theta) {
    double vx = within(theta, 3);
    double vy = within(theta, 4);
    double vz = within(theta, 5);
    return Math.sqrt(vx * vx + vy * vy + vz * vz);
  }

  /** Half the rate of the squared speed at the start of the tried step. */
  double startGain() {
    return state[3] * k1[3] + state[4] * k1[4] + state[5] * k1[5];
  }

  /** Half the rate of the squared speed at the end of the tried step. */
  double endGain() {
    return next[3] * k7[3] + next[4] * k7[4] + next[5] * k7[5];
  }

  /** A state inside the tried step, {@code theta} from 0 at its start to 1 at its end. */
  double within(double theta, int i) {
    if (theta == 1) {
      return next[i];
    }
    double rise = next[i] - state[i];
    double start = taken * k1[i] - rise;
    double bend = rise - taken * k7[i] - start;
    double rest =
        taken
            * (-12715105075.0 / 11282082432.0 * k1[i]
                + 87487479700.0 / 32700410799.0 * k3[i]
                - 10690763975.0 / 1880347072.0 * k4[i]
                + 701980252875.0 / 199316789632.0 * k5[i]
                - 1453857185.0 / 822651844.0 * k6[i]
                + 69997945.0 / 29380423.0 * k7[i]);
    double back = 1 - theta;
    return state[i] + theta * (rise + back * (start + theta * (bend + back * rest)));
  }

  /**
   * Where in the tried step a state passes {@code level} for the last time; 1 when it does not. A
   * step that starts on the level counts as starting on the other side from its end.
   */
  double crossing(int i, double level) {
    double low = Math.abs(state[i] - level) < LEVEL ? START : 0;
    double high = 1;
    double atLow = within(low, i) - level;
    double atHigh = next[i] - level;
    if (atLow * atHigh >= 0) {
      return 1;
    }
    return CROSSING.root(
        theta -> within(theta, i) - level, new FalsePosition.Bracket(low, atLow, high, atHigh));
  }

  private void stages(double h) {
    for (int i = 0; i < SIZE; i++) {
      trial[i] = state[i] + h * 0.2 * k1[i];
    }
    forces.rates(time + 0.2 * h, trial, k2);
    for (int i = 0; i < SIZE; i++) {
      trial[i] = state[i] + h * (3.0 / 40 * k1[i] + 9.0 / 40 * k2[i]);
    }
    forces.rates(time + 0.3 * h, trial, k3);
    for (int i = 0; i < SIZE; i++) {
      trial[i] = state[i] + h * (44.0 / 45 * k1[i] - 56.0 / 15 * k2[i] + 32.0 / 9 * k3[i]);
    }
    forces.rates(time + 0.8 * h, trial, k4);
    for (int i = 0; i < SIZE; i++) {
      trial[i] =
          state[i]
              + h
                  * (19372.0 / 6561 * k1[i]
                      - 25360.0 / 2187 * k2[i]
                      + 64448.0 / 6561 * k3[i]
                      - 212.0 / 729 * k4[i]);
    }
    forces.rates(time + 8.0 / 9 * h, trial, k5);
    lastStages(h);
  }

  private void lastStages(double h) {
    for (int i = 0; i < SIZE; i++) {
      trial[i] =
          state[i]
              + h
                  * (9017.0 / 3168 * k1[i]
                      - 355.0 / 33 * k2[i]
                      + 46732.0 / 5247 * k3[i]
                      + 49.0 / 176 * k4[i]
                      - 5103.0 / 18656 * k5[i]);
    }
    forces.rates(time + h, trial, k6);
    for (int i = 0; i < SIZE; i++) {
      next[i] =
          state[i]
              + h
                  * (35.0 / 384 * k1[i]
                      + 500.0 / 1113 * k3[i]
                      + 125.0 / 192 * k4[i]
                      - 2187.0 / 6784 * k5[i]
                      + 11.0 / 84 * k6[i]);
    }
    forces.rates(time + h, next, k7);
  }

  /** Largest error of a state over what is allowed. */
  private double error(double h) {
    double worst = 0;
    for (int i = 0; i < SIZE; i++) {
      double error =
          h
              * (71.0 / 57600 * k1[i]
                  - 71.0 / 16695 * k3[i]
                  + 71.0 / 1920 * k4[i]
                  - 17253.0 / 339200 * k5[i]
                  + 22.0 / 525 * k6[i]
                  - 1.0 / 40 * k7[i]);
      double allowed = tolerance * (1 + 1e-3 * Math.abs(next[i]));
      worst = Math.max(worst, Math.abs(error) / allowed);
    }
    return worst;
  }
}
