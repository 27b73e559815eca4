package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.fact.Fault;
import padside.flight.Field;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.motor.MotorStack;
import padside.preflight.Card;
import padside.units.Bearing;
import padside.units.Length;
import picocli.CommandLine;

/** What is typed as options becomes the card that is checked. */
class FlightOptionsTest {
  private static Card card(String... options) throws Fault {
    return CommandLine.populateCommand(new FlightOptions(), options).card();
  }

  @Test
  void several_motors_are_named_in_one_option() throws Fault {
    assertThat(card("--motor", "3xC6-5").motors().map(MotorStack::designation)).contains("3xC6-5");
    assertThat(card("--motor", "C6-0 then C6-7").motors().map(stack -> stack.boosters().size()))
        .contains(1);
  }

  /** The avoirdupois ounce is 28.349523125 g: international yard and pound agreement, 1959. */
  @Test
  void the_booster_is_a_part_of_the_mass() throws Fault {
    Card card = card("--mass", "5oz", "--booster-mass", "1oz");

    assertThat(card.mass().orElseThrow().inGrams()).isCloseTo(5 * 28.349523125, within(1e-9));
    assertThat(card.rocket().flatMap(Rocket::boosterMass).orElseThrow().inGrams())
        .isCloseTo(28.349523125, within(1e-9));
  }

  @Test
  void a_time_is_told_with_its_offset_from_utc() throws Fault {
    Card card =
        card("--lat", "46.2", "--lon", "9.3W", "--at", "2026-10-17T11:05+02:00", "--edge=N:300m");

    assertThat(card.at()).contains(Instant.parse("2026-10-17T09:05:00Z"));
    assertThat(card.field().orElseThrow().facts().get(Field.LATITUDE)).contains(46.2);
    assertThat(card.field().orElseThrow().facts().get(Field.LONGITUDE)).contains(-9.3);
  }

  /** The international foot is 0.3048 m exactly. */
  @Test
  void hazards_lie_along_a_bearing_with_a_distance_and_a_radius() throws Fault {
    Card card = card("--hazard", "E:160ft:50ft", "--hazard=225:40m:5m", "--field-radius=100m");

    assertThat(card.field().orElseThrow().hazards())
        .containsExactly(
            new Field.Hazard(new Bearing(90), new Length(160 * 0.3048), new Length(15.24), ""),
            new Field.Hazard(new Bearing(225), new Length(40), new Length(5), ""));
  }

  @Test
  void humidity_is_told_in_percent() throws Fault {
    assertThat(card("--humidity", "65%").weather().flatMap(Weather::humidity)).contains(0.65);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--at=2026-10-17T11:05Z|give --lat and --lon too",
        "--at=2026-10-17T11:05|with its offset from UTC",
        "--lat=46.2|belong together",
        "--lat=95 --lon=9|beyond 90 degrees",
        "--booster-mass=0g|--booster-mass is zero",
        "--booster-mass=5g --mass=5g|not less than --mass",
        "--humidity=165%|more than 100%",
        "--hazard=E:160ft|a bearing, a distance and a radius",
        "--hazard=E:160ft:0ft|has no radius",
        "--hazard=E:160ft:50|has no unit",
      })
  void what_does_not_fit_together_is_told_in_a_sentence(String options, String told) {
    assertThatThrownBy(() -> card(options.split(" ")))
        .isInstanceOf(CommandLine.PicocliException.class)
        .hasMessageContaining(told);
  }
}
