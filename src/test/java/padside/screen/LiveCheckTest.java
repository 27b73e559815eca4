package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import padside.preflight.Advice;

/** What would help comes after the answer, with the same ticket. */
class LiveCheckTest {
  private static final String LOOKING = "looking for what would help…";

  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(1));

  private Desk card() {
    return meadow.desk().press("nher<enter>");
  }

  @Test
  void it_is_said_that_help_is_looked_for_until_it_is_found() {
    Desk desk = card().press("<s-tab>8g14");
    assertThat(desk.frame()).contains("NO-GO").contains(LOOKING);

    assertThat(desk.advise(Fixed.advice()).frame())
        .doesNotContain(LOOKING)
        .contains("+ With the 12 in flat: limit 14.4")
        .contains("mph, GO, 915 ft, 0.8 s late");
  }

  @Test
  void nothing_is_looked_for_while_the_answer_is_go() {
    assertThat(card().frame()).contains("GO").doesNotContain(LOOKING);
  }

  @Test
  void help_for_an_older_card_is_left_out() {
    Desk desk = card().press("<s-tab>8g14").holdChecks().press("<backspace>5");

    assertThat(desk.advise(Fixed.advice()).frame()).contains("out of date: NO-GO");
    assertThat(desk.answerChecks().frame()).contains("8 gusting 15 mph").contains(LOOKING);
  }

  @Test
  void an_answer_without_help_takes_none_away() {
    Desk desk = card().press("<s-tab>8g14").advise(Fixed.advice()).repeatAnswer();

    assertThat(desk.frame()).contains("+ With the 12 in flat");
  }

  @Test
  void when_nothing_helps_that_is_said() {
    Advice nothing =
        new Advice(
            java.util.List.of(), java.util.Optional.of("nothing in the range box would help"));

    assertThat(card().press("<s-tab>8g14").advise(nothing).frame().replaceAll("\\s+", " "))
        .contains("What would help")
        .contains("nothing in the range box would");
  }

  @Test
  void the_chart_and_the_whole_check_hear_it_too() {
    Desk desk = card().press("<s-tab>8g14<f3>");
    assertThat(desk.frame()).contains(LOOKING);

    assertThat(desk.advise(Fixed.advice()).frame()).contains("+ With B6-4: limit 15.2 mph");
    assertThat(desk.press("<esc>").frame()).contains("+ With B6-4");
  }
}
