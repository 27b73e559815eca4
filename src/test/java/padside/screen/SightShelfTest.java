package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.units.Bearing;
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

  @Test
  void while_a_height_is_typed_the_height_is_told_and_not_where_to_look() {
    meadow.log.save(
        Action.change(
            "keep card",
            Kind.FLIGHT,
            meadow.flight(2).id(),
            Facts.none()
                .with(Flight.PREDICTED_BEARING, new Bearing(45))
                .with(Flight.PREDICTED_DISTANCE, new Length(100))));
    Desk desk =
        meadow.desk().press("<up>i").press("n<s-tab>high<tab><tab>150m<tab><tab>35deg<tab>");

    assertThat(desk.frame()).contains("Height 345 ft").contains("straight up");
    assertThat(desk.frame()).doesNotContain("Look ");
    desk.press("<f2>");
    Golden.holds("sights-both-60x20", desk.frame(Size.SMALLEST));
  }

  @Test
  void from_the_debrief_of_a_lost_rocket_one_key_leads_to_where_to_look() {
    Desk desk = meadow.desk().press("d");
    RecordId flight = ((DebriefScreen) desk.top()).flight().id();
    assertThat(desk.press("<f6>").top())
        .as("nothing is lost yet")
        .isInstanceOf(DebriefScreen.class);
    while (!((DebriefScreen) desk.top()).record().form().field().name().equals("landed_on")) {
      desk.press("<tab>");
    }
    assertThat(desk.press("lost").frame()).contains("F6 find it");
    assertThat(desk.press("<f6>").frame()).startsWith(" Sights");
    assertThat(meadow.log.facts(Kind.FLIGHT, flight).get(Flight.LANDED_ON)).contains("lost");

    desk.press("n45<tab><f2><esc>");
    assertThat(desk.top()).as("as it was left").isInstanceOf(DebriefScreen.class);
    assertThat(desk.frame()).contains("lost");
    assertThat(desk.book().sightingsOf(flight)).hasSize(1);
  }

  @Test
  void many_lines_of_sight_leave_the_answer_its_rows() {
    Desk desk = lost();
    for (int i = 0; i < 14; i++) {
      desk.press("n" + (40 + i) + "<tab><f2>");
    }

    Golden.holds("sights-many-60x20", desk.frame(Size.SMALLEST));
  }
}
