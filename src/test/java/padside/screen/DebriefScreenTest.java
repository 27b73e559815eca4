package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Flight.PartState;
import padside.flight.Kind;
import padside.units.Bearing;
import padside.units.Length;

class DebriefScreenTest {
  private final Season season = new Season();
  private final Desk desk = debriefing();

  private Desk debriefing() {
    return Desk.over(season.log)
        .opening(world -> DebriefScreen.open(world.log().flight(season.card).orElseThrow(), world));
  }

  private Facts flight() {
    return season.log.facts(Kind.FLIGHT, season.card);
  }

  @Test
  void it_opens_with_the_nominal_outcome_and_the_cursor_in_the_altitude() {
    Golden.holds("debrief", desk.frame());
    Golden.holds("debrief-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("debrief-120x40", desk.frame(new Size(120, 40)));
    Golden.holds("debrief-list", desk.press("<tab><tab><tab><down>").frame());
  }

  @Test
  void a_nominal_flight_takes_its_altitude_and_one_key() {
    int before = season.log.actions().size();
    desk.press("870<f2>");

    assertThat(season.log.actions()).hasSize(before + 1);
    assertThat(flight().get(Flight.STATUS)).contains(Flight.Status.FLOWN);
    assertThat(flight().get(Flight.ALTITUDE)).contains(Length.ofFeet(870));
    assertThat(Desk.OUTCOMES.told(flight())).isEqualTo("nominal");
    assertThat(desk.top()).isNotInstanceOf(DebriefScreen.class);
  }

  @Test
  void the_nominal_outcome_counts_only_once_it_is_kept() {
    int before = season.log.actions().size();
    desk.press("<tab><tab><tab><esc>");
    assertThat(season.log.actions()).hasSize(before);

    Desk again = debriefing().press("870" + "<tab>".repeat(10) + "cato<esc>");
    assertThat(flight().get(Flight.STATUS)).contains(Flight.Status.CARD);
    assertThat(flight().get(Flight.ALTITUDE)).contains(Length.ofFeet(870));
    assertThat(flight().get(Flight.BOOST)).isEmpty();
    assertThat(flight().get(Flight.LANDING)).isEmpty();
    assertThat(again.top()).isNotInstanceOf(DebriefScreen.class);
    assertThat(debriefing().frame()).contains("870").contains("CATO: case burst");
  }

  @Test
  void what_was_not_nominal_is_told() {
    desk.press("<tab>ne<tab>220<tab>late<tab><tab><tab>hard<tab>tr<tab>fin cra; lug li<f2>");

    assertThat(Desk.OUTCOMES.told(flight()))
        .isEqualTo("ejection late, landing hard, landed on tree");
    assertThat(flight().get(Flight.LANDING_BEARING)).contains(new Bearing(45));
    assertThat(flight().get(Flight.LANDING_DISTANCE)).contains(Length.ofFeet(220));
    assertThat(flight().get(Flight.CONDITION))
        .contains(List.of(new PartState("fins", "cracked"), new PartState("lug", "li")));
  }

  @Test
  void what_is_to_be_mended_becomes_a_fix_in_the_same_act() {
    desk.press("870" + "<tab>".repeat(9) + "reglue fin<tab>g<esc>");
    assertThat(desk.book().openFixes(season.skylark)).isEmpty();
    Desk again = debriefing();
    assertThat(again.frame()).contains("reglue fin").contains("grounds it");
    again.press("<f2>");

    Action last = season.log.actions().get(season.log.actions().size() - 1);
    assertThat(last.changes()).hasSize(2);
    Fix fix = again.book().openFixes(season.skylark).get(0);
    assertThat(fix.text()).isEqualTo("reglue fin");
    assertThat(fix.severity()).isEqualTo(Fix.Severity.GROUNDS_IT);
    assertThat(fix.facts().get(Fix.FLIGHT)).contains(season.card);
    assertThat(flight().get(Flight.TO_MEND)).isEqualTo(Optional.empty());
    debriefing().press("<f2>");
    assertThat(again.book().openFixes(season.skylark)).hasSize(1);
  }

  @Test
  void an_unlikely_altitude_is_doubted_and_kept() {
    desk.press("8500");
    Golden.holds("debrief-doubt", desk.frame());
    desk.press("<f2>");

    assertThat(flight().get(Flight.ALTITUDE)).contains(Length.ofFeet(8500));
  }

  @Test
  void a_debrief_that_could_not_be_kept_stays_with_all_that_was_typed() {
    desk.failNextSave(new Fault("disk-full", "The disk is full.", "Make room.")).press("870<f2>");
    assertThat(desk.frame()).contains("The disk is full.");
    assertThat(desk.press("<enter>").frame()).contains("Debrief: Skylark on C6-5").contains("870");
    desk.press("<f2>");

    assertThat(flight().get(Flight.ALTITUDE)).contains(Length.ofFeet(870));
    assertThat(flight().get(Flight.STATUS)).contains(Flight.Status.FLOWN);
  }

  @Test
  void enter_in_the_last_field_keeps_it_too() {
    desk.press("870" + "<enter>".repeat(16));
    assertThat(flight().get(Flight.STATUS)).contains(Flight.Status.FLOWN);
  }

  @Test
  void what_is_told_is_kept_whenever_the_answers_of_its_saves_come() throws Exception {
    Trials.run(
        300,
        (number, random) -> {
          Season each = new Season();
          Desk slow =
              Desk.over(each.log)
                  .opening(
                      world ->
                          DebriefScreen.open(world.log().flight(each.card).orElseThrow(), world))
                  .holdSaves();
          for (String key :
              List.of("6", "4", "0", "<tab>", "<tab>", "<tab>", "l", "a", "t", "e", "<f2>")) {
            slow.press(key);
            for (int i = random.nextInt(3); i > 0; i--) {
              slow.after(Duration.ofMillis(random.nextInt(1200)));
              if (random.nextBoolean()) {
                slow.answerSaves();
              }
            }
          }
          slow.answerSaves();
          Facts told = each.log.facts(Kind.FLIGHT, each.card);
          assertThat(Desk.OUTCOMES.told(told)).isEqualTo("ejection late");
          assertThat(told.get(Flight.ALTITUDE)).contains(Length.ofFeet(640));
        });
  }
}
