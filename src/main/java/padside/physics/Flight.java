package padside.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/** Flies a launch and answers what it comes to. */
public final class Flight {
  /** Standard acceleration of gravity, ISO 80000-3, taken at every place and height. */
  public static final double STANDARD_GRAVITY_MPS2 = 9.80665;

  private Flight() {}

  /** Flies one launch in its mean wind. */
  public static Prediction predict(Launch launch) {
    return predict(launch, STANDARD_GRAVITY_MPS2);
  }

  /** Flies one launch under another gravity, as printed examples use. */
  static Prediction predict(Launch launch, double gravityMps2) {
    FlightPath path = new FlightPath(launch, gravityMps2);
    path.fly();
    Impulse impulse = launch.motor().curve().impulse();
    double weight = launch.liftoffMass().kilograms() * gravityMps2;
    double best = path.leftRod() ? path.apogeeS() - path.burnoutS() : 0;
    return new Prediction(
        launch.liftoffMass(),
        impulse,
        launch.motor().curve().averageThrust().newtons() / weight,
        path.leftRod(),
        new Speed(path.rodExitMps()),
        new Speed(path.maxSpeedMps()),
        new Length(path.burnoutAltitudeM()),
        new TimeSpan(path.burnoutS()),
        new Length(path.apogeeM()),
        new TimeSpan(path.apogeeS()),
        new TimeSpan(best),
        path.leftRod() ? delays(launch, path, best) : List.of(),
        path.ejectionState().map(s -> ejection(path, s)),
        descentRate(path),
        new TimeSpan(path.leftRod() ? path.timeS() : 0),
        landing(path),
        path.leftRod() && !path.opens(),
        path.impactUnderPower());
  }

  /**
   * The path of the flight as flown, a point at every multiple of {@code interval} and the landing
   * last; the pad alone when the rocket does not leave the rod.
   */
  public static List<TrackPoint> track(Launch launch, TimeSpan interval) {
    RefusedInput.unless(
        interval.seconds() >= 0.001,
        String.format(
            Locale.ROOT, "Track interval %.4f s is shorter than 0.001 s.", interval.seconds()));
    FlightPath path = new FlightPath(launch, STANDARD_GRAVITY_MPS2);
    Tracker tracker = new Tracker(interval.seconds());
    path.trackWith(tracker);
    path.fly();
    return path.leftRod()
        ? tracker.endingAt(path.timeS(), path.state())
        : new Tracker(1).endingAt(0, new double[6]);
  }

  private static List<Prediction.DelayFit> delays(Launch launch, FlightPath path, double best) {
    List<Prediction.DelayFit> fits = new ArrayList<>();
    for (TimeSpan delay : launch.delaysOnSale()) {
      Optional<double[]> fired = path.markAt(path.burnoutS() + delay.seconds());
      double[] state = fired.or(path::freeImpact).orElseThrow();
      fits.add(
          new Prediction.DelayFit(
              delay,
              new TimeSpan(delay.seconds() - best),
              fired.isPresent(),
              new Length(fired.isPresent() ? state[2] : 0),
              speed(state),
              new Speed(path.airspeedMps(state))));
    }
    return fits;
  }

  private static Prediction.Ejection ejection(FlightPath path, double[] state) {
    return new Prediction.Ejection(
        new TimeSpan(path.ejectionS()),
        new Length(state[2]),
        speed(state),
        new Speed(path.airspeedMps(state)));
  }

  private static Speed descentRate(FlightPath path) {
    return new Speed(path.opens() ? path.terminalMps() : -path.state()[5]);
  }

  private static Prediction.Landing landing(FlightPath path) {
    double[] state = path.state();
    return new Prediction.Landing(new Length(state[0]), new Length(state[1]), new Speed(-state[5]));
  }

  private static Speed speed(double[] state) {
    return new Speed(Math.sqrt(state[3] * state[3] + state[4] * state[4] + state[5] * state[5]));
  }
}
