package padside.physics;

import java.util.Optional;

/**
 * What the free flight passes on its way, read from each step without bending the path: largest
 * speed, apogee, the times of the delay table, ejection and the ground.
 */
final class Passage {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final double ejectionS;

  /** Times of the delay table, and the state at each once passed. */
  private final double[] tableS;

  private final double[][] tableStates;
  private int rowsLeft;
  private boolean topped;
  private double maxSpeedMps;
  private double apogeeEastM;
  private double apogeeNorthM;
  private double apogeeM;
  private double apogeeS;
  private double[] ejectionState = {};
  private double[] impactState = {};

  Passage(Launch launch, Conditions.Lateness lateness, double burnoutS) {
    ejectionS = launch.delay().map(d -> burnoutS + lateness.firesAfterS(d.seconds())).orElse(NEVER);
    tableS =
        launch.delaysOnSale().stream()
            .mapToDouble(d -> burnoutS + lateness.firesAfterS(d.seconds()))
            .toArray();
    tableStates = new double[tableS.length][];
    rowsLeft = tableS.length;
  }

  /** Whether the climb has ended. */
  boolean topped() {
    return topped;
  }

  /** Whether something asked for is still to come, unless the ground comes first. */
  boolean waits() {
    return !topped || rowsLeft > 0 || (ejectionS < NEVER && ejectionState.length == 0);
  }

  /** Looks through the tried step of a path up to {@code theta}, where it may land. */
  void look(DormandPrince path, double theta, boolean lands) {
    if (!topped) {
      lookForMaxSpeed(path, lookForApogee(path, theta));
    }
    double until = path.timeAt(theta);
    for (int row = 0; rowsLeft > 0 && row < tableS.length; row++) {
      if (tableS[row] <= until && tableStates[row] == null) {
        tableStates[row] = path.copyAt(path.pointAt(tableS[row]));
        rowsLeft--;
      }
    }
    if (ejectionS <= until && ejectionState.length == 0) {
      ejectionState = path.copyAt(path.pointAt(ejectionS));
    }
    if (lands) {
      impactState = path.copyAt(theta);
    }
  }

  /** Answers where the climb ends within the step: the apogee or the step's own end. */
  private double lookForApogee(DormandPrince path, double theta) {
    if (path.within(theta, 5) >= 0) {
      return theta;
    }
    double top = path.crossing(5, 0);
    topped = true;
    apogeeEastM = path.within(top, 0);
    apogeeNorthM = path.within(top, 1);
    apogeeM = path.within(top, 2);
    apogeeS = path.timeAt(top);
    return top;
  }

  /** The speed is stationary at its largest, so a straight line finds the place well enough. */
  private void lookForMaxSpeed(DormandPrince path, double theta) {
    maxSpeedMps = Math.max(maxSpeedMps, path.speedAt(theta));
    double start = path.startGain();
    double end = path.endGain();
    if (start > 0 && end < 0) {
      double peak = Math.min(theta, start / (start - end));
      maxSpeedMps = Math.max(maxSpeedMps, path.speedAt(peak));
    }
  }

  /**
   * The state of the free flight when the charge of a delay of the table fires; empty when the
   * ground came first.
   */
  Optional<double[]> fired(int row) {
    return Optional.ofNullable(tableStates[row]);
  }

  /** The state in which the free flight reaches the ground; empty unless it was flown so far. */
  Optional<double[]> impactState() {
    return present(impactState);
  }

  /** The state at ejection; empty when it never comes or the ground comes first. */
  Optional<double[]> ejectionState() {
    return present(ejectionState);
  }

  private static Optional<double[]> present(double[] state) {
    return state.length == 0 ? Optional.empty() : Optional.of(state);
  }

  /** Time of ejection, infinite without a delay. */
  double ejectionS() {
    return ejectionS;
  }

  /** Largest speed over the ground up to apogee. */
  double maxSpeedMps() {
    return maxSpeedMps;
  }

  double apogeeEastM() {
    return apogeeEastM;
  }

  double apogeeNorthM() {
    return apogeeNorthM;
  }

  double apogeeM() {
    return apogeeM;
  }

  double apogeeS() {
    return apogeeS;
  }
}
