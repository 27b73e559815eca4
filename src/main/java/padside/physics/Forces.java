package padside.physics;

/**
 * The right-hand side of the equations of motion: x east, y north, z up and their rates, SI
 * throughout. A point mass under gravity, thrust and drag.
 *
 * <p>On the rod it moves along the rod alone and feels the air of its own motion only. Free, thrust
 * and drag act along the velocity relative to the air: a very stable rocket turns at once into the
 * relative wind. Under a canopy there is no thrust and the drag area is the canopy's.
 *
 * <p>Within one step the choice of rod or free flight and of the wind below or above the reading
 * height stays what it was, so that the integrand is smooth; the caller ends steps where they
 * change.
 */
final class Forces {
  /** Binomial series of (1 + d)^(1/7), first to seventh power. */
  private static final double W1 = WindProfile.EXPONENT;

  private static final double W2 = W1 * (W1 - 1) / 2;
  private static final double W3 = W2 * (W1 - 2) / 3;
  private static final double W4 = W3 * (W1 - 3) / 4;
  private static final double W5 = W4 * (W1 - 4) / 5;
  private static final double W6 = W5 * (W1 - 5) / 6;
  private static final double W7 = W6 * (W1 - 6) / 7;

  /** Share of a height within which the series is exact to 3e-7. */
  private static final double SERIES_REACH = 0.25;

  private static final double N = Air.densityExponent();
  private static final double C2 = N * (N - 1) / 2;
  private static final double C3 = C2 * (N - 2) / 3;
  private static final double C4 = C3 * (N - 3) / 4;
  private static final double C5 = C4 * (N - 4) / 5;
  private static final double C6 = C5 * (N - 5) / 6;

  private final Burn burn;
  private final double gravityMps2;
  private final double rodEast;
  private final double rodNorth;
  private final double rodUp;
  private final double airDensity;
  private final double thinningPerM;
  private final double readingHeightM;

  private Conditions.Flow flow;
  private double windEast;
  private double windNorth;
  private boolean calm;
  private double halfDragArea;
  private boolean onRod = true;
  private boolean aboveReading;

  /** A height and the power law there. */
  private double nearM;

  private double nearFactor = 1;
  private double startS;
  private double thrustN;
  private double slopeNps;
  private double massKg;
  private double kgPerNs;

  Forces(Launch launch, Burn burn, Conditions conditions, double gravityMps2) {
    this.burn = burn;
    this.gravityMps2 = gravityMps2;
    rodEast = conditions.rod().east();
    rodNorth = conditions.rod().north();
    rodUp = conditions.rod().up();
    airDensity = launch.air().density().kilogramsPerCubicMetre();
    thinningPerM = launch.air().thinningPerM();
    readingHeightM = launch.wind().readingHeight().metres();
    nearM = readingHeightM;
    halfDragArea = conditions.dragAreaM2() / 2;
    blow(conditions.climb());
    stretch(0);
  }

  /** Lets the air move so from now. */
  void blow(Conditions.Flow moves) {
    flow = moves;
    windEast = flow.eastMps();
    windNorth = flow.northMps();
    calm = windEast == 0 && windNorth == 0;
  }

  /** Takes thrust and mass from one stretch of the burn; the last is the coast. */
  void stretch(int i) {
    startS = burn.startS(i);
    thrustN = burn.thrustN(i);
    slopeNps = burn.slopeNps(i);
    massKg = burn.massKg(i);
    kgPerNs = burn.kgPerNs(i);
  }

  /** Opens the canopy: from now its drag alone, in the wind of the descent. */
  void open(Conditions conditions) {
    stretch(burn.stretches());
    halfDragArea = conditions.canopyDragAreaM2() / 2;
    blow(conditions.drift());
  }

  void leaveRod() {
    onRod = false;
  }

  void aboveReading(boolean above) {
    aboveReading = above;
  }

  boolean aboveReading() {
    return aboveReading;
  }

  double readingHeightM() {
    return readingHeightM;
  }

  double gravityMps2() {
    return gravityMps2;
  }

  /** Half density times drag coefficient times area, in kg/m, at a height. */
  double dragKgpm(double z) {
    return halfDragArea * airDensity * thinned(z);
  }

  /** Motion of the air at the reading height. */
  Conditions.Flow flow() {
    return flow;
  }

  boolean calm() {
    return calm;
  }

  /** Speed at which drag balances the coasting mass, falling at a height. */
  double terminalMps(double z) {
    return Math.sqrt(massKg * gravityMps2 / dragKgpm(z));
  }

  /** How much the terminal speed grows with height, as a share of itself: half of ρ'/ρ, negated. */
  double terminalGrowthPerM(double z) {
    return N / 2 * thinningPerM / (1 - thinningPerM * z);
  }

  double windMps(double z) {
    return Math.sqrt(windEast * windEast + windNorth * windNorth) * windFactor(z);
  }

  double windEast(double z) {
    return windEast * windFactor(z);
  }

  double windNorth(double z) {
    return windNorth * windFactor(z);
  }

  /** Upward part of the unit vector along the rod. */
  double rodUp() {
    return rodUp;
  }

  /** Distance or speed along the rod of a vector that starts at {@code first}. */
  double alongRod(double[] vector, int first) {
    return vector[first] * rodEast + vector[first + 1] * rodNorth + vector[first + 2] * rodUp;
  }

  /** Thrust less the weight along the rod, in newtons. */
  double liftN(double t) {
    double tau = t - startS;
    return thrustN + slopeNps * tau - massAt(tau) * gravityMps2 * rodUp;
  }

  /** Speed over the ground of a state. */
  static double speedMps(double[] state) {
    return Math.sqrt(state[3] * state[3] + state[4] * state[4] + state[5] * state[5]);
  }

  /** Writes the rates of {@code state} at time {@code t} into {@code slope}. */
  void rates(double t, double[] state, double[] slope) {
    double tau = t - startS;
    double thrust = thrustN + slopeNps * tau;
    double mass = massAt(tau);
    double vx = state[3];
    double vy = state[4];
    double vz = state[5];
    slope[0] = vx;
    slope[1] = vy;
    slope[2] = vz;
    double drag = dragKgpm(state[2]);
    if (onRod) {
      double speed = vx * rodEast + vy * rodNorth + vz * rodUp;
      double gain = (thrust - drag * speed * Math.abs(speed)) / mass - gravityMps2 * rodUp;
      slope[3] = gain * rodEast;
      slope[4] = gain * rodNorth;
      slope[5] = gain * rodUp;
      return;
    }
    double factor = windFactor(state[2]);
    double rx = vx - factor * windEast;
    double ry = vy - factor * windNorth;
    double airspeed = Math.sqrt(rx * rx + ry * ry + vz * vz);
    double push = airspeed > 0 ? (thrust / airspeed - drag * airspeed) / mass : 0;
    slope[3] = push * rx;
    slope[4] = push * ry;
    slope[5] = push * vz - gravityMps2;
  }

  private double massAt(double tau) {
    return massKg - kgPerNs * tau * (thrustN + slopeNps * tau / 2);
  }

  /**
   * Power law above the reading height, constant below: by its series around a height near by, as
   * the power function itself would cost more than the rest of a rate.
   */
  private double windFactor(double z) {
    if (calm || !aboveReading) {
      return 1;
    }
    double d = (z - nearM) / nearM;
    if (Math.abs(d) > SERIES_REACH) {
      // A trial stage may dip under the reading height; the clamp keeps the power defined there.
      nearM = Math.max(z, 0.1 * readingHeightM);
      nearFactor = Math.pow(nearM / readingHeightM, WindProfile.EXPONENT);
      return nearFactor;
    }
    return nearFactor
        * (1 + d * (W1 + d * (W2 + d * (W3 + d * (W4 + d * (W5 + d * (W6 + d * W7)))))));
  }

  /**
   * Density over that at the pad, (1 - x)^n with x = L z/T, by its binomial series to the sixth
   * power: exact within 1e-7 up to 11 km, where the power function would cost most of a step.
   */
  private double thinned(double z) {
    double x = thinningPerM * z;
    return 1 - x * (N - x * (C2 - x * (C3 - x * (C4 - x * (C5 - x * C6)))));
  }
}
