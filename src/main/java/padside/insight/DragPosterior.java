package padside.insight;

import java.util.List;

/**
 * What is to be believed of a drag coefficient and of how it differs from flight to flight, weighed
 * on a grid: Bayes' rule, the coefficient's logarithm normal about the middle beforehand, the
 * difference from flight to flight half-normal (Gelman, Bayesian Analysis 1 (2006) 515-534), each
 * altitude normal about the flight model's. The grid stands in for formulas since altitude does not
 * fall evenly with drag.
 */
final class DragPosterior {
  private static final int POINTS = 161;
  private static final double STEP = 2 * HeightCurve.REACH / (POINTS - 1);
  private static final int SPREADS = 12;

  /** Of the usual size: the half-normal's largest value looked at. */
  private static final double WIDEST = 3;

  /** Some altitude between a twentieth of the one noted and twenty times that. */
  private static final double ODD_DENSITY = Math.sqrt(2 * Math.PI) / (2 * Math.log(20));

  private final DragModel model;

  /** Of each pair, the coefficient's point first. */
  private final double[] weights = new double[POINTS * SPREADS];

  /** One flight's measured altitude. */
  record Reading(HeightCurve curve, double altitudeM, double deviationM) {}

  private DragPosterior(DragModel model) {
    this.model = model;
    for (int point = 0; point < POINTS; point++) {
      double deviations = log(point) / model.priorShare();
      for (int i = 0; i < SPREADS; i++) {
        double sizes = spread(i) / model.flightShare();
        weights[point * SPREADS + i] = -deviations * deviations / 2 - sizes * sizes / 2;
      }
    }
  }

  /** Every reading counts in full. */
  static DragPosterior of(DragModel model, List<Reading> readings) {
    DragPosterior posterior = new DragPosterior(model);
    readings.forEach(reading -> posterior.weigh(reading, false));
    posterior.normalise();
    return posterior;
  }

  /** Any reading may be a mistake that says nothing. */
  static DragPosterior doubting(DragModel model, List<Reading> readings) {
    DragPosterior posterior = new DragPosterior(model);
    readings.forEach(reading -> posterior.weigh(reading, true));
    posterior.normalise();
    return posterior;
  }

  private void weigh(Reading reading, boolean doubted) {
    for (int point = 0; point < POINTS; point++) {
      Expected expected = new Expected(reading, log(point));
      for (int i = 0; i < SPREADS; i++) {
        double sd = expected.sdM(spread(i));
        double z = expected.missM / sd;
        double likely = -z * z / 2 - Math.log(sd);
        weights[point * SPREADS + i] +=
            doubted ? Math.log((1 - model.oddShare()) * Math.exp(likely) + odd(reading)) : likely;
      }
    }
  }

  private double odd(Reading reading) {
    return model.oddShare() * ODD_DENSITY / reading.altitudeM();
  }

  /** How far a reading is from the flight model at one coefficient, and what may explain it. */
  private record Expected(double missM, double apartFromDragM2, double fallM) {
    Expected(Reading reading, double log) {
      this(
          reading.altitudeM() - reading.curve().heightM(log),
          square(reading.deviationM()) + square(reading.curve().byMotorM(log)),
          reading.curve().fallM(log));
    }

    private static double square(double value) {
      return value * value;
    }

    double sdM(double spread) {
      return Math.sqrt(apartFromDragM2 + square(spread * fallM));
    }
  }

  /** Makes of logarithms shares that add up to one. */
  private void normalise() {
    double most = Double.NEGATIVE_INFINITY;
    for (double weight : weights) {
      most = Math.max(most, weight);
    }
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = Math.exp(weights[i] - most);
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
  }

  /** The probability that a reading of those doubted is a mistake. */
  double mistaken(Reading reading) {
    double sum = 0;
    for (int point = 0; point < POINTS; point++) {
      Expected expected = new Expected(reading, log(point));
      for (int i = 0; i < SPREADS; i++) {
        double sd = expected.sdM(spread(i));
        double z = expected.missM / sd;
        double meant = (1 - model.oddShare()) * Math.exp(-z * z / 2) / sd;
        sum += weights[point * SPREADS + i] * odd(reading) / (odd(reading) + meant);
      }
    }
    return sum;
  }

  /** The logarithm of the coefficient over the middle that it is below so many times of one. */
  double quantile(double share) {
    double below = 0;
    for (int point = 0; point < POINTS; point++) {
      double here = share(point);
      if (below + here >= share) {
        return log(point) + STEP * ((share - below) / here - 0.5);
      }
      below += here;
    }
    return HeightCurve.REACH;
  }

  /** One standard deviation of that logarithm. */
  double deviation() {
    double mean = 0;
    double square = 0;
    for (int point = 0; point < POINTS; point++) {
      mean += share(point) * log(point);
      square += share(point) * log(point) * log(point);
    }
    return Math.sqrt(Math.max(0, square - mean * mean));
  }

  /** From flight to flight: the root of the mean square. */
  double spread() {
    double square = 0;
    for (int k = 0; k < weights.length; k++) {
      square += weights[k] * spread(k % SPREADS) * spread(k % SPREADS);
    }
    return Math.sqrt(square);
  }

  private double share(int point) {
    double share = 0;
    for (int i = 0; i < SPREADS; i++) {
      share += weights[point * SPREADS + i];
    }
    return share;
  }

  private static double log(int point) {
    return -HeightCurve.REACH + point * STEP;
  }

  private double spread(int i) {
    return model.flightShare() * WIDEST * (i + 0.5) / SPREADS;
  }
}
