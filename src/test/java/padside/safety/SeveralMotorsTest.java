package padside.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.flight.Ruling;
import padside.flight.Ruling.Finding;
import padside.flight.Ruling.Verdict;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.UnitSystem;

/**
 * Clusters and stacks against the US model code (2012, seen), its association's safety committee
 * (seen), and common practice. The largest lift-off masses are those of the motor table: C6-0 and
 * C6-5 113 g, C6-7 71 g, D12-0 396 g, from memory.
 */
class SeveralMotorsTest {
  /** Common practice, no source: three motors lift three times what one does. */
  @ParameterizedTest
  @CsvSource({"0.339, GO", "0.340, NO-GO"})
  void a_cluster_lifts_as_many_times_what_one_motor_does(double kilograms, String word) {
    Draft draft = on("3xC6-5", 3 * 8.82);
    draft.liftoffMass = Optional.of(new Mass(kilograms));

    Finding limit = only(draft, "motor mass limit");

    assertThat(limit.verdict().word()).isEqualTo(word);
    assertThat(limit.sentence()).endsWith("at most 339 g for 3xC6-5");
    assertThat(limit.source())
        .endsWith("; 3 times that of one motor: common practice, no source")
        .startsWith("motor table: from memory");
  }

  @Test
  void a_booster_lifts_the_whole_and_the_upper_motor_what_is_left() {
    Draft draft = stack("C6-0 then C6-7");

    assertThat(all(draft, "motor mass limit"))
        .extracting(finding -> finding.verdict().word() + " " + finding.sentence())
        .containsExactly(
            "GO lift-off mass 110 g, at most 113 g for C6-0",
            "GO mass above the booster 70 g, at most 71 g for C6-7");
    assertThat(all(draft, "motor mass limit").get(1).source())
        .endsWith("; held against an upper stage: common practice, no source");
    draft.upperMass = Optional.of(new Mass(0.072));
    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(ruling(draft).reason())
        .isEqualTo("mass above the booster 72 g, at most 71 g for C6-7");
  }

  @Test
  void what_is_left_above_the_booster_is_not_taken_for_good() {
    Draft draft = stack("C6-0 then C6-7");
    draft.upperMass = Optional.empty();

    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(ruling(draft).reason()).isEqualTo("mass above the booster is not known");
  }

  /** NAR model code, site dimensions by the installed impulse of all motors; seen. */
  @ParameterizedTest
  @CsvSource({"C6-5, 8.82, 400", "2xC6-5, 17.64, 500", "3xC6-5, 26.46, 1000"})
  void the_field_is_asked_for_by_all_motors_together(String line, double impulse, double feet) {
    Draft draft = on(line, impulse);
    draft.smallestSide = Optional.of(Length.ofFeet(feet));
    assertThat(only(draft, "site").verdict()).isEqualTo(Verdict.GO);
    draft.smallestSide = Optional.of(Length.ofFeet(feet - 1));
    assertThat(only(draft, "site").verdict()).isEqualTo(Verdict.NO_GO);
  }

  /** nar.org/safety: 15 ft to 20 N·s installed in all, 30 ft above; the code is silent; seen. */
  @ParameterizedTest
  @CsvSource({"2xC6-5, 17.64, 4.6", "3xC6-5, 26.46, 9.1", "C6-0 then C6-7, 17.64, 4.6"})
  void people_stand_back_by_the_advice_for_clusters_and_stages(
      String line, double impulse, double metres) {
    Finding back = only(on(line, impulse), "stand back");

    assertThat(back.sentence()).isEqualTo("stand back " + metres + " m");
    assertThat(back.source())
        .isEqualTo(
            "US model association's safety committee, seen; on the installed impulse; the code"
                + " itself is silent on clusters and stages");
  }

  @Test
  void where_no_advice_for_several_motors_is_known_that_is_said() {
    Ruling canada = ruling(on("2xC6-5", 17.64), "canada-model");

    assertThat(canada.findings())
        .filteredOn(finding -> finding.rule().equals("stand back"))
        .singleElement()
        .satisfies(
            back -> {
              assertThat(back.sentence()).isEqualTo("stand back 5 m");
              assertThat(back.source()).endsWith("for one motor; none is known here for several");
            });
  }

  @Test
  void a_cluster_is_told_that_all_must_light() {
    assertThat(only(on("3xC6-5", 26.46), "cluster"))
        .isEqualTo(
            new Finding(
                "cluster",
                Verdict.GO,
                "3xC6-5: all of them must light; with one out the thrust is off centre and the"
                    + " rocket turns",
                "common practice, no source"));
    assertThat(all(stack("D12-0 then 2xC6-5"), "cluster")).hasSize(1);
    assertThat(all(new Draft(), "cluster")).isEmpty();
  }

  /** A designation ends in 0 for a booster, in P for a plugged motor; from memory. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          C6-0 then C6-7   |
          C6-3 then C6-7   | C6-3 does not light the C6-7 above it; a booster has no delay, like C6-0
          E9-P then C6-7   | E9-P does not light the C6-7 above it; a booster has no delay, like E9-0
          E30-4 then C6-7  | E30-4 does not light the C6-7 above it; a booster has no delay, like C6-0
          D12-0 then C6-0  | C6-0 on top is a booster: it has no delay and fires as it burns out, at full speed
          """)
  void a_booster_belongs_below_and_nowhere_else(String line, String sentence) {
    List<Finding> stages = all(stack(line), "stages");

    assertThat(stages)
        .extracting(Finding::sentence)
        .isEqualTo(sentence == null ? List.of() : List.of(sentence));
    assertThat(stages)
        .allSatisfy(
            finding -> {
              assertThat(finding.verdict()).isEqualTo(Verdict.NO_GO);
              assertThat(finding.source())
                  .isEqualTo("motor designations, from memory: unconfirmed");
            });
  }

  /** Common practice, no source. */
  @Test
  void a_composite_motor_above_a_booster_is_marginal() {
    Finding stages = only(stack("D12-0 then E30-7"), "stages");

    assertThat(stages.verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(stages.sentence()).startsWith("E30-7 is a composite motor, which a booster");
    assertThat(stages.source()).isEqualTo("common practice, no source");
  }

  @Test
  void a_plugged_motor_on_top_is_told_by_the_delay() {
    Draft draft = stack("E9-0 then E9-P");
    draft.firing = Optional.empty();

    assertThat(only(draft, "delay").sentence()).isEqualTo("a plugged motor has no ejection charge");
    draft.motors = Draft.motors("C6-0 then C6-7");
    assertThat(only(draft, "delay").verdict()).isEqualTo(Verdict.NO_GO);
  }

  private static Draft on(String line, double impulse) {
    Draft draft = new Draft();
    draft.motors = Draft.motors(line);
    draft.impulse = Optional.of(new Impulse(impulse));
    draft.smallestSide = Optional.of(new Length(500));
    return draft;
  }

  private static Draft stack(String line) {
    Draft draft = on(line, 17.64);
    draft.liftoffMass = Optional.of(new Mass(0.110));
    draft.upperMass = Optional.of(new Mass(0.070));
    return draft;
  }

  private static Finding only(Draft draft, String rule) {
    List<Finding> found = all(draft, rule);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static List<Finding> all(Draft draft, String rule) {
    return ruling(draft).findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .toList();
  }

  private static Ruling ruling(Draft draft) {
    return ruling(draft, "us-model");
  }

  private static Ruling ruling(Draft draft, String code) {
    return new Rules(RuleSets.find(code).value().orElseThrow(), RuleSets.house())
        .on(draft.built(), UnitSystem.METRIC);
  }
}
