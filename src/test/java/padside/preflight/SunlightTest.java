package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.flight.Field;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.units.Speed;
import padside.units.Wind;

class SunlightTest {
  private static final Preflight PREFLIGHT = new Preflight(Settings.standard());

  private static Answer answer(double latitude, double longitude, String at) {
    Wind light =
        new Wind(new Speed(0.5), new Speed(0.5), Optional.of(new padside.units.Bearing(0)));
    return PREFLIGHT.answer(
        CardBuilder.small()
            .wind(light)
            .fieldFact(
                field -> field.with(Field.LATITUDE, latitude).with(Field.LONGITUDE, longitude))
            .at(Instant.parse(at))
            .build());
  }

  private static Optional<Ruling.Finding> finding(Answer answer) {
    return answer.ruling().findings().stream()
        .filter(finding -> finding.rule().equals("sun"))
        .findFirst();
  }

  /**
   * NREL SPA example, 2003-10-17 12:30:30 UTC-7: azimuth 194.340241°, zenith 50.111622°. A card
   * keeps the minute, in half of which the sun moves by an eighth of a degree.
   */
  @Test
  void one_stands_with_the_sun_behind_and_is_told_where() {
    Answer answer = answer(39.742476, -105.1786, "2003-10-17T19:30:30Z");
    Outlook.InSun sun = answer.outlook().orElseThrow().sun().orElseThrow();

    assertThat(sun.azimuth().degrees()).isCloseTo(194.34, within(0.2));
    assertThat(sun.elevation().inDegrees()).isCloseTo(39.89, within(0.2));
    assertThat(sun.standOff().inFeet()).isCloseTo(15, within(1e-9));
    assertThat(Math.abs(sun.stand().degreesTo(sun.azimuth()))).isLessThan(100);
    assertThat(finding(answer).orElseThrow().verdict()).isEqualTo(Verdict.GO);
    assertThat(finding(answer).orElseThrow().sentence())
        .matches("stand [NESW]+ of the pad, 15 ft off: the path keeps \\d+° clear of the sun");
  }

  /** On the equator at noon of an equinox the sun stands overhead, where the apogee is too. */
  @Test
  void an_apogee_in_the_sun_from_every_side_is_marginal() {
    Answer answer = answer(0, 0, "2026-03-20T12:07:00Z");

    assertThat(finding(answer).orElseThrow().verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(finding(answer).orElseThrow().sentence())
        .startsWith("the apogee lies within 15° of the sun from every side; stand ")
        .endsWith("or wait");
    assertThat(answer.ruling().verdict()).isEqualTo(Verdict.MARGINAL);
  }

  @Test
  void at_night_and_where_place_or_time_is_unknown_nothing_is_said_of_the_sun() {
    Answer night = answer(39.742476, -105.1786, "2003-10-17T06:30:00Z");

    assertThat(finding(night)).isEmpty();
    assertThat(night.outlook().orElseThrow().sun()).isEmpty();
    assertThat(finding(PREFLIGHT.answer(CardBuilder.small().build()))).isEmpty();
  }
}
