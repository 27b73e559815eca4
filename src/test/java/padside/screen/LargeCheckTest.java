package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Verdict, wind and limit to be read at arm's length. */
class LargeCheckTest {
  private static final Size WIDE = new Size(120, 40);
  private static final Size WIDEST = new Size(200, 60);

  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(4));

  private Desk pad() {
    return meadow.desk().press("nher<enter>6g9 SW<f5>");
  }

  @Test
  void frames_of_the_large_figures() {
    Desk desk = pad().press("v");
    Golden.holds("large", desk.frame());
    Golden.holds("large-60x20", desk.frame(Size.SMALLEST));
    Golden.holds("large-120x40", desk.frame(WIDE));
    Golden.holds("large-200x60", desk.frame(WIDEST));
    desk.press("v").press("w14g18 SW<enter>v");
    Golden.holds("large-no-go", desk.frame());
    Golden.holds("large-no-go-60x20", desk.frame(Size.SMALLEST));
  }

  @Test
  void large_figures_follow_the_wind_and_any_key_leads_back_and_does_nothing_else() {
    Desk desk = pad().press("v");
    assertThat(desk.frame()).contains("wind mph").contains("gust mph").contains("limit mph");
    assertThat(desk.frame()).doesNotContain("[ ]");

    for (String key : new String[] {"a", " ", "m", "<esc>", "<enter>"}) {
      assertThat(desk.press(key).frame()).as(key).contains("[ ] wadding").contains("to tick");
      desk.press("v");
    }
    String before = desk.frame();
    desk.press("v").press("w14g18 SW<enter>v");
    assertThat(desk.frame()).isNotEqualTo(before).contains("wind mph");
  }

  @Test
  void while_the_check_is_out_no_word_stands_that_may_be_out_of_date() {
    Desk desk = pad().holdChecks().press("w14g18 SW<enter>v");
    assertThat(desk.frame()).contains("██").doesNotContain("limit mph");
    assertThat(desk.answerChecks().frame()).contains("limit mph");
  }

  @Test
  void frames_for_cold_hands() {
    Golden.holds("pad-cold", pad().press("<f12> ").frame());
    Golden.holds("pad-cold-60x20", pad().press("<f12> ").frame(Size.SMALLEST));
    Golden.holds("day-cold", meadow.desk().press("<f12><down>").frame());
  }

  /** From the Day screen to the count: the wind typed, four parts, armed. */
  @Test
  void cold_hands_need_no_more_keys_for_a_flight_than_warm_ones() {
    String flight = "n<enter>7g9 W<f5><enter><enter><enter><enter>a";
    assertThat(meadow.desk().press(flight).frame()).contains("ARMED");

    Desk cold = meadow.desk().press("<f12>");
    for (Key key : Key.script(flight)) {
      cold.after(Duration.ofMillis(200)).press(key.name());
    }
    assertThat(cold.frame()).contains("ARMED");
  }
}
