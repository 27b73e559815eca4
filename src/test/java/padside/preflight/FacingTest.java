package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.flight.Weather;
import padside.units.Mass;
import padside.units.Temperature;
import padside.units.UnitSystem;

/** What of a card the rules get to see. */
class FacingTest {
  private static final Settings METRIC = Settings.standard().with(UnitSystem.METRIC);

  private static List<String> sentences(Card card, String rule) {
    return new Preflight(METRIC)
        .answer(card).ruling().findings().stream()
            .filter(finding -> finding.rule().equals(rule))
            .map(Ruling.Finding::sentence)
            .toList();
  }

  /** Motor table: B6 19.3 g, at most 113 g for B6-0 and 57 g for B6-6; from memory. */
  @Test
  void the_upper_motor_is_held_to_what_the_booster_leaves() {
    Card card =
        CardBuilder.small()
            .mass(Mass.ofGrams(60))
            .motor("B6-0 then B6-6")
            .rocketFact(f -> f.with(Rocket.BOOSTER_MASS, Mass.ofGrams(22)))
            .build();

    // 60 g and two motors; without 22 g and the lower motor.
    assertThat(sentences(card, "motor mass limit"))
        .containsExactly(
            "lift-off mass 98.6 g, at most 113 g for B6-0",
            "mass above the booster 57.3 g, at most 57 g for B6-6");
  }

  @Test
  void one_stage_is_held_to_one_limit() {
    Card card = CardBuilder.small().mass(Mass.ofGrams(60)).motor("3xB6-4").build();

    assertThat(sentences(card, "motor mass limit"))
        .containsExactly("lift-off mass 118 g, at most 339 g for 3xB6-4");
  }

  @Test
  void the_temperature_of_the_days_weather_brings_the_cautions_of_the_cold() {
    Weather cold =
        new Weather(
            new RecordId("t.9"), Facts.none().with(Weather.TEMPERATURE, Temperature.ofCelsius(2)));

    assertThat(sentences(CardBuilder.small().build(), "cold")).isEmpty();
    assertThat(sentences(CardBuilder.small().build().withWeather(Optional.of(cold)), "cold"))
        .hasSize(4)
        .allSatisfy(sentence -> assertThat(sentence).startsWith("cold, 2 °C: "));
  }
}
