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
    assertThat(cold.after(Duration.ofMillis(149)).press("<c-c>").hasQuit()).isFalse();
    assertThat(cold.after(Duration.ofMillis(151)).press("<c-c>").hasQuit()).isTrue();
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
