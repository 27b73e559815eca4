package padside.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Fix;
import padside.flight.Ruling;
import padside.flight.Ruling.Finding;
import padside.flight.Ruling.Verdict;
import padside.units.Angle;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.UnitSystem;
import padside.units.Wind;

/** Verdicts against the US model code (2012, seen) and the house rules of common practice. */
class RulesTest {
  @Test
  void all_known_and_well_is_go_with_the_least_limit() {
    Ruling ruling = ruling(new Draft());

    assertThat(ruling.findings()).extracting(Finding::verdict).containsOnly(Verdict.GO);
    assertThat(ruling.verdict()).isEqualTo(Verdict.GO);
    assertThat(ruling.limit()).contains(Speed.ofMph(13));
    assertThat(ruling.reason()).isEqualTo("limit 13 mph (field edge NE 280 ft)");
    assertThat(ruling.limits())
        .extracting(Ruling.Limit::rule)
        .containsExactly("code", "rod", "rod", "field");
  }

  @Test
  void words_come_in_the_units_asked_for() {
    assertThat(rules("us-model").on(new Draft().built(), UnitSystem.METRIC).reason())
        .isEqualTo("limit 5.8 m/s (field edge NE 85 m)");
  }

  /** 20 mph is 8.9408 m/s exactly; within a fifth of it begins above 16 mph. */
  @ParameterizedTest
  @CsvSource({"0, GO", "16, GO", "16.01, MARGINAL", "20, MARGINAL", "20.001, NO-GO", "35, NO-GO"})
  void wind_against_the_code(double mph, String word) {
    Draft draft = new Draft();
    draft.fieldLimit = Optional.of(new Case.FieldLimit(Speed.ofMph(40), Optional.empty()));
    draft.rodExit = Optional.of(new Speed(60));
    draft.wind = Draft.wind(mph, mph);

    assertThat(ruling(draft).verdict().word()).isEqualTo(word);
    draft.wind = Draft.wind(0, mph);
    assertThat(ruling(draft).verdict().word()).as("the gust is what counts").isEqualTo(word);
  }

  @Test
  void near_a_limit_and_past_it_the_reason_is_that_limit() {
    Draft draft = new Draft();
    draft.wind = Draft.wind(9, 11);
    assertThat(ruling(draft).reason()).isEqualTo("near limit 13 mph (field edge NE 280 ft)");
    draft.wind = Draft.wind(9, 13.1);
    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(ruling(draft).reason()).isEqualTo("limit 13 mph (field edge NE 280 ft)");
    draft.own = draft.own.withWind(Optional.of(Speed.ofMph(8)));
    assertThat(ruling(draft).reason()).isEqualTo("limit 8 mph (own limit)");
  }

  /**
   * Common practice, no source: rod-exit speed over four, and over two and a half; a fifth near.
   */
  @ParameterizedTest
  @CsvSource({"3.2, GO", "3.21, MARGINAL", "4.01, MARGINAL", "6.4, MARGINAL", "6.41, NO-GO"})
  void wind_against_the_rod(double mps, String word) {
    Draft draft = new Draft();
    draft.fieldLimit = Optional.of(new Case.FieldLimit(Speed.ofMph(40), Optional.empty()));
    draft.rodExit = Optional.of(new Speed(16));
    draft.wind = Optional.of(new Wind(new Speed(mps), new Speed(mps), Optional.empty()));

    assertThat(ruling(draft).verdict().word()).isEqualTo(word);
  }

  @Test
  void no_wind_at_all_is_allowed_means_no_go_even_in_calm_air() {
    Draft draft = new Draft();
    draft.wind = Optional.of(Wind.calm());
    draft.fieldLimit =
        Optional.of(new Case.FieldLimit(new Speed(0), draft.fieldLimit.get().bound()));

    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.NO_GO);
  }

  /** MIT Press 1973, chapter 2.6.2: 9 m/s least, 12 m/s advisable; seen. */
  @ParameterizedTest
  @CsvSource({"8.99, NO-GO", "9, MARGINAL", "11.99, MARGINAL", "12, GO", "0, NO-GO"})
  void rod_exit_speed(double mps, String word) {
    Draft draft = new Draft();
    draft.wind = Optional.of(Wind.calm());
    draft.rodExit = Optional.of(new Speed(mps));

    assertThat(finding(draft, "rod-exit speed").verdict().word()).isEqualTo(word);
    assertThat(ruling(draft).verdict().word()).isEqualTo(word);
  }

  /** Common practice, no source: 5 advised, 3 the floor. */
  @ParameterizedTest
  @CsvSource({"2.99, NO-GO, 2.9", "3, MARGINAL, 3", "4.99, MARGINAL, 4.9", "5, GO, 5"})
  void thrust_to_weight(double ratio, String word, String shown) {
    Draft draft = new Draft();
    draft.thrustToWeight = Optional.of(ratio);

    assertThat(finding(draft, "thrust-to-weight").verdict().word()).isEqualTo(word);
    assertThat(finding(draft, "thrust-to-weight").sentence())
        .startsWith("thrust-to-weight " + shown + ",");
    assertThat(ruling(draft).verdict().word()).isEqualTo(word);
    assertThat(rules("us-high-power").on(draft.built(), UnitSystem.US).findings())
        .filteredOn(finding -> finding.sentence().contains("at least 3"))
        .allSatisfy(
            finding ->
                assertThat(finding.source())
                    .startsWith("US high-power code, from memory: unconfirmed"));
  }

  @ParameterizedTest
  @CsvSource({
    "lift-off mass, 1.5, GO",
    "lift-off mass, 1.501, NO-GO",
    "propellant, 0.125, GO",
    "propellant, 0.126, NO-GO",
    "total impulse, 320, GO",
    "total impulse, 320.1, NO-GO",
    "tilt, 30, GO",
    "tilt, 30.1, NO-GO",
    "tilt, -30.1, NO-GO",
    "landing, 6.096, GO",
    "landing, 6.11, MARGINAL",
    "sky, 299.9, GO",
    "sky, 300, NO-GO"
  })
  void bounds_that_have_nothing_to_do_with_wind(String rule, double value, String word) {
    Draft draft = new Draft();
    draft.smallestSide = Optional.of(new Length(500));
    draft.cloudBase = Optional.of(new Length(300));
    switch (rule) {
      case "lift-off mass" -> draft.liftoffMass = Optional.of(new Mass(value));
      case "propellant" -> draft.propellantMass = Optional.of(new Mass(value));
      case "total impulse" -> draft.impulse = Optional.of(new Impulse(value));
      case "tilt" -> draft.tilt = Angle.ofDegrees(value);
      case "landing" -> draft.touchdown = Optional.of(new Case.Touchdown(new Speed(value), true));
      default -> draft.apogee = Optional.of(new Length(value));
    }

    assertThat(finding(draft, rule).verdict().word()).isEqualTo(word);
    String sentence = finding(draft, rule).sentence();
    boolean reads = sentence.replace("just over", "").matches(".* ([0-9.]+ ?\\S+), at most \\1.*");
    assertThat(sentence.contains("just over"))
        .as("what misses its bound never reads like it: %s", sentence)
        .isEqualTo(reads && !word.equals("GO"));
  }

  /** The motor table's own figure for C6-5; from memory, as the table says. */
  @Test
  void the_motor_lifts_no_more_than_its_maker_says() {
    Mass most = Draft.C6_5.type().maxLiftoffMass("5").orElseThrow();
    Draft draft = new Draft();
    draft.liftoffMass = Optional.of(most);
    assertThat(finding(draft, "motor mass limit").verdict()).isEqualTo(Verdict.GO);
    draft.liftoffMass = Optional.of(new Mass(most.kilograms() + 0.001));
    assertThat(finding(draft, "motor mass limit").verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(finding(draft, "motor mass limit").source()).contains("from memory");
  }

  @ParameterizedTest
  @CsvSource({"121.92, GO", "121.9, NO-GO"})
  void a_field_too_small_for_the_motor_is_no_go(double metres, String word) {
    Draft draft = new Draft();
    draft.smallestSide = Optional.of(new Length(metres));

    assertThat(finding(draft, "site").verdict().word()).isEqualTo(word);
    assertThat(finding(draft, "site").sentence())
        .isEqualTo(
            word.equals("GO")
                ? "field 400 ft at its smallest, at least 400 ft"
                : "field just under 400 ft at its smallest, at least 400 ft");
  }

  /** Common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "-2, 5, GO",
    "2, 15, GO",
    "2.1, 5, MARGINAL",
    "-2.1, 5, MARGINAL",
    "0, 15.1, MARGINAL",
    "0, 30, MARGINAL",
    "0, 30.1, NO-GO"
  })
  void a_delay_that_does_not_fit(double error, double airspeed, String word) {
    Draft draft = new Draft();
    draft.firing = Optional.of(new Case.Firing(new TimeSpan(error), new Speed(airspeed)));

    assertThat(finding(draft, "delay").verdict().word()).isEqualTo(word);
    assertThat(finding(draft, "delay").source()).contains("common practice, no source");
  }

  @Test
  void no_charge_before_the_ground_and_nothing_open_are_no_go() {
    Draft draft = new Draft();
    draft.firing = Optional.empty();
    draft.touchdown = Optional.of(new Case.Touchdown(new Speed(40), false));

    assertThat(finding(draft, "delay").verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(finding(draft, "landing").verdict()).isEqualTo(Verdict.NO_GO);
  }

  @Test
  void open_fixes_count_by_their_severity() {
    Draft draft = new Draft();
    draft.fixes = List.of(fix("worn shock cord", Fix.Severity.LOOK_AT));
    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(ruling(draft).reason()).isEqualTo("look at: worn shock cord");
    draft.fixes = List.of(fix("loose fin", Fix.Severity.GROUNDS_IT));
    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(ruling(draft).reason()).isEqualTo("grounds it: loose fin");
  }

  @Test
  void the_day_counts() {
    Draft draft = new Draft();
    draft.fireBan = Optional.of(true);
    assertThat(ruling(draft).reason()).isEqualTo("a fire ban is in force");
    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.NO_GO);
    draft.fireBan = Optional.empty();
    draft.permission = Optional.of(false);
    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.MARGINAL);
    draft.permission = Optional.empty();
    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.GO);
    assertThat(finding(draft, "permission").sentence()).contains("not noted");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "wind",
        "motor",
        "lift-off mass",
        "field edges",
        "total impulse",
        "thrust-to-weight",
        "rod-exit speed",
        "apogee",
        "landing speed",
        "largest wind for the field"
      })
  void what_is_missing_is_named_and_never_go(String lack) {
    Draft draft = new Draft();
    switch (lack) {
      case "wind" -> draft.wind = Optional.empty();
      case "motor" -> draft.motors = Optional.empty();
      case "lift-off mass" -> draft.liftoffMass = Optional.empty();
      case "field edges" -> draft.smallestSide = Optional.empty();
      case "total impulse" -> draft.impulse = Optional.empty();
      case "thrust-to-weight" -> draft.thrustToWeight = Optional.empty();
      case "rod-exit speed" -> draft.rodExit = Optional.empty();
      case "apogee" -> draft.apogee = Optional.empty();
      case "landing speed" -> draft.touchdown = Optional.empty();
      default -> draft.fieldLimit = Optional.empty();
    }

    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(ruling(draft).reason()).isEqualTo("missing: " + lack);
  }

  @Test
  void what_follows_from_the_missing_is_not_named() {
    Case bare =
        new Case(
            new Case.Craft(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Angle(0),
                OwnLimits.none(),
                List.of()),
            Case.Predicted.nothing(),
            new Case.Ground(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
            new Case.Sky(Optional.empty(), Optional.empty(), Optional.empty()),
            List.of("mass without motor", "rod length", "motor"),
            List.of());

    assertThat(rules("us-model").on(bare, UnitSystem.US).reason())
        .isEqualTo("missing: wind, motor, mass without motor, rod length, field edges");
  }

  @Test
  void what_is_missing_does_not_excuse_what_fails() {
    Draft draft = new Draft();
    draft.liftoffMass = Optional.empty();
    draft.wind = Draft.wind(21, 21);

    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(ruling(draft).reason()).startsWith("limit 13 mph");
  }

  @Test
  void a_code_without_a_wind_limit_is_no_licence() {
    Draft draft = new Draft();
    draft.smallestSide = Optional.of(new Length(500));
    Ruling without = rules("canada-model").on(draft.built(), UnitSystem.METRIC);
    assertThat(without.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(without.reason())
        .isEqualTo("the wind limit of the Canada model code is not known here; set your own");

    draft.own = draft.own.withWind(Optional.of(new Speed(8)));
    assertThat(rules("canada-model").on(draft.built(), UnitSystem.METRIC).verdict())
        .isEqualTo(Verdict.GO);
  }

  @Test
  void unconfirmed_values_say_so() {
    assertThat(
            rules("us-high-power").on(new Draft().built(), UnitSystem.US).limits().get(0).source())
        .startsWith("US high-power code, from memory: unconfirmed");
    assertThat(ruling(new Draft()).limits().get(0).source()).startsWith("US model code, seen");
    assertThat(ruling(new Draft()).limits().get(1).source()).contains("common practice, no source");
    assertThat(finding(new Draft(), "motor data").sentence()).contains("unverified");
  }

  @Test
  void what_others_found_counts_as_well() {
    Draft draft = new Draft();
    draft.further =
        List.of(new Finding("lot", Verdict.MARGINAL, "2 of 3 of this lot failed", "the log"));

    assertThat(ruling(draft).verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(ruling(draft).reason()).isEqualTo("2 of 3 of this lot failed");
  }

  @Test
  void more_wind_never_gives_a_better_answer() {
    Random random = new Random(21);
    for (int i = 0; i < 400; i++) {
      Draft draft = Draft.random(random);
      String name = RuleSets.names().get(random.nextInt(RuleSets.names().size()));
      Verdict before = Verdict.GO;
      for (double mph = 0; mph <= 40; mph += 2) {
        draft.wind = Draft.wind(mph * 0.7, mph);
        Verdict verdict = rules(name).on(draft.built(), UnitSystem.US).verdict();
        assertThat(verdict)
            .as("seed 21, case %d, %s at %.0f mph", i, name, mph)
            .isGreaterThanOrEqualTo(before);
        before = verdict;
      }
    }
  }

  private static Ruling ruling(Draft draft) {
    return rules("us-model").on(draft.built(), UnitSystem.US);
  }

  private static Finding finding(Draft draft, String rule) {
    return ruling(draft).findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  static Rules rules(String name) {
    return new Rules(RuleSets.find(name).value().orElseThrow(), RuleSets.house());
  }

  private static Fix fix(String text, Fix.Severity severity) {
    return new Fix(
        new RecordId("f"), Facts.none().with(Fix.TEXT, text).with(Fix.SEVERITY, severity));
  }
}
