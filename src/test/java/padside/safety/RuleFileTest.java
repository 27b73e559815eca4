package padside.safety;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.units.Reading;

/** Broken rule files are refused with a sentence that says where and what to do. */
class RuleFileTest {
  private static final String GOOD =
      """
      {
        "name": "mine", "title": "my rules", "about": "mine",
        "sources": {"club": "my club's rules"},
        "values": {"wind_limit_mps": {"value": 8, "source": "club", "status": "seen"}},
        "site": {"source": "club", "status": "seen", "past": "NO-GO", "by_impulse": [
          {"up_to_ns": 5, "smallest_side_m": 60}, {"up_to_ns": 10, "smallest_side_m": 120}]},
        "people": {"source": "club", "status": "seen", "by_impulse": [
          {"up_to_ns": 20, "people_m": 5}]},
        "cautions": [{"about": "flight", "text": "Not near geese.",
          "source": "club", "status": "seen"}]
      }
      """;

  @Test
  void a_file_of_ones_own_is_read() {
    RuleSet rules = RuleSets.read(GOOD, "mine.json").value().orElseThrow();

    assertThat(rules.windLimit().orElseThrow().value().metresPerSecond()).isEqualTo(8);
    assertThat(rules.cautions())
        .singleElement()
        .extracting(Caution::about)
        .isEqualTo(Caution.Topic.FLIGHT);
    assertThat(rules.sources()).containsEntry("club", "my club's rules");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "wind_limit_mps" | "wind_limit_mph" | mine.json, values: "wind_limit_mph" is not known here; use
          "value": 8       | "value": "8"     | mine.json, values.wind_limit_mps: "value" is 8; write a number above 0.
          "value": 8       | "value": -8      | mine.json, values.wind_limit_mps: "value" is -8; write a number above 0.
          "value": 8,      |                  | mine.json, values.wind_limit_mps: "value" is missing; add a number above 0.
          "value": 8       | "valeu": 8       | mine.json, values.wind_limit_mps: "valeu" is not known here; use note, source, stated, status, value.
          "value": 8, "source": "club", | "value": 8, | mine.json, values.wind_limit_mps: "source" is missing; name where the value comes from.
          "value": 8, "source": "club"  | "value": 8, "source": "pub" | mine.json, values.wind_limit_mps: source "pub" is not described under "sources".
          "club", "status": "seen"}}    | "club", "status": "sure"}}  | mine.json, values.wind_limit_mps: "status" is "sure"; write seen, from memory or common practice.
          "about": "mine", |                  | mine.json: "about" is missing; add a text.
          "title": "my rules" | "title": 3    | mine.json: "title" is 3; write a text in quotes.
          "past": "NO-GO"  | "past": "bad"    | mine.json, site: "past" is "bad"; write NO-GO or MARGINAL.
          "past": "NO-GO", |                  | mine.json, site: "past" says what a site too small means, and belongs to site alone.
          "up_to_ns": 10   | "up_to_ns": 5    | mine.json, site.by_impulse 2: "up_to_ns" does not rise; put the rows in order.
          "people_m": 5    | "people_ft": 5   | mine.json, people.by_impulse 1: "people_ft" is not known here;
          "about": "flight"| "about": "geese" | mine.json, cautions 1: "about" is "geese"; write one of materials,
          "name": "mine",  | "name": "mine", "name": "yours", | mine.json, line 2: not readable as JSON
          "title":         | "title"          | mine.json, line 2: not readable as JSON
          {"value": 8, "source": "club", "status": "seen"} | 8 | mine.json, values.wind_limit_mps: is 8; write an object in { }.
          """)
  void a_broken_file_is_refused_with_a_sentence(String was, String becomes, String sentence) {
    assertThat(GOOD).contains(was);
    String broken = GOOD.replace(was, becomes == null ? "" : becomes);

    Reading<RuleSet> reading = RuleSets.read(broken, "mine.json");

    assertThat(reading.objection()).hasValueSatisfying(it -> assertThat(it).startsWith(sentence));
  }

  @Test
  void what_is_no_object_is_refused_with_a_sentence() {
    assertThat(RuleSets.read("", "mine.json").objection()).isPresent();
    assertThat(RuleSets.read("[1]", "mine.json").objection()).isPresent();
    assertThat(RuleSets.read("12", "mine.json").objection()).isPresent();
    assertThat(RuleSets.read(GOOD.substring(0, 200), "mine.json").objection()).isPresent();
  }
}
