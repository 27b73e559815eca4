package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Looks and hands are changed by one key on any screen, typing or not. */
class EaseTest {
  private final Desk desk = new Meadow().withMorning().desk();

  private Ease ease() {
    return desk.session().world().ease();
  }

  @Test
  void one_key_goes_round_all_looks_and_the_terminal_is_told() {
    assertThat(ease()).isEqualTo(Ease.usual());

    desk.press("n<f8>");
    assertThat(ease().looks()).isEqualTo(Ease.Looks.WHITE_ON_BLACK);
    assertThat(desk.used()).contains(ease());
    assertThat(desk.frame()).contains("White on black, for dusk; warm hands.");
    assertThat(desk.press("<f8>").frame()).contains("No colours");
    assertThat(desk.used()).contains(ease());
    assertThat(desk.press("<f8>").session().world().ease()).isEqualTo(Ease.usual());
  }

  @Test
  void one_key_takes_cold_hands_into_account_and_no_longer() {
    assertThat(desk.press("<f12>").frame()).contains("cold hands.");
    assertThat(ease().hands()).isEqualTo(Ease.Hands.COLD);
    assertThat(desk.after(Duration.ofSeconds(1)).press("<f12>").frame()).contains("warm hands.");
    assertThat(ease()).isEqualTo(Ease.usual());
  }

  @Test
  void a_key_that_cold_fingers_press_twice_counts_once() {
    Meadow meadow = new Meadow().withMorning();
    Desk warm = meadow.desk().press("<c-c>").after(Duration.ofMillis(100)).press("<c-c>");
    assertThat(warm.hasQuit()).isTrue();

    Desk cold = meadow.desk().press("<f12><c-c>").after(Duration.ofMillis(100)).press("<c-c>");
    assertThat(cold.hasQuit()).isFalse();
    assertThat(cold.frame()).contains("Leave Padside?");
    assertThat(cold.press("<esc>l").frame()).startsWith(" Log");
    cold.press("<esc>").after(Duration.ofMillis(149)).press("<esc>");
    assertThat(cold.press("l<down>v").after(Duration.ofMillis(149)).press("v").frame())
        .contains("OUTCOME");
    cold.press("<esc>").after(Duration.ofMillis(149)).press("<esc>");
    assertThat(cold.frame()).startsWith(" Log");
    assertThat(cold.after(Duration.ofMillis(151)).press("<esc>").frame()).startsWith(" Day");
  }

  /** Keyboards begin to repeat after a quarter to two thirds of a second; from memory. */
  @Test
  void a_key_that_put_a_question_and_is_held_down_does_not_answer_it() {
    desk.press("<f12>bx");
    for (int held = 0; held < 30; held++) {
      desk.after(Duration.ofMillis(held == 0 ? 660 : 33)).press("x");
    }
    assertThat(desk.frame()).contains("x removes it, any other key keeps it");
    assertThat(desk.after(Duration.ofMillis(701)).press("x").frame())
        .doesNotContain("x removes it");
    assertThat(desk.press("r").frame()).contains("Removed:");

    desk.press("<esc>").after(Duration.ofSeconds(1)).press("<esc>q");
    desk.after(Duration.ofMillis(660)).press("q");
    assertThat(desk.hasQuit()).isFalse();
    assertThat(desk.press("y").hasQuit()).as("another key answers at once").isTrue();
  }

  @Test
  void a_second_press_of_the_key_that_leads_to_a_field_is_not_typed_into_it() {
    desk.press("<f12>");
    String once = desk.press("n").frame();
    assertThat(desk.after(Duration.ofMillis(80)).press("n").frame()).isEqualTo(once);
    assertThat(desk.after(Duration.ofSeconds(1)).press("nn").frame()).contains("Rocket      nn");
  }

  @Test
  void a_mark_is_taken_back_once_by_a_key_pressed_twice() {
    desk.press("<f12>nher<enter>6g9 SW<f5>").after(Duration.ofSeconds(1));
    for (String key : new String[] {"<enter>", "<enter>", "<enter>", "<enter>", "a", " "}) {
      desk.press(key).after(Duration.ofSeconds(1));
    }
    desk.running(Duration.ofSeconds(5)).press(" ").after(Duration.ofSeconds(3)).press(" ");
    assertThat(desk.frame()).contains("next: TOUCHDOWN");
    desk.after(Duration.ofSeconds(1)).press("<backspace>");
    desk.after(Duration.ofMillis(80)).press("<backspace>");
    assertThat(desk.frame()).contains("next: EJECTION");
  }

  @Test
  void where_no_colours_can_be_shown_that_is_told_and_the_choice_stays() {
    desk.showing(Ease.Colours.NO_COLOR).press("<f8>");
    assertThat(desk.frame())
        .contains("No colours: NO_COLOR is set and wins over black on white; warm hands.");
    assertThat(ease().looks()).isEqualTo(Ease.Looks.BLACK_ON_WHITE);
    assertThat(ease().shown()).isEqualTo(Ease.Looks.MONOCHROME);
    assertThat(desk.press("<f12>").frame()).contains("wins over black on white; cold hands.");

    desk.showing(Ease.Colours.NONE_HERE).press("<f8>");
    assertThat(desk.frame()).contains("No colours: this terminal cannot show black on white;");
  }

  @Test
  void what_is_typed_and_moved_with_cold_fingers_counts_every_time() {
    desk.press("<f12>n<down>").press("<tab>");
    assertThat(desk.press("22").frame()).contains("22");
    assertThat(desk.press("<backspace><backspace>").frame()).doesNotContain(" 22 ");
  }

  @Test
  void leaving_is_reached_by_plain_keys_and_so_is_the_shell() {
    assertThat(desk.press("<f10>").frame()).contains("Leave Padside?").contains("z shell");
    assertThat(desk.press("l").frame()).startsWith(" Day");
    assertThat(desk.press("<f10> ").hasQuit()).isTrue();
  }
}
