package padside.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindTest {
  private static final WindNotation NOTATION = Notations.wind(UnitSystem.US);

  private static String objection(String typed) {
    return NOTATION.read(typed).objection().orElseThrow(() -> new AssertionError(typed));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          calm | 0 | 0
          Calm | 0 | 0
          6 | 6 | 6
          6g9 | 6 | 9
          6g9mph | 6 | 9
          6mph g 9 | 6 | 9
          6 gusting 9 mph | 6 | 9
          6 gust 9 | 6 | 9
          6 gusts 9 | 6 | 9
          30mph | 30 | 30
          44 ft/s | 30 | 30
          0mph | 0 | 0
          """)
  void mean_and_gust_are_read(String typed, double meanMph, double gustMph) {
    Wind wind = read(typed);
    assertThat(wind.mean().inMph()).isCloseTo(meanMph, within(1e-9));
    assertThat(wind.gust().inMph()).isCloseTo(gustMph, within(1e-9));
    assertThat(wind.from()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          6g9 SW | 6 | 9 | 225
          6G9SW | 6 | 9 | 225
          6 g 9 mph from SW | 6 | 9 | 225
          6 gusting to 9 mph, from south-west | 6 | 9 | 225
          6 240 | 6 | 6 | 240
          6 040 | 6 | 6 | 40
          6 40° | 6 | 6 | 40
          6 from 40 | 6 | 6 | 40
          6, 240 | 6 | 6 | 240
          6 mph 240° WSW | 6 | 6 | 240
          6 S | 6 | 6 | 180
          6 mph S | 6 | 6 | 180
          6 E | 6 | 6 | 90
          SW 6g9 | 6 | 9 | 225
          from north at 6 | 6 | 6 | 0
          south west 6 mph | 6 | 6 | 225
          0 SW | 0 | 0 | 225
          13.4112 m/s W | 30 | 30 | 270
          """)
  void the_direction_is_read(String typed, double meanMph, double gustMph, double from) {
    Wind wind = read(typed);
    assertThat(wind.mean().inMph()).isCloseTo(meanMph, within(1e-9));
    assertThat(wind.gust().inMph()).isCloseTo(gustMph, within(1e-9));
    assertThat(wind.from()).contains(new Bearing(from));
  }

  private static Wind read(String typed) {
    return NOTATION.read(typed).value().orElseThrow(() -> new AssertionError(typed));
  }

  @Test
  void a_unit_and_a_direction_letter_are_told_apart() {
    assertThat(NOTATION.read("6 m/s").value()).contains(steady(new Speed(6), Optional.empty()));
    assertThat(NOTATION.read("6 m/s s").value())
        .contains(steady(new Speed(6), Optional.of(new Bearing(180))));
    assertThat(NOTATION.read("6kts").value()).contains(steady(Speed.ofKnots(6), Optional.empty()));
    assertThat(NOTATION.read("6 kt s").value())
        .contains(steady(Speed.ofKnots(6), Optional.of(new Bearing(180))));
    assertThat(NOTATION.read("6 kn n").value())
        .contains(steady(Speed.ofKnots(6), Optional.of(new Bearing(0))));
    assertThat(objection("6ktsw")).contains("\"ktsw\" that I cannot read");
  }

  private static Wind steady(Speed speed, Optional<Bearing> from) {
    return new Wind(speed, speed, from);
  }

  @Test
  void each_speed_keeps_its_own_unit() {
    Wind wind = NOTATION.read("2 m/s g 20 mph 2,5°").value().orElseThrow();
    assertThat(wind.mean()).isEqualTo(new Speed(2));
    assertThat(wind.gust()).isEqualTo(Speed.ofMph(20));
    assertThat(wind.from()).contains(new Bearing(2.5));
    assertThat(Notations.wind(UnitSystem.METRIC).read("2,5g4 240").value())
        .contains(new Wind(new Speed(2.5), new Speed(4), Optional.of(new Bearing(240))));
  }

  @ParameterizedTest
  @CsvSource({
    "B3 W, 3, 270",
    "b 4 nw, 4, 315",
    "3 bft from 240, 3, 240",
    "force 5 180, 5, 180",
    "beaufort 0 n, 0, 0",
    "B12 E, 12, 90"
  })
  void beaufort_numbers_are_read(String typed, int number, double from) {
    assertThat(NOTATION.read(typed).value())
        .contains(Beaufort.find(number).orElseThrow().wind(Optional.of(new Bearing(from))));
  }

  @Test
  void a_bare_small_number_after_the_speed_is_not_taken_for_a_bearing() {
    assertThat(objection("6 9"))
        .isEqualTo(
            "\"6 9\" has 9, which could be a gust, g9, or a bearing, 9°; type wind like 6g9 SW,"
                + " calm, B3 W or 2.5 m/s 240.");
    assertThat(objection("6 mph 9.5")).contains("has 9.5, which could be");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "windy",
        "sw",
        "-6",
        "6g",
        "g9",
        "6 parsec",
        "6g9 SW xx",
        "6mphSW",
        "NaN",
        "B",
        "B13",
        "B99999",
        "B3.5",
        "B3g9",
        "B3-4",
        "6g9g12",
        "9g6",
        "1,500",
        "6 361",
        "6 -20",
        "6.5.240",
        "SW 6 SW",
        "up 6",
        "6g9 kg",
        "calm 6",
        "\u001b[2J"
      })
  void what_is_no_wind_is_refused_with_an_example(String typed) {
    assertThat(objection(typed)).contains("; type ").endsWith(".").doesNotContain("\u001b");
  }

  @Test
  void a_long_text_is_no_wind() {
    assertThat(objection("6".repeat(65))).contains("longer than 64");
    assertThat(objection("6g" + "9".repeat(40))).contains("larger than any speed");
    assertThat(objection("9g6")).contains("has a gust below its mean");
  }

  @Test
  void the_strict_form_asks_for_a_unit() {
    WindNotation strict = NOTATION.withUnitRequired();
    assertThat(strict.read("6g9").objection().orElseThrow())
        .contains("has no unit, which is one of mph, kt, km/h, m/s, ft/s");
    assertThat(strict.read("6g9mph").value()).isEqualTo(NOTATION.read("6g9").value());
    assertThat(strict.read("calm").value()).contains(Wind.calm());
    assertThat(strict.read("B3").value()).contains(Beaufort.B3.wind(Optional.empty()));
  }

  @Test
  void a_wind_is_shown_as_it_is_said_and_as_it_is_typed() {
    Wind wind = NOTATION.read(NOTATION.example()).value().orElseThrow();
    assertThat(NOTATION.show(wind)).isEqualTo("6 gusting 9 mph from SW");
    assertThat(NOTATION.showShort(wind)).isEqualTo("6g9 mph SW");
    assertThat(NOTATION.show(Wind.calm())).isEqualTo("calm");
    assertThat(NOTATION.showShort(Wind.calm())).isEqualTo("calm");
    Wind steady = steady(new Speed(2.5), Optional.of(new Bearing(240)));
    assertThat(Notations.wind(UnitSystem.METRIC).showShort(steady)).isEqualTo("2.5 m/s 240° WSW");
    assertThat(NOTATION.show(steady(new Speed(0), Optional.of(new Bearing(225)))))
        .isEqualTo("0 mph from SW");
  }

  @Test
  void a_wind_is_never_negative_nor_its_gust_below_its_mean() {
    assertThatThrownBy(() -> steady(new Speed(-1), Optional.empty()))
        .hasMessageContaining("negative");
    assertThatThrownBy(() -> new Wind(new Speed(2), new Speed(1), Optional.empty()))
        .hasMessageContaining("gust below mean");
  }

  @Test
  void scaling_a_wind_keeps_its_gustiness_and_direction() {
    Wind wind = new Wind(new Speed(4), new Speed(6), Optional.of(new Bearing(90)));
    Wind half = wind.scaledTo(new Speed(3));
    assertThat(half).isEqualTo(new Wind(new Speed(2), new Speed(3), wind.from()));
    assertThat(half.tested()).isEqualTo(new Speed(3));
    assertThat(Wind.calm().scaledTo(new Speed(5)).mean()).isEqualTo(new Speed(5));
  }

  @Test
  void a_reading_is_a_value_or_an_objection() {
    assertThatThrownBy(() -> new Reading<>(Optional.empty(), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Reading<>(Optional.of(1), Optional.of("no")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
