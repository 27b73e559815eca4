package padside.physics;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * The landings of every drawn flight in a row of rising winds, each level flown when it is first
 * needed; between them a parabola through the three nearest levels.
 *
 * <p>Levels stand closer in light winds, where a landing bends most: 0, 0.6, 1.3, 2.1, 3.0 ... m/s,
 * so close that the share of landings within a circle is right to 0.2 percentage points (tested). A
 * flight that at one of the three levels comes down in another way than at the others (nothing
 * opens before the ground, or it stays on the rod) bends sharply somewhere between and is flown
 * anew in the wind asked for.
 */
final class WindLevels {
  private static final double SCALE_MPS = 4;
  private static final double GROWTH = 1.15;
  private static final int AROUND = 3;

  private final ScatteredFlights flights;
  private final double meanPerTested;
  private final BooleanSupplier abandoned;
  private final double[] eastM;
  private final double[] northM;
  private Level[] levels = {};
  private int flown;

  /** What came of every flight at one level. */
  private static final class Level {
    final double[] eastM;
    final double[] northM;
    final byte[] outcome;

    Level(int flights) {
      eastM = new double[flights];
      northM = new double[flights];
      outcome = new byte[flights];
    }

    void keep(int flight, FlightPath path) {
      eastM[flight] = path.state()[0];
      northM[flight] = path.state()[1];
      outcome[flight] = (byte) ((path.leftRod() ? 1 : 0) + (path.opens() ? 2 : 0));
    }
  }

  WindLevels(ScatteredFlights flights, double meanPerTested, BooleanSupplier abandoned) {
    this.flights = flights;
    this.meanPerTested = meanPerTested;
    this.abandoned = abandoned;
    eastM = new double[flights.flights()];
    northM = new double[flights.flights()];
  }

  private static double levelMps(int level) {
    return SCALE_MPS * (Math.pow(GROWTH, level) - 1);
  }

  /** Finds the landings in a wind of this tested value. */
  void find(double testedMps) {
    int below = 0;
    while (levelMps(below + 1) <= testedMps) {
      below++;
    }
    double middleMps = (levelMps(below) + levelMps(below + 1)) / 2;
    int first = Math.max(0, testedMps < middleMps ? below - 1 : below);
    flyMissing(first, first + AROUND);
    double[] weights = weights(first, testedMps);
    for (int flight = 0; flight < eastM.length; flight++) {
      if (alike(first, flight)) {
        interpolate(first, weights, flight);
      } else {
        FlightPath path = fly(flight, testedMps);
        eastM[flight] = path.state()[0];
        northM[flight] = path.state()[1];
      }
    }
  }

  double eastM(int flight) {
    return eastM[flight];
  }

  double northM(int flight) {
    return northM[flight];
  }

  /** How many levels have been flown so far. */
  int flown() {
    return flown;
  }

  private void flyMissing(int from, int to) {
    if (to > levels.length) {
      levels = Arrays.copyOf(levels, to);
    }
    for (int i = from; i < to; i++) {
      if (levels[i] == null) {
        levels[i] = flyAll(levelMps(i));
        flown++;
      }
    }
  }

  private Level flyAll(double testedMps) {
    Level level = new Level(eastM.length);
    for (int flight = 0; flight < eastM.length; flight++) {
      level.keep(flight, fly(flight, testedMps));
    }
    return level;
  }

  private FlightPath fly(int flight, double testedMps) {
    if (abandoned.getAsBoolean()) {
      throw new CancellationException();
    }
    return flights.fly(flight, meanPerTested * testedMps, testedMps);
  }

  private boolean alike(int first, int flight) {
    byte outcome = levels[first].outcome[flight];
    for (int i = 1; i < AROUND; i++) {
      if (levels[first + i].outcome[flight] != outcome) {
        return false;
      }
    }
    return true;
  }

  private void interpolate(int first, double[] weights, int flight) {
    double east = 0;
    double north = 0;
    for (int i = 0; i < AROUND; i++) {
      Level level = levels[first + i];
      east += weights[i] * level.eastM[flight];
      north += weights[i] * level.northM[flight];
    }
    eastM[flight] = east;
    northM[flight] = north;
  }

  /** Lagrange's weights of the nearest levels. */
  private static double[] weights(int first, double testedMps) {
    double[] weights = new double[AROUND];
    Arrays.fill(weights, 1);
    for (int i = 0; i < AROUND; i++) {
      for (int j = 0; j < AROUND; j++) {
        if (i != j) {
          double other = levelMps(first + j);
          weights[i] *= (testedMps - other) / (levelMps(first + i) - other);
        }
      }
    }
    return weights;
  }
}
