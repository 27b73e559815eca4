package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.RecordId;
import padside.flight.Attempt;
import padside.flight.Flight;
import padside.units.TimeSpan;

/** The wait is that of the US model code: 60 s, interlock out, after the last attempt (seen). */
class MisfireScreenTest {
  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(4));

  private Desk launched() {
    return meadow
        .desk()
        .press("nher<enter>6g9 SW<f5><enter><enter><enter><enter>a ")
        .running(Duration.ofSeconds(8));
  }

  private static Duration seconds(int seconds) {
    return Duration.ofSeconds(seconds);
  }

  private static List<Attempt> attempts(Desk desk) {
    return desk.book().attempts();
  }

  @Test
  void frames_of_the_wait() {
    Desk desk = launched().press("m").running(seconds(17));
    Golden.holds("misfire", desk.frame());
    Golden.holds("misfire-60x20", desk.press("<down>").frame(Size.SMALLEST));
    Golden.holds("misfire-120x40", desk.press("<up>").frame(new Size(120, 40)));
  }

  @Test
  void the_key_alone_keeps_the_attempt_with_both_clocks() {
    Desk desk = launched().press("m");

    RecordId flight = meadow.flight(4).id();
    Attempt attempt = desk.book().attemptsOf(flight).get(0);
    assertThat(attempt.facts().get(Attempt.AT)).contains(Desk.MORNING.plusSeconds(8));
    assertThat(attempt.facts().get(Attempt.UP)).contains(new TimeSpan(3608));
    assertThat(attempt.facts().get(Attempt.BOOT)).contains("boot-1");
  }

  @Test
  void the_rule_is_said_in_words_and_the_bell_rings_once_at_the_end() {
    Desk desk = launched().press("m");
    assertThat(desk.frame())
        .contains("KEY OUT. Nobody goes near the pad for 60 s (US model code, seen");

    desk.running(seconds(59));
    assertThat(desk.bells()).isZero();
    desk.running(seconds(2));
    assertThat(desk.bells()).isEqualTo(1);
    assertThat(desk.frame()).contains("The 60 s are over");
    assertThat(desk.running(seconds(120)).bells()).isEqualTo(1);
  }

  @Test
  void igniter_and_cause_are_told_while_waiting() {
    Desk desk = launched().press("mdid not burn<enter>own copper<enter>clips were green<enter>");

    Attempt attempt = attempts(desk).get(0);
    assertThat(attempt.facts().get(Attempt.CAUSE)).contains("igniter_dead");
    assertThat(attempt.facts().get(Attempt.IGNITER)).contains("own copper");
    assertThat(attempt.facts().get(Attempt.NOTE)).contains("clips were green");
    assertThat(attempts(desk)).hasSize(1);
    assertThat(desk.top()).isInstanceOf(PadScreen.class);
  }

  @Test
  void the_checklist_comes_back_with_pad_and_key_to_read_anew_and_counts_the_attempts() {
    Desk desk = launched().press("m<esc>");

    assertThat(desk.frame())
        .contains("Pad · Grey Heron on C6-5 · 2nd attempt")
        .contains("[x] wadding")
        .contains("[ ] lug on the rod")
        .contains("[x] people back")
        .contains("[ ] key in");
    desk.press("<esc>");
    assertThat(desk.frame()).contains("2nd attempt");
    assertThat(desk.press("c").frame()).contains("Card 4, 2nd attempt");
  }

  @Test
  void nobody_arms_before_the_wait_is_over_and_the_checklist_tells_what_is_left() {
    Desk desk = launched().press("m<esc><enter><enter><enter>").running(seconds(15)).press("a");
    assertThat(desk.frame()).contains("MISFIRE: key out, nobody near Grey Heron on C6-5 for 45 s.");

    desk.running(seconds(46)).press("a");
    assertThat(desk.bells()).as("rung while the checklist was looked at").isEqualTo(1);
    assertThat(desk.frame()).contains("ARMED");
  }

  @Test
  void the_wait_goes_on_while_the_day_is_looked_at() {
    Desk desk = launched().press("m<esc><esc>").running(seconds(20));
    assertThat(desk.frame()).contains("MISFIRE: key out, nobody near Grey Heron on C6-5 for 40 s");

    assertThat(desk.press("l").running(seconds(41)).bells()).isEqualTo(1);
  }

  @Test
  void a_crash_during_the_wait_comes_back_to_it() {
    Desk desk = launched().press("mdid not b<enter>").running(seconds(20)).restart();
    assertThat(desk.frame()).contains("Misfire · Grey Heron").contains("igniter did not burn");

    desk.press("<tab>own copper<f2>");
    assertThat(attempts(desk)).hasSize(1);
    assertThat(attempts(desk).get(0).facts().get(Attempt.IGNITER)).contains("own copper");
    assertThat(desk.frame()).contains("nobody near Grey Heron on C6-5 for 40 s");
    assertThat(desk.running(seconds(41)).restart().top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void two_misfires_and_then_it_flies_and_everything_is_told_afterwards() {
    Desk desk = launched().press("mdid not b<enter>own copper<f2>").running(seconds(61));
    desk.press("<enter><enter><enter>a ").running(seconds(7)).press("mclips t<enter><f2>");
    assertThat(desk.frame()).contains("3rd attempt");

    desk.running(seconds(61)).press("<enter><enter><enter>a ").running(seconds(6));
    desk.press(" ").after(seconds(7)).press(" ").after(seconds(50)).press(" <enter><f2>");
    RecordId flight = meadow.flight(4).id();
    assertThat(desk.book().attemptsOf(flight)).hasSize(2);
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.FLOWN);

    String told = desk.press("lv").frame(new Size(120, 40));
    assertThat(told)
        .contains("09:30 igniter did not burn, igniter own copper")
        .contains("clips touching or off")
        .contains("13 lines")
        .contains("measured 7 s");
  }

  @Test
  void every_attempt_is_counted_by_its_ordinal() {
    Desk desk = launched();
    for (int i = 0; i < 12; i++) {
      desk.press("m<f2>").running(seconds(61));
    }
    assertThat(desk.frame()).contains("13th attempt");
  }
}
