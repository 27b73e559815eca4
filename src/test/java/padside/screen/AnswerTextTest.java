package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.flight.Flight;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.Spread;
import padside.units.UnitSystem;

/** What the command line says, in the words of the screens. */
class AnswerTextTest {
  private final Meadow meadow = new Meadow().withMorning();

  private Card card(String wind) {
    Desk desk = meadow.desk().press("nher<enter>" + wind + "<enter><esc>");
    Flight kept = desk.book().flightsOf(meadow.day).get(desk.book().flights().size() - 1);
    return Card.of(kept, desk.book(), Desk.OUTCOMES, java.util.Optional.empty());
  }

  private static String text(Card card, Answer answer) {
    List<String> lines = AnswerText.whole(card, answer, 100, UnitSystem.US);
    return String.join("\n", lines);
  }

  @Test
  void nothing_is_said_to_be_looked_for_once_the_program_has_ended() {
    Card card = card("8g14 sw");

    assertThat(text(card, Fixed.check(card))).contains("NO-GO").doesNotContain("looking for");
  }

  @Test
  void what_would_help_stands_before_the_limits_with_what_binds_then() {
    Card card = card("8g14 sw");
    Answer answer = Fixed.check(card).with(Fixed.advice());

    assertThat(text(card, answer))
        .containsSubsequence(
            "+ With the 12 in flat: limit 14.4 mph (rod exit 61 ft/s ÷ 4), GO, apogee 915 ft,",
            "ejection 0.8 s late",
            "Largest wind by rule",
            "Expected flight");
  }

  @Test
  void spread_sun_and_air_are_told_with_the_flight() {
    assertThat(text(card("6"), Fixed.check(card("6"))))
        .contains("> delay 5      0.8 s late  24.9 ft/s   96 in 100 fire safely")
        .contains("Lands inside   93 in 100")
        .contains("lost: 5 to lane NE 280 ft (road)")
        .contains("lost: under 1 to wood E 330 ft (trees)")
        .contains("Sun            165° SSE, 42° up; stand S, 71° clear")
        .contains("Air            as at 1240 ft (density altitude)");
  }

  @Test
  void a_share_that_should_be_large_is_rounded_down_and_one_that_is_lost_is_never_none() {
    assertThat(OutlookText.share(0.9999)).isEqualTo("99 in 100");
    assertThat(OutlookText.share(1)).isEqualTo("100 in 100");
    assertThat(OutlookText.share(0.29)).as("not 28, for want of a last bit").startsWith("29");
    assertThat(OutlookText.past(new Spread.Past("pond", 0.004))).isEqualTo("under 1 to pond");
    assertThat(OutlookText.past(new Spread.Past("pond", 0.016))).isEqualTo("2 to pond");
  }
}
