package padside.physics;

/**
 * The end of a settled descent, some twenty metres in which the wind falls off towards the ground
 * faster than the canopy follows, in closed form.
 *
 * <p>With the fall speed v steady, the horizontal equation of motion X' = (g/v)(W - X) integrates
 * to a drift of ∫W dt + (v/g)(X at the start - X at the ground). ∫W dt is ∫W dz/v. X at the ground
 * is the wind met before, weighed by how long ago: ∫ e^-q W(q v²/g) dq. Both are worked out here
 * from that equation, no source. Tested against an integrator: within 8 cm, 8 ms and 2.5 cm/s.
 */
final class LastMetres {
  /** Largest trailing speed at the reading height as a share of the fall; its square slows it. */
  private static final double LARGEST_SIDEWAYS = 0.3;

  /** Three-point Gauss-Laguerre rule (Abramowitz and Stegun 1964, table 25.9). */
  private static final double[] NODES = {0.415774556783, 2.294280360279, 6.289945082937};

  private static final double[] WEIGHTS = {0.711093009929, 0.278517733569, 0.0103892565016};

  private final Forces forces;

  LastMetres(Forces forces) {
    this.forces = forces;
  }

  /** Whether the fall from this height is steady enough. */
  boolean areSettled(double height) {
    double fall = forces.terminalMps(height / 2);
    double sideways =
        WindProfile.EXPONENT
            * forces.flow().mps()
            * fall
            / (forces.gravityMps2() * forces.readingHeightM());
    return sideways < LARGEST_SIDEWAYS;
  }

  /** Moves a settled state to the ground; answers the seconds it takes. */
  double fall(double[] state) {
    double height = state[2];
    double fall = forces.terminalMps(height / 2);
    double decayS = fall / forces.gravityMps2();
    double reading = forces.readingHeightM();
    double factor = power(height / reading);
    double windS = (reading + (height * factor - reading) / (1 + WindProfile.EXPONENT)) / fall;
    double atGround = atGround(reading / (fall * decayS));
    state[0] += forces.flow().eastMps() * (windS - decayS * atGround) + decayS * state[3];
    state[1] += forces.flow().northMps() * (windS - decayS * atGround) + decayS * state[4];
    state[2] = 0;
    state[3] = forces.flow().eastMps() * atGround;
    state[4] = forces.flow().northMps() * atGround;
    state[5] = -forces.terminalMps(0);
    return height / fall;
  }

  /** Horizontal speed at the ground over the wind there; the reading height in units of v²/g. */
  private static double atGround(double reading) {
    double faster = 0;
    for (int i = 0; i < NODES.length; i++) {
      faster += WEIGHTS[i] * (power(1 + NODES[i] / reading) - 1);
    }
    return 1 + Math.exp(-reading) * faster;
  }

  private static double power(double heightPerReading) {
    return Math.pow(heightPerReading, WindProfile.EXPONENT);
  }
}
