package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.flight.Ruling;
import padside.preflight.Advice;
import padside.units.Speed;

/** What would help comes after the answer, with the same ticket. */
class LiveCheckTest {
  private static final String LOOKING = "What would help: looking…";

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

  /** What is read already does not move when the second answer comes. */
  @Test
  void nothing_above_the_help_moves_when_it_is_found() {
    Desk desk = card().press("<s-tab>8g14");
    String tall = pane(desk, new Size(120, 40));
    String low = pane(desk, new Size(80, 24));

    assertThat(tall).contains("Largest wind by rule");

    desk.advise(Fixed.advice());

    assertThat(pane(desk, new Size(120, 40))).isEqualTo(tall);
    assertThat(pane(desk, new Size(80, 24))).isEqualTo(low);
  }

  /** The check's side of the screen down to the heading of what would help. */
  private static String pane(Desk desk, Size size) {
    String pane = desk.frame(size).replaceAll("(?m)^.*│", "");
    return pane.substring(0, pane.indexOf("What would help"));
  }

  @Test
  void what_was_found_before_stands_in_its_place_while_it_is_looked_for_anew() {
    Desk desk = card().press("<s-tab>8g14").advise(Fixed.advice()).press("0");

    assertThat(desk.frame())
        .contains("8 gusting 140 mph")
        .containsSubsequence(LOOKING, "+ With the 12 in flat", "Expected flight");
    assertThat(desk.press("<home>c").frame()).doesNotContain("What would help");
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
    Desk desk = card().press("<s-tab>8g14").advise(Fixed.advice()).answerAgain(Fixed::check);

    assertThat(desk.frame()).contains("+ With the 12 in flat");
  }

  /** The words of the change give way to what comes of it. */
  @Test
  void on_the_smallest_terminal_the_first_help_keeps_its_outcome() {
    Advice.Help tilt =
        new Advice.Help(
            "with the rod leaning 10° toward SW, into the wind",
            Ruling.Verdict.GO,
            Optional.of(Speed.ofMph(14.4)),
            "rod exit 61 ft/s ÷ 4",
            Optional.empty(),
            Optional.empty());
    Desk desk =
        card().press("<s-tab>8g14").advise(new Advice(List.of(tilt, tilt), Optional.empty()));

    assertThat(desk.frame(Size.SMALLEST))
        .contains(" With the rod leaning 10°…: limit 14.4 mph, GO · 1 more: F3\n");
  }

  @Test
  void on_the_smallest_terminal_it_shows_that_a_remark_goes_on() {
    Advice nothing =
        new Advice(
            List.of(), Optional.of("Nothing helps but less wind, or another field. ".repeat(2)));
    Desk desk = card().press("<s-tab>8g14").advise(nothing);

    assertThat(desk.frame(Size.SMALLEST))
        .contains(" Nothing helps but less wind, or another field. Nothing he…\n");
  }

  @Test
  void when_nothing_helps_that_is_said() {
    Advice nothing = new Advice(List.of(), Optional.of("nothing in the range box would help"));

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
