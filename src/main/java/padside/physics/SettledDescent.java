package padside.physics;

/**
 * A descent under a canopy once the velocity through the air has nearly settled: it falls at the
 * terminal speed of each height and trails the changing wind a little. Time and drift are then
 * integrals over height alone, and no step need follow the fast decay towards that state.
 *
 * <p>With v the terminal speed and W the wind at height z, the speed beyond the wind is, to second
 * order in v²/(g z), (v²/g)(W' + (v²/g) W''): the horizontal equation of motion r' = -(g/v) r + W'
 * v solved by iteration. Near the ground, where that series fails, {@link LastMetres} or the
 * integrator take over.
 *
 * <p>What is not settled yet, r sideways and u downward, decays by r' = -(g/v) r (1 + u/v) and u' =
 * -(g/v)(2u + u²/v + r²/(2v)), the drag law to second order. Integrated to its end that carries the
 * rocket (v/g) r (1 - u/(3v)) sideways and (v/2g)(u - (u² + r²)/(4v)) down.
 *
 * <p>All worked out here from the equations of motion, no source. Tested against an integrator over
 * falls of 0.8 to 12 m/s in winds up to 10 m/s: down to the ground within 8 cm and 8 ms.
 */
final class SettledDescent {
  /** Distance left out at most, r³/(g v), by ending the series above. */
  private static final double LEFT_OUT_M = 5e-3;

  /** Lowest height, in units of v²/g; the next term of the series is 3 % of the first there. */
  private static final double LOWEST = 8;

  /** Five-point Gauss-Legendre rule on -1 to 1 (Abramowitz and Stegun 1964, table 25.4). */
  private static final double[] NODES = {
    -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664
  };

  private static final double[] WEIGHTS = {
    0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
  };

  private final Forces forces;
  private final LastMetres lastMetres;
  private final double[] state = new double[6];

  /** Velocity of the state last looked at beyond that of the settled fall, upward positive. */
  private double beyondEast;

  private double beyondNorth;
  private double beyondUp;
  private boolean landed;

  SettledDescent(Forces forces) {
    this.forces = forces;
    lastMetres = new LastMetres(forces);
  }

  /** Whether the descent from here to well above the ground is as good as settled. */
  boolean reached(double[] at) {
    double z = at[2];
    double fall = forces.terminalMps(z);
    if (z < 1.5 * floorM(fall)) {
      return false;
    }
    double trail = trail(z, fall);
    beyondEast = at[3] - forces.windEast(z) * (1 + trail);
    beyondNorth = at[4] - forces.windNorth(z) * (1 + trail);
    beyondUp = at[5] + settledMps(z, fall, trail);
    double square = sidewaysSquare() + beyondUp * beyondUp;
    double most = LEFT_OUT_M * forces.gravityMps2() * fall;
    return square * square * square < most * most;
  }

  /** Glides the state that was reached down to the floor or the ground; answers the seconds. */
  double glide(double[] from) {
    double fall = forces.terminalMps(from[2]);
    double decayS = fall / forces.gravityMps2();
    double aside = decayS * (1 + beyondUp / (3 * fall));
    double east = from[0] + aside * beyondEast;
    double north = from[1] + aside * beyondNorth;
    double square = sidewaysSquare() + beyondUp * beyondUp;
    double top = Math.log(from[2] + decayS / 2 * (beyondUp + square / (4 * fall)));
    double floor = floorM(forces.terminalMps(0));
    double half = (top - Math.log(floor)) / 2;
    double seconds = 0;
    for (int i = 0; i < NODES.length; i++) {
      double z = Math.exp(top + half * (NODES[i] - 1));
      double speed = forces.terminalMps(z);
      double trail = trail(z, speed);
      double spent = WEIGHTS[i] * half * z / settledMps(z, speed, trail);
      double drift = spent * (1 + trail);
      seconds += spent;
      east += drift * forces.windEast(z);
      north += drift * forces.windNorth(z);
    }
    return seconds + reachFloor(east, north, floor);
  }

  private double sidewaysSquare() {
    return beyondEast * beyondEast + beyondNorth * beyondNorth;
  }

  /** At the floor, and on to the ground where that needs no integrator; answers the seconds. */
  private double reachFloor(double east, double north, double floor) {
    double fall = forces.terminalMps(floor);
    double trail = trail(floor, fall);
    state[0] = east;
    state[1] = north;
    state[2] = floor;
    state[3] = forces.windEast(floor) * (1 + trail);
    state[4] = forces.windNorth(floor) * (1 + trail);
    state[5] = -settledMps(floor, fall, trail);
    landed = lastMetres.areSettled(floor);
    return landed ? lastMetres.fall(state) : 0;
  }

  /** The state at the floor or the ground after {@link #glide}. */
  double[] state() {
    return state;
  }

  /** Whether {@link #glide} went down to the ground. */
  boolean landed() {
    return landed;
  }

  private double floorM(double fall) {
    return Math.max(1.001 * forces.readingHeightM(), LOWEST * fall * fall / forces.gravityMps2());
  }

  /**
   * The settled fall w. Part of the airspeed is sideways, which slows it: w² sqrt(1 + s²) = v² for
   * a sideways share s, to its second order. The air thickens on the way down, and the fall is
   * still that of the thinner air above: w w' = g (w²/v² - 1), to first order in v²/g times v'/v.
   */
  private double settledMps(double z, double terminal, double trail) {
    double sideways = trail * forces.windMps(z) / terminal;
    double behind = terminal * terminal / forces.gravityMps2() * forces.terminalGrowthPerM(z);
    return terminal * (1 + behind / 2 - sideways * sideways / 4);
  }

  /** Speed beyond the wind, as a share of the wind, in the power law. */
  private double trail(double z, double fall) {
    double reach = fall * fall / (forces.gravityMps2() * z);
    return WindProfile.EXPONENT * reach * (1 - (1 - WindProfile.EXPONENT) * reach);
  }
}
