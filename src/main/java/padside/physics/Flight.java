package padside.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
    FlightPath path = FlightPath.planned(launch, gravityMps2);
    path.fly();
    return path.leftRod() ? flown(launch, path, gravityMps2) : held(launch, path, gravityMps2);
  }

  private static Prediction flown(Launch launch, FlightPath path, double gravityMps2) {
    Passage passage = path.passage();
    double best = passage.apogeeS() - path.burnoutS();
    double[] end = path.state();
    return new Prediction(
        launch.liftoffMass(),
        launch.totalImpulse(),
        thrustToWeight(launch, gravityMps2),
        true,
        new Speed(path.rodExitMps()),
        new Speed(passage.maxSpeedMps()),
        new Length(path.burnoutAltitudeM()),
        new TimeSpan(path.burnoutS()),
        new Length(passage.apogeeM()),
        new TimeSpan(passage.apogeeS()),
        new Length(path.highestM()),
        new TimeSpan(best),
        delays(launch, path, best),
        passage.ejectionState().map(s -> ejection(path, s)),
        new Speed(path.opens() ? path.terminalMps() : -end[5]),
        new TimeSpan(path.timeS()),
        new Prediction.Landing(new Length(end[0]), new Length(end[1]), new Speed(-end[5])),
        !path.opens(),
        path.impactUnderPower());
  }

  /** The rocket is too heavy for its motor and stays on the rod. */
  private static Prediction held(Launch launch, FlightPath path, double gravityMps2) {
    Length nowhere = new Length(0);
    Speed still = new Speed(0);
    TimeSpan none = new TimeSpan(0);
    return new Prediction(
        launch.liftoffMass(),
        launch.totalImpulse(),
        thrustToWeight(launch, gravityMps2),
        false,
        still,
        still,
        nowhere,
        new TimeSpan(path.burnoutS()),
        nowhere,
        none,
        nowhere,
        none,
        List.of(),
        Optional.empty(),
        still,
        none,
        new Prediction.Landing(nowhere, nowhere, still),
        false,
        false);
  }

  private static double thrustToWeight(Launch launch, double gravityMps2) {
    double weight = launch.liftoffMass().kilograms() * gravityMps2;
    Stage first = launch.stages().get(0);
    return first.count() * first.motor().curve().averageThrust().newtons() / weight;
  }

  /**
   * The highest point of a launch as flown in its mean wind: the apogee, unless its charge fires
   * before; zero when the rocket does not leave the rod.
   *
   * @param strength what the thrust of every motor is multiplied by
   */
  public static Length highest(Launch launch, double strength) {
    return new Length(
        new DragSearch(launch).highestM(launch.airframe().dragCoefficient(), strength));
  }

  /**
   * The drag coefficient with which a launch as flown in its mean wind goes as high as this,
   * whatever its own is. The highest point falls as drag grows.
   *
   * @return absent when even without drag it stays lower, or with the most drag goes higher
   */
  public static Optional<Double> dragReaching(Launch launch, Length highest) {
    return new DragSearch(launch).reaching(highest.metres());
  }

  /**
   * The path of the flight as flown, a point at every multiple of {@code interval} and the landing
   * last; the pad alone when the rocket does not leave the rod.
   */
  public static List<TrackPoint> track(Launch launch, TimeSpan interval) {
    RefusedInput.unless(
        interval.seconds() >= 0.001,
        () ->
            String.format(
                Locale.ROOT, "Track interval %.4f s is shorter than 0.001 s.", interval.seconds()));
    FlightPath path = FlightPath.planned(launch, STANDARD_GRAVITY_MPS2);
    Tracker tracker = new Tracker(interval.seconds());
    path.trackWith(tracker);
    path.fly();
    return path.leftRod()
        ? tracker.endingAt(path.timeS(), path.state())
        : new Tracker(1).endingAt(0, new double[6]);
  }

  private static List<Prediction.DelayFit> delays(Launch launch, FlightPath path, double best) {
    List<Prediction.DelayFit> fits = new ArrayList<>();
    for (int row = 0; row < launch.delaysOnSale().size(); row++) {
      TimeSpan delay = launch.delaysOnSale().get(row);
      Optional<double[]> fired = path.passage().fired(row);
      double[] state = fired.or(path.passage()::impactState).orElseThrow();
      fits.add(
          new Prediction.DelayFit(
              delay,
              new TimeSpan(delay.seconds() - best),
              fired.isPresent(),
              new Length(fired.isPresent() ? state[2] : 0),
              new Speed(Forces.speedMps(state)),
              new Speed(path.airspeedMps(state))));
    }
    return fits;
  }

  private static Prediction.Ejection ejection(FlightPath path, double[] state) {
    return new Prediction.Ejection(
        new TimeSpan(path.passage().ejectionS()),
        new Length(state[2]),
        new Speed(Forces.speedMps(state)),
        new Speed(path.airspeedMps(state)));
  }
}
