package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Fault;
import padside.flight.Flight;
import padside.units.TimeSpan;

class MarkScreenTest {
  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(4));

  /** The heron, just off the rod. */
  private Desk lifted() {
    return meadow
        .desk()
        .press("nher<enter>6g9 SW<f5><enter><enter><enter><enter>a ")
        .running(Duration.ofSeconds(5))
        .press(" ");
  }

  private static Duration seconds(double seconds) {
    return Duration.ofMillis(Math.round(seconds * 1000));
  }

  private Flight flight() {
    return meadow.flight(4);
  }

  private Optional<TimeSpan> ejection() {
    return flight().facts().get(Flight.EJECTION_MARK);
  }

  private Optional<TimeSpan> touchdown() {
    return flight().facts().get(Flight.TOUCHDOWN_MARK);
  }

  @Test
  void the_space_bar_marks_ejection_and_touchdown_and_enter_opens_the_debrief() {
    Desk desk = lifted().after(seconds(6.52)).press(" ");
    assertThat(ejection()).contains(new TimeSpan(6.52));
    assertThat(desk.frame()).contains("next: TOUCHDOWN");

    desk.after(seconds(58)).press(" ");
    assertThat(touchdown()).contains(new TimeSpan(64.52));
    assertThat(desk.after(seconds(9)).press(" ").frame()).contains("DOWN").contains("64.5 s");

    assertThat(desk.press("<enter>").top()).isInstanceOf(DebriefScreen.class);
    assertThat(desk.press("<f2>").top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void frames_of_the_marks() {
    Desk desk = lifted().after(seconds(12.3));
    Golden.holds("marks-120x40", desk.frame(new Size(120, 40)));
    desk.press(" ").after(seconds(40)).press(" ");
    Golden.holds("marks", desk.frame());
    Golden.holds("marks-60x20", desk.frame(Size.SMALLEST));
  }

  @Test
  void the_prediction_stands_beside_the_marks_with_the_difference() {
    // Made-up flight of the tests: ejection after 6.9 s, down after 71 s.
    Desk desk = lifted().after(seconds(6.5)).press(" ").after(seconds(60)).press(" ");

    assertThat(desk.frame())
        .contains("6.5 s (-0.4 s)    predicted 6.9 s")
        .contains("66.5 s (-4.5 s)   predicted 71 s")
        .contains("±0.2 s");
    assertThat(flight().facts().get(Flight.PREDICTED_EJECTION)).contains(new TimeSpan(6.9));
    assertThat(flight().facts().get(Flight.PREDICTED_ALOFT)).contains(new TimeSpan(71));
  }

  @Test
  void an_ejection_not_seen_leaves_the_touchdown_to_mark() {
    lifted().after(seconds(7)).press("n").after(seconds(30)).press(" ");

    assertThat(ejection()).isEmpty();
    assertThat(touchdown()).contains(new TimeSpan(37));
  }

  @Test
  void marks_are_taken_back_from_the_last_to_the_lift_off() {
    Desk desk = lifted().after(seconds(6)).press(" ").after(seconds(30)).press(" ");

    desk.press("<backspace>");
    assertThat(touchdown()).isEmpty();
    assertThat(ejection()).contains(new TimeSpan(6));
    assertThat(desk.frame()).contains("next: TOUCHDOWN");

    desk.press("<backspace>");
    assertThat(ejection()).isEmpty();
    desk.press("n<backspace>");
    assertThat(desk.frame()).contains("next: EJECTION");

    desk.press("<backspace>");
    assertThat(flight().status()).isEqualTo(Flight.Status.CARD);
    assertThat(flight().facts().get(Flight.LIFTOFF_AT)).isEmpty();
    assertThat(flight().facts().get(Flight.LIFTOFF_UP)).isEmpty();
    assertThat(desk.book().left(desk.book().lot(meadow.lotK).orElseThrow())).contains(5);
    assertThat(desk.frame()).contains("HOLD");
  }

  @Test
  void a_mark_taken_back_can_be_made_anew() {
    Desk desk = lifted().after(seconds(3)).press(" ").after(seconds(1)).press("<backspace>");
    desk.after(seconds(2.5)).press(" ");

    assertThat(ejection()).contains(new TimeSpan(6.5));
  }

  @Test
  void after_a_crash_between_marks_the_clock_runs_on() {
    Desk desk = lifted().after(seconds(6.5)).press(" ").after(seconds(20)).restart();
    assertThat(desk.frame()).contains("Marks · Grey Heron").contains("next: TOUCHDOWN");

    desk.after(seconds(13.5)).press(" ");
    assertThat(touchdown()).contains(new TimeSpan(40));
    assertThat(ejection()).contains(new TimeSpan(6.5));
  }

  @Test
  void after_a_restart_of_the_machine_the_time_of_day_tells_and_that_is_said() {
    Desk desk = lifted().after(seconds(65)).reboot();
    assertThat(desk.frame()).contains("By the time of day: the machine was started anew");

    desk.press("n").after(seconds(5)).press(" ");
    assertThat(touchdown()).contains(new TimeSpan(70));
  }

  @Test
  void a_flight_is_over_ten_minutes_after_lift_off() {
    Desk desk = lifted().after(Duration.ofMinutes(11)).restart();

    assertThat(desk.top()).isInstanceOf(DayScreen.class);
    assertThat(desk.press("<home><down><down><down><enter>").top())
        .isInstanceOf(DebriefScreen.class);
  }

  @Test
  void from_the_day_enter_leads_back_to_the_clock_of_a_flight_in_the_air() {
    Desk desk = lifted().press("<esc>");
    assertThat(desk.frame()).contains("in the air");

    assertThat(desk.press("<enter>").frame()).contains("next: EJECTION");
    assertThat(desk.press("<esc>d").top()).isInstanceOf(DebriefScreen.class);
  }

  @Test
  void what_was_debriefed_or_left_without_the_pad_screen_has_no_clock_to_go_back_to() {
    Desk desk = lifted().press("<enter><f2>").restart();
    assertThat(desk.top()).isInstanceOf(DayScreen.class);

    desk = meadow.desk().press("nkite<enter>6<f2>g<esc>").restart();
    assertThat(desk.top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void a_mark_that_could_not_be_kept_goes_out_before_the_debrief_opens() {
    Desk desk = lifted().after(seconds(6));
    desk.failNextSave(new Fault("disk-full", "The disk is full.", "Free some.")).press(" ");
    assertThat(desk.frame()).contains("The disk is full.");
    assertThat(ejection()).isEmpty();

    desk.press("<enter>");
    assertThat(desk.frame()).contains("NOT KEPT").contains("next: TOUCHDOWN");
    desk.press("<enter>");
    assertThat(ejection()).contains(new TimeSpan(6));
    assertThat(desk.top()).isInstanceOf(DebriefScreen.class);
  }

  @Test
  void gone_can_be_taken_back_from_the_day_with_all_its_marks() {
    lifted().after(seconds(6)).press(" ").press("<esc>u");

    assertThat(flight().status()).isEqualTo(Flight.Status.CARD);
    assertThat(ejection()).isEmpty();
    assertThat(flight().facts().get(Flight.LIFTOFF_UP)).isEmpty();
  }
}
