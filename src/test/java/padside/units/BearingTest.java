package padside.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BearingTest {
  private static final Notation<Bearing> NOTATION = Notations.bearing();

  /** The sixteen winds of the compass rose, clockwise from north. */
  private static final List<String> POINTS =
      List.of(
          "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW",
          "NW", "NNW");

  @Test
  void sixteen_points_stand_a_sixteenth_of_a_turn_apart() {
    for (int i = 0; i < 16; i++) {
      Bearing point = new Bearing(i * 360.0 / 16);
      assertThat(point.compassPoint()).isEqualTo(POINTS.get(i));
      assertThat(NOTATION.read(POINTS.get(i)).value()).contains(point);
      assertThat(new Bearing(point.degrees() + 11.2).compassPoint()).isEqualTo(POINTS.get(i));
      assertThat(new Bearing(point.degrees() - 11.2).compassPoint()).isEqualTo(POINTS.get(i));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "240, 240",
    "240°, 240",
    "240 deg, 240",
    "240 degrees, 240",
    "240° WSW, 240",
    "240wsw, 240",
    "009, 9",
    "22.5, 22.5",
    "360, 0",
    "0, 0",
    "wsw, 247.5",
    "north, 0",
    "South-West, 225",
    "south west, 225",
    "northnorthwest, 337.5",
    "s-se, 157.5",
  })
  void bearings_are_read_in_degrees_or_as_compass_points(String typed, double degrees) {
    assertThat(NOTATION.read(typed).value().orElseThrow().degrees())
        .isCloseTo(degrees, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", " ", "361", "-3", "nord", "x", "NaN", "240 N", "240° up", "1,500", "12 40", "240 F",
        "wswn"
      })
  void what_is_no_bearing_is_refused_with_an_example(String typed) {
    assertThat(NOTATION.read(typed).objection().orElseThrow())
        .startsWith("\"" + typed.strip() + "\" ")
        .endsWith("; type it like 240, 240° or SW.");
  }

  @Test
  void a_long_text_is_no_bearing() {
    assertThat(NOTATION.read("s".repeat(65)).objection().orElseThrow()).contains("longer than 64");
  }

  @Test
  void a_bearing_is_shown_in_whole_degrees_with_its_nearest_point() {
    assertThat(NOTATION.show(new Bearing(240.2))).isEqualTo("240° WSW");
    assertThat(NOTATION.show(new Bearing(359.7))).isEqualTo("0° N");
    assertThat(NOTATION.read(NOTATION.example()).value()).contains(new Bearing(240));
  }

  @Test
  void a_bearing_folds_into_one_turn() {
    assertThat(new Bearing(-90)).isEqualTo(new Bearing(270));
    assertThat(new Bearing(725)).isEqualTo(new Bearing(5));
    assertThat(new Bearing(360)).isEqualTo(new Bearing(0));
  }

  @Test
  void turns_between_bearings_go_the_short_way() {
    assertThat(new Bearing(350).degreesTo(new Bearing(10))).isEqualTo(20);
    assertThat(new Bearing(10).degreesTo(new Bearing(350))).isEqualTo(-20);
    assertThat(new Bearing(0).degreesTo(new Bearing(180))).isEqualTo(180);
    assertThat(new Bearing(180).degreesTo(new Bearing(0))).isEqualTo(180);
    assertThat(new Bearing(225).reversed()).isEqualTo(new Bearing(45));
    assertThat(new Bearing(45).reversed()).isEqualTo(new Bearing(225));
    assertThat(new Bearing(90).inRadians()).isCloseTo(Math.PI / 2, within(1e-15));
  }
}
