package padside.physics;

/** Flies one launch again and again, each time under conditions and with motors drawn anew. */
final class ScatteredFlights {
  /** A factor drawn this low or lower stands for nothing real. */
  private static final double LEAST_FACTOR = 0.05;

  /** A rod is never drawn nearer to the ground than this, as sine of its elevation: 1 degree. */
  private static final double LEAST_UP = Math.sin(Math.toRadians(1));

  private final Launch launch;
  private final Scatter scatter;
  private final Draws draws;
  private final Burn burn;
  private final Conditions planned;
  private final double windFromRadians;
  private final double downwindEast;
  private final double downwindNorth;

  ScatteredFlights(Launch launch, Scatter scatter, Draws draws) {
    this.launch = launch;
    this.scatter = scatter;
    this.draws = draws;
    burn = Burn.of(launch);
    planned = Conditions.planned(launch);
    windFromRadians = launch.wind().fromRadians();
    downwindEast = -Math.sin(windFromRadians);
    downwindNorth = -Math.cos(windFromRadians);
  }

  int flights() {
    return draws.flights();
  }

  /** One flight in a wind of this mean and gust from the launch's direction, flown to its end. */
  FlightPath fly(int flight, double meanMps, double gustMps) {
    FlightPath path =
        new FlightPath(
            launch,
            burn(flight),
            conditions(flight, meanMps, gustMps),
            Flight.STANDARD_GRAVITY_MPS2);
    path.fly();
    return path;
  }

  private Burn burn(int flight) {
    double[] strength = new double[launch.stages().size()];
    for (int i = 0; i < strength.length; i++) {
      double share = scatter.impulseShare() / Math.sqrt(launch.stages().get(i).count());
      strength[i] = factor(share, flight, Draws.FIRST_STAGE_IMPULSE + i);
    }
    return burn.strengthened(strength);
  }

  /** What one flight meets in a wind of this mean and gust. */
  Conditions conditions(int flight, double meanMps, double gustMps) {
    double mean =
        Math.max(0, meanMps * (1 + scatter.windShare() * draws.normal(flight, Draws.WIND)));
    double deviation = (gustMps - meanMps) / scatter.gustDeviations();
    double climb = Math.max(0, mean + deviation * draws.normal(flight, Draws.GUST));
    double from =
        windFromRadians + scatter.windDirection().radians() * draws.normal(flight, Draws.DIRECTION);
    return new Conditions(
        lean(
            scatter.rodTilt().radians() * draws.normal(flight, Draws.ROD_DOWNWIND),
            scatter.rodTilt().radians() * draws.normal(flight, Draws.ROD_ACROSS)),
        Conditions.Flow.from(climb, from),
        Conditions.Flow.from(mean, from),
        planned.dragAreaM2() * factor(scatter.dragShare(), flight, Draws.DRAG),
        planned.canopyDragAreaM2() * factor(scatter.canopyDragShare(), flight, Draws.CANOPY_DRAG),
        new Conditions.Lateness(
            draws.normal(flight, Draws.DELAY),
            scatter.delayShare(),
            scatter.leastDelayDeviation().seconds()));
  }

  private double factor(double share, int flight, int dimension) {
    return Math.max(LEAST_FACTOR, 1 + share * draws.normal(flight, dimension));
  }

  /**
   * The planned rod leaning further by two small angles in radians, about the axes of the wind. The
   * axes follow the rod by the shortest turn from the vertical (Rodrigues 1840), so that a rod and
   * a wind turned together lean the same.
   */
  private Conditions.Lean lean(double downwind, double across) {
    double angle = Math.hypot(downwind, across);
    if (angle == 0) {
      return planned.rod();
    }
    double aside = Math.sin(angle) / angle;
    double vx = aside * (downwind * downwindEast + across * downwindNorth);
    double vy = aside * (downwind * downwindNorth - across * downwindEast);
    double vz = Math.cos(angle);
    double ux = planned.rod().east();
    double uy = planned.rod().north();
    double uz = planned.rod().up();
    double along = (ux * vy - uy * vx) / (1 + uz);
    double east = vx * uz + ux * vz - uy * along;
    double north = vy * uz + uy * vz + ux * along;
    double up = vz * uz - ux * vx - uy * vy;
    return up >= LEAST_UP ? new Conditions.Lean(east, north, up) : lowest(east, north);
  }

  private static Conditions.Lean lowest(double east, double north) {
    double aside = Math.sqrt(1 - LEAST_UP * LEAST_UP) / Math.hypot(east, north);
    return new Conditions.Lean(aside * east, aside * north, LEAST_UP);
  }
}
