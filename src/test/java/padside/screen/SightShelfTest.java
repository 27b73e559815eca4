package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.flight.Flight;
import padside.units.Length;

/** Lines of sight typed on the field, the answer beside them. */
class SightShelfTest {
  private final Meadow meadow = new Meadow().withMorning();

  /** Each accepted with Tab: seen, toward, from, which is, elevation. */
  private Desk lost() {
    return meadow
        .desk()
        .press("<up>i")
        .press("n45<tab><f2>")
        .press("n315<tab>200m<tab>90<tab><f2>");
  }

  @Test
  void two_lines_tell_where_to_look_from_the_pad_and_from_where_one_stands() {
    Desk desk = lost();

    assertThat(desk.frame()).contains("Look 464 ft from the pad toward 45° NE");
    assertThat(desk.frame()).contains("464 ft").contains("toward 315° NW").contains("by 2 lines.");
    Golden.holds("sights", desk.frame());
    Golden.holds("sights-60x20", desk.frame(Size.SMALLEST));
  }

  @Test
  void the_answer_is_told_while_the_second_line_is_typed() {
    Desk desk =
        meadow.desk().press("<up>i").press("n45<tab><f2>").press("n315<tab>200m<tab>90<tab>");

    assertThat(desk.frame()).contains("Look 464 ft from the pad toward 45° NE");
    Golden.holds("sighting-60x20", desk.frame(Size.SMALLEST));
  }

  @Test
  void a_height_by_two_stations_becomes_the_altitude_by_one_key() {
    Desk desk =
        meadow
            .desk()
            .press("<up>i")
            .press("n<s-tab>high<tab>45<tab><tab><tab>45deg<tab><f2>")
            .press("n<s-tab>high<tab>315<tab>200m<tab>90<tab>45deg<tab><f2>");
    assertThat(desk.frame()).contains("Height 464 ft, the stations 0 % apart.");

    desk.press("a");
    Length altitude = meadow.flight(2).facts().get(Flight.ALTITUDE).orElseThrow();
    assertThat(Math.round(altitude.inFeet())).isEqualTo(464);
  }

  @Test
  void one_line_without_a_prediction_says_what_is_missing() {
    Desk desk = meadow.desk().press("<up>i").press("n45<tab><f2>");

    assertThat(desk.frame()).contains("One sight line alone tells no spot");
  }
}
