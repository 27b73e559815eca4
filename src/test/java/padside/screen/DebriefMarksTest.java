package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Altimeter;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Flight.PartState;
import padside.flight.Kind;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * A debrief beside marks and prediction. The motor table has C6 burn 1.86 s; the sums are done by
 * hand.
 */
class DebriefMarksTest {
  private final Season season = new Season();

  private Desk debriefing(Facts more) {
    season.log.save(Action.change("mark", Kind.FLIGHT, season.card, more));
    return Desk.over(season.log)
        .opening(world -> DebriefScreen.open(world.log().flight(season.card).orElseThrow(), world));
  }

  private static Facts marked() {
    return Facts.none()
        .with(Flight.EJECTION_MARK, new TimeSpan(7.16))
        .with(Flight.TOUCHDOWN_MARK, new TimeSpan(70))
        .with(Flight.PREDICTED_DESCENT, Speed.ofFeetPerSecond(14))
        .with(Flight.PREDICTED_EJECTION, new TimeSpan(6.9))
        .with(Flight.PREDICTED_ALOFT, new TimeSpan(71.5));
  }

  private Facts flight() {
    return season.log.facts(Kind.FLIGHT, season.card);
  }

  /** From the Day screen: gone, digits, Tab, bearing, Tab, digits and p for paces, F2. */
  @Test
  void a_nominal_debrief_takes_at_most_eight_keys_besides_the_digits() {
    Desk desk = Desk.over(season.log);
    String script = "g870<tab>ne<tab>60p<f2>";
    desk.press(script);
    long digits = script.chars().filter(c -> Character.isDigit(c) && c != '2').count();

    assertThat(desk.keys() - digits).as("f2 has no digit typed").isLessThanOrEqualTo(8);
    assertThat(desk.keys()).isEqualTo(12);
    assertThat(flight().get(Flight.LANDING_DISTANCE).orElseThrow().metres())
        .as("60 paces of 30 in, FM 3-21.5 from memory")
        .isCloseTo(60 * 30 * 0.0254, within(1e-9));
    assertThat(Desk.OUTCOMES.told(flight())).isEqualTo("nominal");
  }

  @Test
  void marks_fill_the_delay_and_stand_beside_the_prediction() {
    Desk desk = debriefing(marked()).press("870");
    Golden.holds("debrief-marks", desk.frame());
    Golden.holds("debrief-marks-60x20", desk.frame(new Size(60, 20)));
    assertThat(desk.frame())
        .as("7.16 - 1.86 = 5.3, 0.3 more than 5; 870 ft in 62.84 s; 870 of 905 ft")
        .contains("870 ft (-4%), delay 5.3 s (+0.3), aloft 70 s (-1.5), down 13.8 ft/s (-0.2)");
    desk.press("<f2>");

    assertThat(flight().get(Flight.MEASURED_DELAY).orElseThrow().seconds())
        .isCloseTo(5.3, within(1e-9));
    assertThat(flight().get(Flight.TOUCHDOWN_MARK)).contains(new TimeSpan(70));
    Desk told = Desk.over(season.log).opening(world -> FlightScreen.of(season.card));
    Golden.holds("flight-marks", told.frame(new Size(80, 40)));
  }

  @Test
  void a_corrected_mark_corrects_the_delay_unless_that_was_typed() {
    debriefing(marked()).press("<tab>".repeat(12) + "7.86<tab><f2>");
    assertThat(flight().get(Flight.MEASURED_DELAY).orElseThrow().seconds())
        .as("7.86 - 1.86")
        .isCloseTo(6, within(1e-9));

    debriefing(Facts.none()).press("<tab>".repeat(11) + "5.5<tab>8.2<tab><f2>");
    assertThat(flight().get(Flight.MEASURED_DELAY)).contains(new TimeSpan(5.5));
    assertThat(flight().get(Flight.EJECTION_MARK)).contains(new TimeSpan(8.2));
  }

  @Test
  void a_boost_that_was_not_straight_asks_where_to() {
    Desk desk = debriefing(Facts.none()).press("<tab>".repeat(4));
    assertThat(desk.frame()).doesNotContain("Boost toward");
    desk.press("wea<tab>");
    assertThat(desk.frame()).contains("> Boost toward");
    desk.press("sw<tab>");
    assertThat(desk.frame()).contains("> Recovery").contains("Boost toward   sw");
    desk.press("<f2>");

    assertThat(flight().get(Flight.BOOST)).contains("weathercocked");
    assertThat(flight().get(Flight.BOOST_TOWARD)).contains(new Bearing(225));
  }

  @Test
  void the_condition_is_found_as_one_types_and_told_with_the_flight() {
    Desk desk = debriefing(Facts.none()).press("<tab>".repeat(8) + "fi cra<tab><s-tab>; no");
    Golden.holds("debrief-condition-60x20", desk.frame(new Size(60, 20)));
    desk.press(" sc<f2>");

    assertThat(flight().get(Flight.CONDITION))
        .contains(List.of(new PartState("fins", "cracked"), new PartState("nose", "scuffed")));
    Desk told = Desk.over(season.log).opening(world -> FlightScreen.of(season.card));
    assertThat(told.frame(new Size(80, 40)))
        .contains("Condition     fins cracked; nose cone scuffed");
  }

  @Test
  void several_things_to_mend_become_a_fix_each_in_the_same_act() {
    int before = season.log.actions().size();
    Desk desk =
        debriefing(Facts.none())
            .press("<tab>".repeat(9) + "reglue fin 2!; new lug ; check nose, grounds it<tab>");
    assertThat(desk.frame()).contains("To mend: reglue fin 2 (grounds it); new lug (look at)");
    Golden.holds("debrief-mend-60x20", desk.frame(new Size(60, 20)));
    desk.press("<f2>");

    List<Action> actions = season.log.actions();
    assertThat(actions.size() - before).as("mark, line typed, debrief").isEqualTo(3);
    assertThat(actions.get(actions.size() - 1).changes()).hasSize(4);
    assertThat(desk.book().openFixes(season.skylark))
        .extracting(fix -> fix.text() + ": " + fix.severity().words())
        .containsExactly("reglue fin 2: grounds it", "new lug: look at", "check nose: grounds it");
    assertThat(desk.book().openFixes(season.skylark))
        .allMatch(fix -> fix.facts().get(Fix.FLIGHT).isPresent());
    assertThat(flight().get(Flight.TO_MEND)).isEmpty();
  }

  @Test
  void the_altimeter_is_the_cards_and_can_be_another() {
    RecordId old = season.log.has(Kind.ALTIMETER, Facts.none().with(Altimeter.NAME, "old grey"));
    Desk desk = debriefing(Facts.none().with(Flight.ALTIMETER, season.altimeter));
    desk.press("870" + "<tab>".repeat(14));
    assertThat(desk.frame()).contains("> Altimeter      blue");
    desk.press("old<f2>");

    assertThat(flight().get(Flight.ALTIMETER)).contains(old);
    assertThat(flight().get(Flight.ALTITUDE)).contains(Length.ofFeet(870));
  }

  @Test
  void damage_told_before_parts_had_a_place_is_still_there() {
    assertThat(debriefing(Facts.none()).press("<up>" + "<tab>".repeat(15)).frame())
        .doesNotContain("Damage");
    Desk desk = debriefing(Facts.none().with(Flight.DAMAGE, "a fin", "a fin"));
    assertThat(desk.press("<tab>".repeat(16)).frame()).contains("Damage         a fin");
    desk.press("<f2>");
    assertThat(flight().get(Flight.DAMAGE)).contains("a fin");
  }
}
