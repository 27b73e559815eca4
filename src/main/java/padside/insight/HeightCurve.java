package padside.insight;

import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Stage;

/**
 * How high one launch goes as its drag coefficient makes it, and how far its motors' scatter moves
 * that: flown at a few coefficients, interpolated between. The logarithm of the coefficient runs
 * from {@link #REACH} below that of the middle to as much above.
 */
final class HeightCurve {
  /** A factor of five. */
  static final double REACH = 1.6;

  private static final int KNOTS = 9;
  private static final double STEP = 2 * REACH / (KNOTS - 1);
  private static final Memo<Key, HeightCurve> FLOWN = new Memo<>(1000);

  private static final int MOTOR_KNOTS = (KNOTS + 1) / 2;
  private static final double MOTOR_STEP = 2 * REACH / (MOTOR_KNOTS - 1);

  private final double[] heightM = new double[KNOTS];
  private final double[] byMotorShare = new double[MOTOR_KNOTS];

  private record Key(Launch launch, double middle, double impulseShare) {
    Launch launch(double log) {
      return launch.withDrag(middle * Math.exp(log));
    }
  }

  private HeightCurve(Key key) {
    for (int i = 0; i < KNOTS; i++) {
      heightM[i] = Flight.highest(key.launch(-REACH + i * STEP), 1).metres();
    }
    double share = impulseShare(key.launch(), key.impulseShare());
    for (int i = 0; i < MOTOR_KNOTS; i++) {
      Launch launch = key.launch(-REACH + i * MOTOR_STEP);
      byMotorShare[i] =
          (Flight.highest(launch, 1 + share).metres() - Flight.highest(launch, 1 - share).metres())
              / 2
              / Math.max(1, heightM[2 * i]);
    }
  }

  /**
   * The curve of a launch, whatever its own drag coefficient is; flown once and kept.
   *
   * @param impulseShare one standard deviation of one motor's impulse
   */
  static HeightCurve of(Launch launch, double middle, double impulseShare) {
    return FLOWN.of(new Key(launch.withDrag(middle), middle, impulseShare), HeightCurve::new);
  }

  /** Of all motors together: motors and stages differ independently of each other. */
  private static double impulseShare(Launch launch, double ofOne) {
    double squares = 0;
    for (Stage stage : launch.stages()) {
      squares += Math.pow(stage.impulse().newtonSeconds() * ofOne, 2) / stage.count();
    }
    return Math.sqrt(squares) / launch.totalImpulse().newtonSeconds();
  }

  /** Height at a logarithm of the coefficient over the middle. */
  double heightM(double log) {
    double place = (log + REACH) / STEP;
    int first = Math.max(0, Math.min(KNOTS - 4, (int) Math.floor(place) - 1));
    return through(heightM, first, first + 4, place);
  }

  /** How much lower it goes for each unit that logarithm grows; not below zero. */
  double fallM(double log) {
    double low = Math.max(-REACH, log - STEP / 4);
    double high = Math.min(REACH, log + STEP / 4);
    return Math.max(0, (heightM(low) - heightM(high)) / (high - low));
  }

  /** One standard deviation of the height by the motors' scatter. */
  double byMotorM(double log) {
    return heightM(log) * through(byMotorShare, 0, MOTOR_KNOTS, (log + REACH) / MOTOR_STEP);
  }

  /** One standard deviation of what is measured at a drag that differs from flight to flight. */
  double sdM(double deviationM, double log, double spread) {
    double byMotor = byMotorM(log);
    double byDrag = spread * fallM(log);
    return Math.sqrt(deviationM * deviationM + byMotor * byMotor + byDrag * byDrag);
  }

  /** The polynomial through the knots from one to before another (Lagrange). */
  private static double through(double[] knots, int from, int to, double place) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      double term = knots[i];
      for (int j = from; j < to; j++) {
        term *= i == j ? 1 : (place - j) / (i - j);
      }
      sum += term;
    }
    return sum;
  }
}
