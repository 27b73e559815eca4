package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.junit.jupiter.api.Test;

/** The intervals against published rows, scipy 1.17 and another library. */
class FailuresTest {
  /** Limits as scipy 1.17 has them, from the beta distribution's quantiles. */
  private record Row(
      int failed, int of, double exactLow, double exactHigh, double jeffreysLow, double high) {}

  private static final List<Row> ROWS =
      List.of(
          new Row(0, 10, 0, 0.3084971, 0, 0.2171963),
          new Row(1, 10, 0.0025286, 0.4450161, 0.0110117, 0.3813148),
          new Row(2, 10, 0.0252107, 0.5560955, 0.0440594, 0.5027745),
          new Row(10, 10, 0.6915029, 1, 0.7828037, 1),
          new Row(0, 24, 0, 0.1424736, 0, 0.0983876),
          new Row(1, 24, 0.0010544, 0.2112017, 0.0045332, 0.1786949),
          new Row(4, 20, 0.0573340, 0.4366140, 0.0715201, 0.4082258),
          new Row(0, 25, 0, 0.1371852, 0, 0.0946828));

  @Test
  void intervals_are_those_of_scipy() {
    for (Row row : ROWS) {
      Failures failures = new Failures(row.failed, row.of);
      assertThat(failures.exact().low()).as("" + row).isCloseTo(row.exactLow, within(6e-8));
      assertThat(failures.exact().high()).as("" + row).isCloseTo(row.exactHigh, within(6e-8));
      assertThat(failures.jeffreys().low()).as("" + row).isCloseTo(row.jeffreysLow, within(6e-8));
      assertThat(failures.jeffreys().high()).as("" + row).isCloseTo(row.high, within(6e-8));
    }
  }

  /** Agresti, Categorical Data Analysis (from memory): none of 25, exact 95 % from 0 to 0.137. */
  @Test
  void none_of_25_is_as_agresti_has_it() {
    Interval share = new Failures(0, 25).exact();

    assertThat(share.low()).isZero();
    assertThat(share.high()).isCloseTo(0.137, within(0.0005));
  }

  /**
   * Brown, Cai and DasGupta 2001 (from memory): with no failure Jeffreys' interval begins at 0 and
   * ends at the 97.5 % quantile, with failures only the other way round.
   */
  @Test
  void at_the_ends_jeffreys_is_as_brown_cai_and_dasgupta_have_it() {
    for (int of = 1; of < 60; of++) {
      Interval none = new Failures(0, of).jeffreys();
      Interval all = new Failures(of, of).jeffreys();
      double high = new BetaDistribution(0.5, of + 0.5).inverseCumulativeProbability(0.975);

      assertThat(none.low()).isZero();
      assertThat(none.high()).isCloseTo(high, within(1e-6));
      assertThat(all.high()).isEqualTo(1);
      assertThat(all.low()).isCloseTo(1 - high, within(1e-6));
    }
  }

  /** The same quantiles by Hipparchus, whose default accuracy is 1e-9. */
  @Test
  void intervals_are_those_of_another_library() {
    for (int of = 1; of <= 40; of++) {
      for (int failed = 1; failed < of; failed++) {
        Failures failures = new Failures(failed, of);
        String which = failed + " of " + of;
        assertThat(failures.exact().low())
            .as(which)
            .isCloseTo(quantile(failed, of - failed + 1.0, 0.025), within(1e-6));
        assertThat(failures.exact().high())
            .as(which)
            .isCloseTo(quantile(failed + 1.0, of - failed, 0.975), within(1e-6));
        assertThat(failures.jeffreys().low())
            .as(which)
            .isCloseTo(quantile(failed + 0.5, of - failed + 0.5, 0.025), within(1e-6));
        assertThat(failures.jeffreys().high())
            .as(which)
            .isCloseTo(quantile(failed + 0.5, of - failed + 0.5, 0.975), within(1e-6));
      }
    }
  }

  private static double quantile(double one, double other, double share) {
    return new BetaDistribution(one, other).inverseCumulativeProbability(share);
  }

  /** Hanley and Lippman-Hand 1983 (from memory): the one-sided limit 1 - 0.05^(1/n) is near 3/n. */
  @Test
  void the_limit_with_no_failure_has_a_closed_form() {
    for (int of : new int[] {10, 24, 30, 50, 100, 300}) {
      assertThat(new Failures(0, of).exact().high())
          .isCloseTo(1 - Math.pow(0.025, 1.0 / of), within(1e-9));
    }
  }

  /** Against the sum over all that may be: the beta-binomial chance of k failures, k = 0. */
  @Test
  void the_chance_that_the_next_all_work_is_that_of_a_direct_sum() {
    for (int of : new int[] {0, 1, 6, 24}) {
      for (int failed = 0; failed <= of; failed += Math.max(1, of / 3)) {
        for (int next : new int[] {1, 2, 3, 7}) {
          double sum = 0;
          for (int k = 1; k <= next; k++) {
            sum += betaBinomial(k, next, failed + 0.5, of - failed + 0.5);
          }
          assertThat(new Failures(failed, of).allWork(next))
              .as("%d of %d, next %d", failed, of, next)
              .isCloseTo(1 - sum, within(1e-12));
        }
      }
    }
  }

  /** By the factors k choose from n times rising factorials, none of them by gamma functions. */
  private static double betaBinomial(int k, int n, double a, double b) {
    double chance = 1;
    for (int i = 0; i < k; i++) {
      chance *= (n - i) / (i + 1.0) * (a + i) / (a + b + i);
    }
    for (int i = 0; i < n - k; i++) {
      chance *= (b + i) / (a + b + k + i);
    }
    return chance;
  }

  /** Fisher 1935, The Design of Experiments: eight cups, 3-1/1-3 34 in 70, 4-0/0-4 2 in 70. */
  @Test
  void tasting_tea() {
    assertThat(chance(3, 4, 1, 4)).isCloseTo(34.0 / 70, within(1e-12));
    assertThat(chance(4, 4, 0, 4)).isCloseTo(2.0 / 70, within(1e-12));
    assertThat(chance(2, 4, 2, 4)).isCloseTo(1, within(1e-12));
    assertThat(chance(1, 4, 3, 4)).isCloseTo(34.0 / 70, within(1e-12));
  }

  private static double chance(int failed, int of, int otherFailed, int otherOf) {
    return new Failures(failed, of).chanceOfDiffering(new Failures(otherFailed, otherOf));
  }

  /** The sum over all tables by whole numbers, which has no rounding to be wrong about. */
  @Test
  void fishers_test_is_that_of_counting_tables() {
    Random random = new Random(11);
    for (int i = 0; i < 300; i++) {
      int of = 1 + random.nextInt(14);
      int otherOf = 1 + random.nextInt(14);
      int failed = random.nextInt(of + 1);
      int otherFailed = random.nextInt(otherOf + 1);
      long here = ways(of, failed) * ways(otherOf, otherFailed);
      long least = 0;
      long all = 0;
      for (int k = 0; k <= failed + otherFailed; k++) {
        long tables = ways(of, k) * ways(otherOf, failed + otherFailed - k);
        least += tables <= here ? tables : 0;
        all += tables;
      }
      assertThat(chance(failed, of, otherFailed, otherOf))
          .as("seed 11: %d of %d, %d of %d", failed, of, otherFailed, otherOf)
          .isCloseTo((double) least / all, within(1e-9));
    }
  }

  private static long ways(int of, int chosen) {
    if (chosen > of) {
      return 0;
    }
    long ways = 1;
    for (int i = 1; i <= chosen; i++) {
      ways = ways * (of - chosen + i) / i;
    }
    return ways;
  }

  @Test
  void nothing_beside_nothing_does_not_differ() {
    assertThat(chance(0, 0, 0, 0)).isEqualTo(1);
    assertThat(chance(0, 0, 1, 3)).isCloseTo(1, within(1e-12));
  }

  /**
   * Clopper and Pearson 1934: at least 95 of 100 intervals hold the true share, whatever it is.
   * Brown, Cai and DasGupta 2001: Jeffreys' do so on the average over all shares.
   */
  @Test
  void intervals_hold_the_true_share_as_often_as_they_say() {
    Random random = new Random(19340131);
    int trials = 40_000;
    for (int of : new int[] {6, 24}) {
      int exact = held(random, of, trials, Failures::exact);
      int jeffreys = held(random, of, trials, Failures::jeffreys);
      System.out.printf(
          "[trials] seed 19340131, lots of %d: exact %d, Jeffreys %d of %d held%n",
          of, exact, jeffreys, trials);
      // Three standard errors of a share of 0.95 in so many trials.
      double error = 3 * Math.sqrt(0.95 * 0.05 / trials);
      assertThat((double) exact / trials).isGreaterThan(0.95 - error);
      assertThat((double) jeffreys / trials).isCloseTo(0.95, within(0.02));
    }
  }

  private static int held(
      Random random, int of, int trials, Function<Failures, Interval> interval) {
    Interval[] all = new Interval[of + 1];
    for (int failed = 0; failed <= of; failed++) {
      all[failed] = interval.apply(new Failures(failed, of));
    }
    int held = 0;
    for (int i = 0; i < trials; i++) {
      double share = random.nextDouble();
      int failed = 0;
      for (int motor = 0; motor < of; motor++) {
        failed += random.nextDouble() < share ? 1 : 0;
      }
      held += all[failed].holds(share) ? 1 : 0;
    }
    return held;
  }

  /** Of 1 of 6: 0.00421 to 0.6412. */
  @Test
  void words_never_say_more_than_is_known() {
    assertThat(new Failures(1, 6).words("burst")).isEqualTo("1 of 6 burst (1 in 238 to 2 in 3)");
    assertThat(new Failures(0, 24).words("failed")).isEqualTo("none of 24 failed (at most 1 in 7)");
    assertThat(new Failures(3, 3).words("failed")).isEqualTo("3 of 3 failed (at least 1 in 4)");
    assertThat(new Failures(0, 0).words("failed")).isEqualTo("none told of yet");
  }

  @Test
  void more_failures_than_tries_are_refused() {
    assertThatThrownBy(() -> new Failures(2, 1)).hasMessage("2 failures of 1");
  }
}
