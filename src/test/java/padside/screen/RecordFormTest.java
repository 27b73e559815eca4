package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.MemoryFlightLog;
import padside.flight.Rocket;
import padside.units.Mass;

/** No way of leaving a form loses what was typed. */
class RecordFormTest {
  private static final long SEED = 20260502;
  private final Fault full = new Fault("disk-full", "The disk is full.", "Make room.");

  private final MemoryFlightLog log = new MemoryFlightLog();
  private final Desk desk = Desk.over(log).opening(FleetScreen::open);

  private Facts only() {
    List<Rocket> rockets = desk.book().rockets();
    assertThat(rockets).hasSize(1);
    return rockets.get(0).facts();
  }

  @Test
  void what_stands_in_the_field_when_the_flier_leaves_is_kept() {
    desk.press("nMerlin<tab>1.5<esc>");

    assertThat(only().get(Rocket.MASS)).contains(Mass.ofOunces(1.5));
  }

  @Test
  void what_is_typed_before_the_record_has_its_id_follows() {
    desk.holdSaves().press("nMerlin<tab>1.5<tab><tab>24mm<esc>");
    assertThat(desk.frame()).contains("No rockets yet");
    assertThat(log.actions()).isEmpty();
    desk.answerSaves();

    assertThat(only().get(Rocket.NAME)).contains("Merlin");
    assertThat(only().get(Rocket.MASS)).contains(Mass.ofOunces(1.5));
    assertThat(only().typed(Rocket.DIAMETER)).contains("24mm");
    assertThat(desk.session().stack()).hasSize(2);
  }

  @Test
  void the_list_below_takes_keys_while_the_last_save_is_under_way() {
    desk.holdSaves().press("nMerlin<esc>nKestrel<esc>").answerSaves();

    assertThat(desk.book().rockets()).extracting(Rocket::name).containsExactly("Merlin", "Kestrel");
    assertThat(desk.session().stack()).hasSize(2);
  }

  @Test
  void a_form_comes_back_when_its_last_save_fails() {
    desk.failNextSave(full).press("nMerlin<esc>");
    assertThat(desk.frame()).contains("The disk is full.");
    assertThat(desk.press("<enter>").frame()).contains("Rocket: Merlin");
    desk.press("<esc>");

    assertThat(only().get(Rocket.NAME)).contains("Merlin");
    assertThat(desk.top()).isInstanceOf(RecordList.class);
  }

  @Test
  void a_save_that_failed_on_the_way_is_sent_again_with_the_next() {
    desk.press("nMerlin<tab>").failNextSave(full).press("1.5<tab><enter><tab>24mm<esc>");

    assertThat(only().get(Rocket.MASS)).contains(Mass.ofOunces(1.5));
    assertThat(only().typed(Rocket.DIAMETER)).contains("24mm");
  }

  @Test
  void a_quit_in_the_middle_of_a_word_keeps_the_word() {
    desk.press("nMer<c-c>");
    assertThat(desk.frame()).contains("Leave Padside?");
    assertThat(only().get(Rocket.NAME)).contains("Mer");
    assertThat(desk.press("q").hasQuit()).isTrue();
  }

  @Test
  void a_text_longer_than_its_box_is_shown_whole_below() {
    String note = "A long note on how the shock cord was replaced, ".repeat(4);
    desk.press("nMerlin");
    for (int i = 0; i < 10; i++) {
      desk.press("<tab>");
    }
    Golden.holds("form-long-text", desk.press(note.strip()).frame());
  }

  @Test
  void it_tells_whether_all_is_kept() {
    assertThat(desk.press("nMer").frame()).contains("kept when you go on");
    assertThat(desk.holdSaves().press("lin<tab>").frame()).contains("keeping …");
    assertThat(desk.answerSaves().frame()).contains("all kept");
  }

  /** Keys of every sort in every order; at the end the log holds what the form showed. */
  @Test
  void random_keys_end_in_a_log_that_has_what_the_form_showed() {
    Random random = new Random(SEED);
    for (int script = 0; script < 60; script++) {
      Desk each = Desk.over(new MemoryFlightLog()).opening(FleetScreen::open).press("nX");
      String pressed = pressedAtRandom(each, random);
      Facts shown = ((RecordForm) each.top()).form().accepted().touchedFacts();
      each.press("<esc>");

      assertThat(each.book().rockets()).as(pressed).hasSize(1);
      Facts kept = each.book().rockets().get(0).facts();
      for (var cell : shown.cells().entrySet()) {
        assertThat(kept.cells().getOrDefault(cell.getKey(), Facts.Cell.emptied()))
            .as("seed %s: %s", SEED, pressed)
            .isEqualTo(cell.getValue());
      }
    }
  }

  private static String pressedAtRandom(Desk desk, Random random) {
    List<String> keys =
        List.of(
            "a",
            "4",
            "g",
            " ",
            "?",
            "<tab>",
            "<s-tab>",
            "<left>",
            "<backspace>",
            "<delete>",
            "<down>",
            "<up>",
            "<c-u>",
            "<home>",
            "<end>",
            "<c-c><esc>",
            "<f1><esc>");
    StringBuilder pressed = new StringBuilder();
    for (int i = 0; i < 40; i++) {
      pressed.append(keys.get(random.nextInt(keys.size())));
    }
    desk.press(pressed.toString());
    return pressed.toString();
  }
}
