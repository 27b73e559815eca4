package padside.physics;

/**
 * The long middle of a descent under a canopy, where the velocity through the air has settled: it
 * falls at the terminal speed of each height and trails the changing wind a little. Time and drift
 * are then integrals over height alone, and no step need follow the fast decay towards that state.
 *
 * <p>With v the terminal speed and W the wind at height z, the speed beyond the wind is, to second
 * order in v²/(g z), (v²/g)(W' + (v²/g) W''): the horizontal equation of motion r' = -(g/v) r + W'
 * v solved by iteration. Near the ground, where that series fails, the integrator takes over again.
 */
final class SettledDescent {
  /** Distance still to be made up when the descent counts as settled. */
  private static final double LEFT_OVER_M = 2e-3;

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
  private final double[] state = new double[6];

  SettledDescent(Forces forces) {
    this.forces = forces;
  }

  /** Whether the descent from here to well above the ground is as good as settled. */
  boolean reached(double[] at) {
    double z = at[2];
    double fall = forces.terminalMps(z);
    if (z < 1.5 * floorM(fall)) {
      return false;
    }
    double trail = trail(z, fall);
    double dx = at[3] - forces.windEast(z) * (1 + trail);
    double dy = at[4] - forces.windNorth(z) * (1 + trail);
    double dz = at[5] + slowed(z, fall, trail);
    double off = Math.sqrt(dx * dx + dy * dy + dz * dz);
    return off * fall / forces.gravityMps2() < LEFT_OVER_M;
  }

  /** Glides a settled state down to the floor; answers the seconds it takes. */
  double glide(double[] from) {
    double top = Math.log(from[2]);
    double floor = floorM(forces.terminalMps(0));
    double half = (top - Math.log(floor)) / 2;
    double seconds = 0;
    double east = from[0];
    double north = from[1];
    for (int i = 0; i < NODES.length; i++) {
      double z = Math.exp(top + half * (NODES[i] - 1));
      double fall = forces.terminalMps(z);
      double trail = trail(z, fall);
      double spent = WEIGHTS[i] * half * z / slowed(z, fall, trail);
      double drift = spent * (1 + trail);
      seconds += spent;
      east += drift * forces.windEast(z);
      north += drift * forces.windNorth(z);
    }
    double fall = forces.terminalMps(floor);
    double trail = trail(floor, fall);
    state[0] = east;
    state[1] = north;
    state[2] = floor;
    state[3] = forces.windEast(floor) * (1 + trail);
    state[4] = forces.windNorth(floor) * (1 + trail);
    state[5] = -slowed(floor, fall, trail);
    return seconds;
  }

  /** The state at the floor after {@link #glide}. */
  double[] state() {
    return state;
  }

  private double floorM(double fall) {
    return Math.max(1.001 * forces.readingHeightM(), LOWEST * fall * fall / forces.gravityMps2());
  }

  /**
   * The fall that remains when part of the airspeed is sideways: fall² sqrt(1 + s²) = terminal² for
   * a sideways share s, to its second order.
   */
  private double slowed(double z, double terminal, double trail) {
    double sideways = trail * forces.windMps(z) / terminal;
    return terminal * (1 - sideways * sideways / 4);
  }

  /** Speed beyond the wind, as a share of the wind, in the power law. */
  private double trail(double z, double fall) {
    double reach = fall * fall / (forces.gravityMps2() * z);
    return WindProfile.EXPONENT * reach * (1 - (1 - WindProfile.EXPONENT) * reach);
  }
}
