package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;

/** What stands in a field that was not left yet is kept a second after the last key. */
class TypingPauseTest {
  private final Meadow meadow = new Meadow().withMorning();
  private final Desk desk = meadow.desk();

  private List<Action> actions() {
    return meadow.log.actions();
  }

  private Desk pause() {
    return desk.running(Duration.ofSeconds(1)).answerSaves();
  }

  private Facts last() {
    List<Action.Change> changes = actions().get(actions().size() - 1).changes();
    return changes.get(changes.size() - 1).facts();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "a card's wind     | nher<enter>          | 6g9    | wind_mean_mps",
        "a card's rocket   | n                    | he     | rocket",
        "a debrief         | d                    | 640f   | altitude_m",
        "a day             | o                    | mil    | field",
        "the day as it is  | e<tab><tab><tab><tab>| tw     | pads",
        "a reading         | w                    | 6g     | wind_mean_mps",
        "a fix             | <up>m n              | reglu  | text",
        "a rocket          | f n                  | Merl   | name",
        "a lot             | b n                  | C6     | motor",
        "a device          | b<tab> n             | 12 in  | name",
        "an altimeter      | b<tab><tab> n        | blue   | name",
        "a field           | p n                  | Nor    | name",
        "a sighting        | <up>i n              | 4      | bearing_deg",
        "a checklist line  | <end>                |        | ",
      })
  void every_form_keeps_a_text_begun(String form, String keys, String typed, String column) {
    if (column == null) {
      desk.opening(world -> CheckLineShelf.of(java.util.Optional.empty(), world)).press("n");
      typed = "bat";
      column = "text";
    }
    for (String part : keys.split(" ", -1)) {
      desk.press(part);
    }
    int before = actions().size();
    pause();
    assertThat(actions()).as("nothing typed yet").hasSize(before);

    desk.press(typed);
    Screen top = desk.top();
    String frame = desk.frame();
    pause();
    assertThat(actions()).as(frame).hasSize(before + 1);
    assertThat(actions().get(before).label()).startsWith("typing: ");
    assertThat(last().cells().get(column)).as(frame).isNotNull();
    assertThat(last().cells().get(column).typed()).contains(typed);
    assertThat(desk.top().getClass()).isEqualTo(top.getClass());
    assertThat(desk.frame().lines().filter(line -> line.contains("> ")).toList())
        .as("field, text and list as they were")
        .isEqualTo(frame.lines().filter(line -> line.contains("> ")).toList());

    pause();
    assertThat(actions()).as("once").hasSize(before + 1);
  }

  @Test
  void what_cannot_be_read_is_kept_as_typed() {
    desk.press("nher<enter>twelv");
    pause();

    assertThat(last().cells().get("wind_mean_mps")).isEqualTo(Facts.Cell.unread("twelv"));
    desk.press("e mph<tab>");
    assertThat(last().cells().get("wind_mean_mps")).isEqualTo(Facts.Cell.unread("twelve mph"));
  }

  @Test
  void typing_goes_on_where_it_was_and_the_list_stays_open() {
    desk.press("nh");
    pause();
    assertThat(desk.frame()).contains("> Grey Heron");

    desk.press("er<enter>");
    assertThat(meadow.flight(4).rocket()).contains(meadow.heron);
    assertThat(meadow.flight(4).facts().get(Flight.ROD)).as("its set-up").isPresent();
  }

  @Test
  void time_is_counted_from_the_last_key() {
    desk.press("nher<enter>6");
    int before = actions().size();
    for (String key : List.of("g", "9", " ", "S", "W")) {
      desk.after(Duration.ofMillis(700)).press(key);
    }
    assertThat(actions()).hasSize(before);
    desk.after(Duration.ofMillis(900)).answerSaves();
    assertThat(actions()).hasSize(before + 1);
  }

  @Test
  void a_form_only_looked_through_makes_no_record() {
    int before = actions().size();
    desk.press("n<left><f3><esc>");
    pause();
    desk.press("<esc>fn<tab><tab><up>");
    pause();

    assertThat(actions()).hasSize(before);
  }

  @Test
  void a_text_under_another_screen_is_kept_too() {
    desk.press("nher<enter><end>Ann's<f1>");
    pause();

    assertThat(last().cells().values()).extracting(Facts.Cell::typed).isNotEmpty();
    assertThat(desk.press("<esc>").frame()).contains("Ann's");
  }

  @Test
  void what_failed_goes_out_again_with_the_next_pause() {
    int before = actions().size();
    desk.press("fnMer");
    desk.failNextSave(new Fault("full", "The disk is full.", "Make room."));
    pause();
    assertThat(actions()).hasSize(before);
    desk.press("<enter>lin");
    pause();

    assertThat(last().get(Rocket.NAME)).contains("Merlin");
  }

  @Test
  void the_history_has_a_text_typed_in_pauses_as_one_change() {
    desk.press("fn");
    for (String part : List.of("Mer", "l", "in")) {
      desk.press(part);
      pause();
    }
    desk.press("<tab>30");
    pause();
    desk.press("g<tab><esc>h");

    assertThat(desk.frame()).contains("add rocket", "change rocket", "blank → 30g");
    assertThat(desk.frame()).doesNotContain("typing");
    assertThat(desk.frame()).containsOnlyOnce("  change rocket").containsOnlyOnce("  add rocket");

    desk.press("u");
    assertThat(rocket().get(Rocket.MASS)).isEmpty();
    assertThat(rocket().typed(Rocket.MASS)).as("not half of it").isEmpty();
    assertThat(rocket().get(Rocket.NAME)).contains("Merlin");
    desk.press("r");
    assertThat(rocket().typed(Rocket.MASS)).contains("30g");
    assertThat(desk.press("<end>u").book().rockets()).hasSize(3);
  }

  private Facts rocket() {
    return desk.book().rockets().stream()
        .filter(each -> each.name().equals("Merlin"))
        .findFirst()
        .orElseThrow()
        .facts();
  }

  @Test
  void one_key_on_the_day_takes_all_of_a_text_back() {
    desk.press("nher<enter><end>cross");
    pause();
    desk.press("wind");
    pause();
    desk.press("<esc>u");

    assertThat(meadow.flight(4).facts().get(Flight.NOTE)).isEmpty();
    assertThat(meadow.log.facts(Kind.FLIGHT, meadow.flight(4).id()).typed(Flight.NOTE)).isEmpty();
  }
}
