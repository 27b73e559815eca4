package padside.insight;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.HypergeometricDistribution;

/**
 * How many of so many failed, each taken to fail by itself and alike, and what that says of the
 * rest. All intervals hold 95 in 100, whatever is set for predictions: no setting makes a lot look
 * safer than its failures say.
 */
public record Failures(int failed, int of) {
  /** What the ends of an interval mean. */
  public static final String HELD = "what 95 in 100 such intervals hold (Clopper and Pearson 1934)";

  /** How the words here are come by. */
  public static final String METHOD = HELD + ". Next: the chance by Jeffreys' prior.";

  private static final double TAIL = 0.025;

  /** Jeffreys' prior for a share (Brown, Cai and DasGupta 2001, section 3.1.2). */
  private static final double PRIOR = 0.5;

  /** Two tables whose chances differ by less are equally likely: the error of working them out. */
  private static final double ALIKE = 1 + 1e-7;

  /** Refuses more failures than tries. */
  public Failures {
    if (failed < 0 || failed > of) {
      throw new IllegalArgumentException(failed + " failures of " + of);
    }
  }

  /**
   * The share that fails by Clopper and Pearson 1934, Biometrika 26, 404-413: it holds the true
   * share at least as often as it says, whatever that share is.
   */
  public Interval exact() {
    double low = failed == 0 ? 0 : beta(failed, of - failed + 1.0, TAIL);
    double high = failed == of ? 1 : beta(failed + 1.0, of - failed, 1 - TAIL);
    return new Interval(low, high);
  }

  /**
   * The same by Jeffreys' prior, which holds the true share as often as it says on the average over
   * all shares (Brown, Cai and DasGupta 2001, Statistical Science 16, 101-133, equation 4); with no
   * failure it begins at 0, with failures only it ends at 1.
   */
  public Interval jeffreys() {
    double low = failed == 0 ? 0 : beta(failed + PRIOR, of - failed + PRIOR, TAIL);
    double high = failed == of ? 1 : beta(failed + PRIOR, of - failed + PRIOR, 1 - TAIL);
    return new Interval(low, high);
  }

  private static double beta(double one, double other, double share) {
    return BetaDistribution.of(one, other).inverseCumulativeProbability(share);
  }

  /**
   * The chance that the next so many all work, by Jeffreys' prior: the beta-binomial chance of no
   * failure (Gelman and others, Bayesian Data Analysis, 3rd ed. 2013, section 2.4 and table A.2).
   */
  public double allWork(int next) {
    double chance = 1;
    for (int i = 0; i < next; i++) {
      chance *= (of - failed + PRIOR + i) / (of + 2 * PRIOR + i);
    }
    return chance;
  }

  /** {@code Next: works 79 in 100, three in a row 55 in 100.} */
  public String next() {
    return "Next: works %s, three in a row %s."
        .formatted(new Chance(allWork(1)).inHundred(), new Chance(allWork(3)).inHundred());
  }

  /**
   * How likely chance alone makes two that fail alike differ at least as much as these: Fisher's
   * exact test (Fisher 1935, The Design of Experiments, section 2), two-sided by the sum over all
   * tables no likelier than this one.
   */
  public double chanceOfDiffering(Failures other) {
    int all = of + other.of;
    int failures = failed + other.failed;
    if (all == 0) {
      return 1;
    }
    HypergeometricDistribution tables = HypergeometricDistribution.of(all, failures, of);
    double most = ALIKE * tables.probability(failed);
    double sum = 0;
    for (int k = tables.getSupportLowerBound(); k <= tables.getSupportUpperBound(); k++) {
      double chance = tables.probability(k);
      sum += chance <= most ? chance : 0;
    }
    return Math.min(1, sum);
  }

  /**
   * How many failed and how many will, in words: {@code 1 of 6 burst (1 in 238 to 2 in 3)}, {@code
   * none of 24 failed (at most 1 in 7)}.
   *
   * @param verb what those that failed did
   */
  public String words(String verb) {
    Interval share = exact();
    String most = new Chance(share.high()).atMost();
    String least = new Chance(share.low()).atLeast();
    if (failed == 0) {
      return of == 0 ? "none told of yet" : "none of %d %s (at most %s)".formatted(of, verb, most);
    }
    return failed == of
        ? "%d of %d %s (at least %s)".formatted(failed, of, verb, least)
        : "%d of %d %s (%s to %s)".formatted(failed, of, verb, least, most);
  }
}
