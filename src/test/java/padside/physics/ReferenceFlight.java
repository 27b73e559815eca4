package padside.physics;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/**
 * The same flight by other means: equations written anew from plain numbers, Hipparchus integrators
 * and its event location. It shares no code with the program.
 */
final class ReferenceFlight {
  private static final double G = 9.80665;
  private static final double R = 287.05287;
  private static final double LAPSE = 0.0065;
  private static final double FOREVER = 5000;

  private final Trial trial;
  private final ODEIntegrator integrator;
  private final List<Trial.Lit> stages;
  private int stage;
  private double litS;
  private double litKg;
  private boolean burning = true;
  private boolean canopy;

  double rodExitMps;
  double burnoutS;
  double burnoutM;
  double apogeeM;
  double apogeeS;
  double[] atEjection;
  double landingS;
  double[] atLanding;

  ReferenceFlight(Trial trial, ODEIntegrator integrator) {
    this.trial = trial;
    this.integrator = integrator;
    stages = trial.stages();
    litKg = trial.liftoffKg();
    burnoutS = stages.stream().mapToDouble(Trial.Lit::burnS).sum();
  }

  /** Flies it whole; the rocket must be able to leave the rod. */
  ReferenceFlight fly() {
    ODEState state = rod();
    rodExitMps = norm(state.getPrimaryState(), 3);
    while (burning && !grounded(state)) {
      for (double corner : lit().curveS()) {
        if (litS + corner > state.getTime() && !grounded(state)) {
          state = air(state, litS + corner);
        }
      }
      burnOut();
    }
    burnoutM = state.getPrimaryState()[2];
    if (!grounded(state)) {
      coast(state);
    } else {
      land(state);
    }
    return this;
  }

  private Trial.Lit lit() {
    return stages.get(stage);
  }

  /** Lights the next stage, from which the burnt one has fallen off; the last one coasts. */
  private void burnOut() {
    double left = lit().motorKg() - lit().propellantKg();
    litKg -= lit().count() * lit().propellantKg();
    litS += lit().burnS();
    if (stage + 1 < stages.size()) {
      litKg -= lit().count() * left + lit().droppedKg();
      stage++;
    } else {
      burning = false;
    }
  }

  private void coast(ODEState burnout) {
    ODEState state = air(burnout, burnoutS + trial.delayS());
    if (grounded(state)) {
      land(state);
      return;
    }
    atEjection = state.getPrimaryState();
    if (trial.chuteM() > 0) {
      if (apogeeS == 0) {
        air(state, FOREVER);
      }
      canopy = true;
    }
    land(air(state, FOREVER));
  }

  private void land(ODEState state) {
    landingS = state.getTime();
    atLanding = state.getPrimaryState();
  }

  /** Two states, distance along the rod and its rate. */
  private ODEState rod() {
    double up = Math.cos(Math.toRadians(trial.tiltDeg()));
    double start = liftOff(up);
    ODEState state = new ODEState(start, new double[2]);
    boolean[] out = {false};
    for (double corner : lit().curveS()) {
      if (corner > state.getTime() && !out[0]) {
        integrator.clearEventDetectors();
        integrator.addEventDetector(
            new Crossing(s -> s.getPrimaryState()[0] - trial.rodM(), s -> out[0] = true, true));
        state = integrator.integrate(new RodMotion(up), state, corner);
      }
    }
    if (!out[0]) {
      throw new IllegalArgumentException("still on the rod at burnout: " + trial);
    }
    double tilt = Math.toRadians(trial.tiltDeg());
    double toward = Math.toRadians(trial.tiltTowardDeg());
    double[] e = {
      Math.sin(tilt) * Math.sin(toward), Math.sin(tilt) * Math.cos(toward), Math.cos(tilt)
    };
    double s = state.getPrimaryState()[0];
    double v = state.getPrimaryState()[1];
    return new ODEState(
        state.getTime(), new double[] {s * e[0], s * e[1], s * e[2], v * e[0], v * e[1], v * e[2]});
  }

  /** The first time at which thrust carries the weight along the rod. */
  private double liftOff(double up) {
    UnivariateFunction spare = t -> thrust(t) - G * up * mass(t);
    double before = 0;
    for (double corner : lit().curveS()) {
      if (spare.value(corner) > 0) {
        return corner == 0 ? 0 : new BrentSolver(1e-12).solve(100, spare, before, corner);
      }
      before = corner;
    }
    throw new IllegalArgumentException("too heavy to leave the rod: " + trial);
  }

  private ODEState air(ODEState from, double until) {
    integrator.clearEventDetectors();
    integrator.addEventDetector(new Crossing(s -> s.getPrimaryState()[2], s -> {}, true));
    integrator.addEventDetector(
        new Crossing(s -> s.getPrimaryState()[2] - trial.readingHeightM(), s -> {}, false));
    if (!canopy && apogeeS == 0) {
      integrator.addEventDetector(new Crossing(s -> s.getPrimaryState()[5], this::top, false));
    }
    return integrator.integrate(new AirMotion(), from, until);
  }

  private void top(ODEStateAndDerivative state) {
    apogeeS = state.getTime();
    apogeeM = state.getPrimaryState()[2];
  }

  private static boolean grounded(ODEState state) {
    return state.getPrimaryState()[2] < 1e-6;
  }

  /** Of all motors of the stage that burns. */
  private double thrust(double t) {
    return burning ? lit().count() * thrustOfOne(t - litS) : 0;
  }

  private double thrustOfOne(double t) {
    List<Double> curveS = lit().curveS();
    List<Double> curveN = lit().curveN();
    int i = 1;
    while (i < curveS.size() - 1 && t > curveS.get(i)) {
      i++;
    }
    double w = (t - curveS.get(i - 1)) / (curveS.get(i) - curveS.get(i - 1));
    return (1 - w) * curveN.get(i - 1) + w * curveN.get(i);
  }

  private double mass(double t) {
    if (!burning) {
      return litKg;
    }
    double given = 0;
    List<Double> curveS = lit().curveS();
    for (int i = 1; i < curveS.size() && curveS.get(i - 1) < t - litS; i++) {
      double end = Math.min(t - litS, curveS.get(i));
      given += (end - curveS.get(i - 1)) * (lit().curveN().get(i - 1) + thrustOfOne(end)) / 2;
    }
    return litKg - lit().count() * lit().propellantKg() * given / lit().impulseNs();
  }

  private double density(double z) {
    double kelvins = trial.padK() - LAPSE * z;
    double pascals = trial.padPa() * Math.exp(G / (R * LAPSE) * Math.log(kelvins / trial.padK()));
    return pascals / (R * kelvins);
  }

  private double dragArea() {
    return canopy
        ? trial.chuteCd() * Math.PI / 4 * trial.chuteM() * trial.chuteM()
        : trial.cd() * Math.PI / 4 * trial.diameterM() * trial.diameterM();
  }

  private double wind(double z) {
    double zr = trial.readingHeightM();
    return z > zr ? trial.windMps() * Math.exp(Math.log(z / zr) / 7) : trial.windMps();
  }

  private static double norm(double[] v, int first) {
    return Math.sqrt(
        v[first] * v[first] + v[first + 1] * v[first + 1] + v[first + 2] * v[first + 2]);
  }

  private final class RodMotion implements OrdinaryDifferentialEquation {
    private final double up;

    RodMotion(double up) {
      this.up = up;
    }

    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      double drag = density(y[0] * up) * dragArea() * y[1] * y[1] / 2;
      return new double[] {y[1], (thrust(t) - drag) / mass(t) - G * up};
    }
  }

  private final class AirMotion implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return 6;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      double blows = Math.toRadians(trial.windFromDeg() + 180);
      double w = wind(y[2]);
      double[] air = {y[3] - w * Math.sin(blows), y[4] - w * Math.cos(blows), y[5]};
      double speed = norm(air, 0);
      double drag = density(y[2]) * dragArea() * speed * speed / 2;
      double force = ((canopy ? 0 : thrust(t)) - drag) / (mass(t) * speed);
      return new double[] {y[3], y[4], y[5], force * air[0], force * air[1], force * air[2] - G};
    }
  }

  /** A sign change that stops the integration or only restarts it. */
  private record Crossing(
      ToDoubleFunction<ODEStateAndDerivative> value,
      Consumer<ODEStateAndDerivative> seen,
      boolean stops)
      implements ODEEventDetector {
    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return AdaptableInterval.of(0.5);
    }

    @Override
    public int getMaxIterationCount() {
      return 200;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, 1e-11, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return (state, detector, increasing) -> {
        seen.accept(state);
        return stops ? Action.STOP : Action.RESET_DERIVATIVES;
      };
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return value.applyAsDouble(state);
    }
  }
}
