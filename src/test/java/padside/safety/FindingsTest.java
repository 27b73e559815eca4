package padside.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.flight.Ruling.Verdict;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** What is said about a card, word for word: the flier reads nothing else. */
class FindingsTest {
  @Test
  void a_good_card_is_told_rule_by_rule_with_sources() {
    assertThat(told("us-model", new Draft()))
        .containsExactly(
            "motor mass limit | GO | lift-off mass 2.82 oz, at most 3.99 oz for C6-5"
                + " | motor table: from memory, high confidence, unverified",
            "lift-off mass | GO | lift-off mass 2.82 oz, at most 52.9 oz | US model code, seen",
            "propellant | GO | propellant 0.38 oz, at most 4.41 oz | US model code, seen",
            "total impulse | GO | total impulse 8.82 N·s, at most 320 N·s | US model code, seen",
            "thrust-to-weight | GO | thrust-to-weight 6, 5 advised | common practice, no source",
            "motor data | GO | C6: from memory, high confidence, unverified | motor table",
            "rod-exit speed | GO | rod-exit speed 98.4 ft/s, 39.4 ft/s advised"
                + " | flight mechanics textbook, MIT Press 1973, seen",
            "tilt | GO | tilt 3°, at most 30° | US model code, seen; from vertical",
            "stand back | GO | stand back 15 ft | US model code, seen",
            "site | GO | field 492 ft at its smallest, at least 400 ft | US model code, seen",
            "permission | GO | the owner has allowed it | as noted for the day",
            "fire | GO | no fire ban is in force | US model code, seen",
            "sky | GO | apogee 820 ft stays below the clouds at 1969 ft | US model code, seen",
            "delay | GO | ejection 0.4 s before apogee at 19.7 ft/s"
                + " | common practice, no source; either side of apogee",
            "landing | GO | lands at 13.1 ft/s, at most 20 ft/s advised"
                + " | common practice, no source; 12 to 18 ft/s is usual");
  }

  @Test
  void what_was_not_noted_is_said_without_harm() {
    Draft draft = new Draft();
    draft.cloudBase = Optional.empty();
    draft.permission = Optional.empty();
    draft.fireBan = Optional.empty();
    draft.propellantMass = Optional.empty();
    draft.motors = Optional.empty();

    assertThat(told("us-model", draft))
        .contains(
            "propellant | GO | propellant at most 4.41 oz: the whole rocket weighs less"
                + " | US model code, seen",
            "permission | GO | whether the owner has allowed it was not noted"
                + " | as noted for the day",
            "fire | GO | whether a fire ban is in force was not noted | US model code, seen",
            "sky | GO | cloud base not noted; never into cloud | US model code, seen")
        .noneMatch(line -> line.startsWith("motor mass limit"));
  }

  @Test
  void what_is_missing_is_said_for_each_rule_it_keeps_from() {
    Draft draft = new Draft();
    draft.liftoffMass = Optional.empty();
    draft.propellantMass = Optional.empty();
    draft.impulse = Optional.empty();
    draft.thrustToWeight = Optional.empty();
    draft.rodExit = Optional.empty();
    draft.apogee = Optional.empty();
    draft.firing = Optional.empty();
    draft.touchdown = Optional.empty();

    assertThat(told("us-model", draft))
        .filteredOn(line -> line.contains("UNKNOWN"))
        .extracting(line -> line.split(" \\| ", -1)[2])
        .containsExactly(
            "lift-off mass is not known",
            "propellant mass is not known",
            "total impulse is not known",
            "thrust-to-weight is not known",
            "rod-exit speed is not known",
            "the smallest field needed is not known",
            "apogee is not known",
            "how the delay fits is not known",
            "landing speed is not known");
  }

  @Test
  void the_size_of_the_field_may_be_all_that_is_missing() {
    Draft draft = new Draft();
    draft.smallestSide = Optional.empty();
    assertThat(told("us-model", draft))
        .contains(
            "site | UNKNOWN | the size of the field is not known, at least 400 ft"
                + " | US model code, seen");

    draft.liftoffMass = Optional.empty();
    draft.apogee = Optional.empty();
    assertThat(told("us-model", draft))
        .as("the model code asks for the impulse alone")
        .anyMatch(line -> line.startsWith("site | UNKNOWN | the size of the field"));
    assertThat(told("canada-high-power", draft))
        .as("the high-power rules ask for the apogee")
        .anyMatch(line -> line.startsWith("site | UNKNOWN | the smallest field needed"));
  }

  @Test
  void what_a_rule_set_does_not_know_is_said() {
    Draft draft = new Draft();
    draft.own = draft.own.withWind(Optional.of(new Speed(7)));
    draft.apogee = Optional.of(new Length(5000));
    draft.cloudBase = Optional.empty();

    assertThat(told("canada-high-power", draft))
        .contains(
            "code | GO | the wind limit of the Canada high-power rules is not known here; your own"
                + " stands in for it | Canada high-power rules",
            "tilt | GO | tilt 3°; no largest angle is known here | Canada high-power rules",
            "stand back | GO | no distance to stand back is known here | Canada high-power rules",
            "site | UNKNOWN | the table of fields does not go so far | Canada high-power rules");
    assertThat(told("uk-club", draft))
        .contains("site | GO | no smallest field is known here | UK club code");
  }

  @Test
  void a_plugged_motor_is_not_held_to_a_delay() {
    Draft draft = new Draft();
    draft.motors = Draft.motors("A10-PT");
    draft.firing = Optional.empty();

    assertThat(told("us-model", draft))
        .contains(
            "delay | GO | a plugged motor has no ejection charge"
                + " | common practice, no source; either side of apogee")
        .anyMatch(
            line -> line.startsWith("motor mass limit | GO | no largest lift-off mass is known"));
  }

  @Test
  void nothing_open_is_told_with_the_code_that_asks_for_recovery() {
    Draft draft = new Draft();
    draft.touchdown = Optional.of(new Case.Touchdown(new Speed(40), false));

    assertThat(told("us-model", draft))
        .contains(
            "landing | NO-GO | nothing opens: hits the ground at 131 ft/s"
                + " | US model code, seen");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0   | 40 | ejection 0 s after apogee at 131 ft/s, at most 98.4 ft/s
          2.5 | 10 | ejection 2.5 s after apogee at 32.8 ft/s
          -3  | 10 | ejection 3 s before apogee at 32.8 ft/s
          """)
  void the_delay_is_told_in_seconds_from_apogee(double error, double airspeed, String sentence) {
    Draft draft = new Draft();
    draft.firing = Optional.of(new Case.Firing(new TimeSpan(error), new Speed(airspeed)));

    assertThat(told("us-model", draft)).anyMatch(line -> line.contains("| " + sentence + " |"));
  }

  @Test
  void propellant_that_may_be_too_much_is_not_taken_for_good() {
    Draft draft = new Draft();
    draft.propellantMass = Optional.empty();
    draft.liftoffMass = Optional.of(new Mass(0.126));

    assertThat(told("us-model", draft))
        .contains("propellant | UNKNOWN | propellant mass is not known | US model code, seen");
  }

  @Test
  void a_cluster_stands_back_by_its_installed_impulse() {
    Draft draft = new Draft();
    draft.motors = Draft.motors("3xC6-5");
    draft.impulse = Optional.of(new Impulse(3 * 8.82));

    assertThat(told("us-model", draft)).anyMatch(line -> line.contains("stand back 30 ft"));
    assertThat(told("us-high-power", draft)).anyMatch(line -> line.contains("stand back 200 ft"));
    draft.motors = Draft.motors("C6-5");
    assertThat(told("us-high-power", draft)).anyMatch(line -> line.contains("stand back 100 ft"));
  }

  /** Common practice, no source: below 5 °C, 41 °F. */
  @ParameterizedTest
  @CsvSource({"5, 0", "4.9, 4", "-10, 4"})
  void cautions_of_the_cold_come_with_the_cold(double celsius, int cautions) {
    Draft draft = new Draft();
    draft.temperature = Optional.of(Temperature.ofCelsius(celsius));

    assertThat(told("us-model", draft))
        .filteredOn(line -> line.startsWith("cold"))
        .hasSize(cautions);
    assertThat(verdict(draft)).isEqualTo(Verdict.GO);
  }

  @Test
  void the_cold_is_told_with_its_degrees() {
    Draft draft = new Draft();
    draft.temperature = Optional.of(Temperature.ofFahrenheit(34));

    assertThat(told("us-model", draft))
        .contains(
            "cold | GO | cold, 34 °F: keep the launch battery warm; a weak one misfires"
                + " | common practice, no source; below 41 °F");
    draft.temperature = Optional.of(Temperature.ofFahrenheit(40.8));
    assertThat(told("us-model", draft))
        .as("what is below never reads like the bound")
        .anyMatch(line -> line.contains("| cold, just under 41 °F: "));
    draft.temperature = Optional.empty();
    assertThat(told("us-model", draft)).noneMatch(line -> line.startsWith("cold"));
  }

  private static Verdict verdict(Draft draft) {
    return new Rules(RuleSets.find("us-model").value().orElseThrow(), RuleSets.house())
        .on(draft.built(), UnitSystem.US)
        .verdict();
  }

  static List<String> told(String rules, Draft draft) {
    return new Rules(RuleSets.find(rules).value().orElseThrow(), RuleSets.house())
        .on(draft.built(), UnitSystem.US).findings().stream()
            .map(
                finding ->
                    String.join(
                        " | ",
                        finding.rule(),
                        finding.verdict().word(),
                        finding.sentence(),
                        finding.source()))
            .toList();
  }
}
