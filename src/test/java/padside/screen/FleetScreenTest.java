package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Fix;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.flight.Rocket;
import padside.units.Length;
import padside.units.Mass;

class FleetScreenTest {
  private final Season season = new Season();
  private final Desk desk = Desk.over(season.log).opening(FleetScreen::open);

  private Facts rocket(RecordId id) {
    return season.log.facts(Kind.ROCKET, id);
  }

  @Test
  void an_empty_fleet_says_what_to_do() {
    Desk empty = Desk.over(new MemoryFlightLog()).opening(FleetScreen::open);
    Golden.holds("fleet-empty", empty.frame());
    Golden.holds("fleet-empty-find", empty.press("/<enter>x<esc>x<enter>").frame());
  }

  @Test
  void the_fleet() {
    Golden.holds("fleet", desk.frame());
    Golden.holds("fleet-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("fleet-120x40", desk.frame(new Size(120, 40)));
    Golden.holds("fleet-remove", desk.press("x").frame());
    Golden.holds("fleet-keys", desk.press("<esc>?").frame());
  }

  @Test
  void a_rocket_is_opened_and_changed() {
    Golden.holds("rocket", desk.press("<enter>").frame());
    Golden.holds("rocket-list", desk.press("<tab><tab><tab><tab><tab><down>").frame());
    Golden.holds("rocket-60x20", desk.frame(new Size(60, 20)));
    desk.press("<down><tab>24m<tab>");
    Golden.holds("rocket-doubt", desk.press("<s-tab>").frame());

    assertThat(rocket(season.skylark).get(Rocket.MOUNT)).contains(Length.ofMillimetres(24));
    assertThat(rocket(season.skylark).get(Rocket.ROD)).contains(new Length(24));
    desk.press("<esc>");
    assertThat(desk.frame()).contains("24 mm");
  }

  @Test
  void a_new_rocket_is_there_from_its_first_field_on() {
    desk.press("nMerlin<tab>");
    RecordId merlin = desk.book().rockets().get(2).id();
    assertThat(rocket(merlin).cells()).containsOnlyKeys("name");
    desk.press("1.5oz<tab><tab>25mm<tab>0<tab>");
    Golden.holds("rocket-new", desk.frame());
    desk.press("<esc>");

    assertThat(rocket(merlin).get(Rocket.MASS)).contains(Mass.ofOunces(1.5));
    assertThat(rocket(merlin).typed(Rocket.DRAG_COEFFICIENT)).contains("0");
    assertThat(desk.frame()).contains("> Merlin");
  }

  @Test
  void a_booster_weighs_less_than_the_rocket_it_is_a_part_of() {
    desk.press("<enter><tab><tab>3oz");
    assertThat(desk.frame())
        .contains("? Booster mass")
        .contains("Booster mass 3 oz is not below the bare mass of 2.5 oz");

    desk.press("<backspace><backspace><backspace>1.1oz");
    assertThat(desk.frame()).contains("> Booster mass");
    desk.press("<tab>");
    assertThat(rocket(season.skylark).get(Rocket.BOOSTER_MASS)).contains(Mass.ofOunces(1.1));
  }

  @Test
  void a_form_left_without_typing_adds_nothing() {
    int before = season.log.actions().size();
    desk.press("n<tab><tab><enter><s-tab><esc>");
    desk.press("<enter><tab><tab><down><enter><f2>");

    assertThat(season.log.actions()).hasSize(before);
    assertThat(desk.top()).isInstanceOf(RecordList.class);
  }

  @Test
  void a_rocket_is_removed_after_one_question_and_never_by_the_way() {
    desk.press("xn");
    assertThat(desk.book().rockets()).hasSize(2);
    desk.press("xx");

    assertThat(desk.book().rockets()).extracting(Rocket::name).containsExactly("Kestrel");
    assertThat(rocket(season.skylark).get(Rocket.NAME)).contains("Skylark");
    assertThat(desk.frame()).contains("> Kestrel");
  }

  @Test
  void only_lines_that_hold_every_word_stay() {
    desk.press("/KES");
    Golden.holds("fleet-find", desk.frame());
    desk.press("t<enter>");
    assertThat(desk.frame()).contains("Rocket: Kestrel");
    desk.press("<esc>");
    assertThat(desk.frame()).contains("1 of 2");
    desk.press("<esc>");
    assertThat(desk.frame()).contains("Skylark").contains("> Kestrel");
    assertThat(desk.press("/zz").frame()).contains("No line holds \"zz\".");
    assertThat(desk.press("<backspace><backspace><backspace><tab><home>").frame())
        .contains("> Skylark");
  }

  @Test
  void a_fix_is_noted_and_marked_as_mended_with_what_was_done() {
    desk.press("<down>f");
    Golden.holds("fixes", desk.frame());
    desk.press("d");
    Golden.holds("fix-form", desk.frame());
    desk.press("epoxy<enter>n").press("check nose<tab>g<f2>");
    Golden.holds("fixes-done", desk.frame());

    Facts done = season.log.facts(Kind.FIX, season.fix);
    assertThat(done.get(Fix.DONE)).contains(true);
    assertThat(done.get(Fix.DONE_NOTE)).contains("epoxy");
    assertThat(done.get(Fix.DONE_ON)).contains(LocalDate.of(2026, 5, 2));
    Fix added = desk.book().openFixes(season.kestrel).get(0);
    assertThat(added.text()).isEqualTo("check nose");
    assertThat(added.severity()).isEqualTo(Fix.Severity.GROUNDS_IT);

    desk.press("<end>d");
    assertThat(season.log.facts(Kind.FIX, season.fix).get(Fix.DONE)).contains(false);
    assertThat(season.log.facts(Kind.FIX, season.fix).get(Fix.DONE_ON)).isEmpty();
    assertThat(desk.press("<esc>").frame()).contains("2 grounded");
  }
}
