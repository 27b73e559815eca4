package padside.insight;

/**
 * A chance in words: {@code 1 in 238}, {@code 2 in 3}. Where it ends an interval it is rounded
 * outward, so that the words never say more than is known.
 *
 * @param share from 0 to 1
 */
public record Chance(double share) {
  private static final double UP_TO_ONE_IN = 1.0 / 3;
  private static final double FROM_ALL_BUT_ONE = 0.9;
  private static final int LARGEST_OF = 10;

  /** Shares that differ by less are one: the error of working them out. */
  private static final double SAME = 1e-9;

  /** Refuses what is no share. */
  public Chance {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a chance of " + share);
    }
  }

  /** The nearest such words that are no less. */
  public String atMost() {
    if (share < SAME) {
      return "none";
    }
    if (share <= UP_TO_ONE_IN + SAME) {
      return "1 in " + (long) Math.floor(1 / share + SAME);
    }
    if (share > FROM_ALL_BUT_ONE) {
      return allButOneIn(Math.ceil(1 / (1 - share) - SAME));
    }
    return fraction(true);
  }

  /** The nearest such words that are no more. */
  public String atLeast() {
    if (share < SAME) {
      return "none";
    }
    if (share <= UP_TO_ONE_IN + SAME) {
      return "1 in " + (long) Math.ceil(1 / share - SAME);
    }
    if (share > FROM_ALL_BUT_ONE) {
      return allButOneIn(Math.floor(1 / (1 - share) + SAME));
    }
    return fraction(false);
  }

  private static String allButOneIn(double of) {
    return of > Long.MAX_VALUE ? "all" : (long) (of - 1) + " in " + (long) of;
  }

  /** The nearest fraction of few parts on one side. */
  private String fraction(boolean above) {
    int bestPart = above ? 1 : 0;
    int bestOf = 1;
    for (int of = 1; of <= LARGEST_OF; of++) {
      int part = (int) (above ? Math.ceil(of * share - SAME) : Math.floor(of * share + SAME));
      boolean closer = above ? part * bestOf < bestPart * of : part * bestOf > bestPart * of;
      if (closer) {
        bestPart = part;
        bestOf = of;
      }
    }
    return bestPart + " in " + bestOf;
  }

  /** To a hundredth: {@code 83 in 100}. */
  public String inHundred() {
    return Math.round(100 * share) + " in 100";
  }
}
