package padside.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.flight.Ruling.Verdict;
import padside.units.Length;
import padside.units.Speed;
import padside.units.UnitSystem;

/** The flier's own limits narrow the rules and never widen them. */
class OwnLimitsTest {
  @Test
  void the_fliers_own_limits_bind_where_they_are_narrower() {
    Draft draft = new Draft();
    draft.own = own(200, 31, 6.5);

    assertThat(FindingsTest.told("us-model", draft))
        .contains(
            "own ceiling | NO-GO | apogee 820 ft, own ceiling 656 ft | set by the flier",
            "rod-exit speed | NO-GO | rod-exit speed 98.4 ft/s, at least 102 ft/s | set by the flier",
            "thrust-to-weight | NO-GO | thrust-to-weight 6, at least 6.5 | set by the flier");

    draft.apogee = Optional.empty();
    assertThat(FindingsTest.told("us-model", draft))
        .contains("own ceiling | UNKNOWN | apogee is not known | set by the flier");
  }

  @Test
  void own_limits_wider_than_the_rules_change_nothing() {
    Draft draft = new Draft();
    List<String> without = FindingsTest.told("us-model", draft);
    draft.own = own(250, 8, 1);

    assertThat(FindingsTest.told("us-model", draft))
        .containsAll(without)
        .hasSize(without.size() + 1)
        .contains("own ceiling | GO | apogee 820 ft, own ceiling 820 ft | set by the flier");
  }

  private static OwnLimits own(double ceilingM, double rodExitMps, double thrustToWeight) {
    return new OwnLimits(
        Optional.empty(),
        Optional.of(new Length(ceilingM)),
        Optional.of(new Speed(rodExitMps)),
        Optional.of(thrustToWeight));
  }

  @Test
  void an_own_limit_never_gives_a_better_answer() {
    Random random = new Random(22);
    int worse = 0;
    for (int i = 0; i < 2000; i++) {
      Draft draft = Draft.random(random);
      String name = RuleSets.names().get(random.nextInt(RuleSets.names().size()));
      draft.own = new Draft().own.withWind(draft.own.wind());
      Verdict before = RulesTest.rules(name).on(draft.built(), UnitSystem.US).verdict();
      draft.own =
          new OwnLimits(
              draft.own.wind(),
              Draft.maybe(random, new Length(600 * random.nextDouble())),
              Draft.maybe(random, new Speed(40 * random.nextDouble())),
              Draft.maybe(random, 12 * random.nextDouble()));
      Verdict after = RulesTest.rules(name).on(draft.built(), UnitSystem.US).verdict();
      assertThat(after).as("seed 22, case %d, %s", i, name).isGreaterThanOrEqualTo(before);
      worse += after.compareTo(before) > 0 ? 1 : 0;
    }
    assertThat(worse).as("cases that an own limit decides").isPositive();
  }
}
