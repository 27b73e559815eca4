package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.clock.Anchor;
import padside.clock.Moment.Trust;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Weather;
import padside.units.TimeSpan;

/** The machine's clock is set while the program runs. */
class ClockWatchTest {
  private static final Duration DAY = Duration.ofDays(1);

  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(4));
  private final Desk desk = meadow.desk().trusting(Trust.NONE).restart();

  private List<FlightLog.Stored> clocks() {
    return desk.log().list(Kind.CLOCK);
  }

  private Instant readAt() {
    List<FlightLog.Stored> all = desk.log().list(Kind.WEATHER);
    return all.get(all.size() - 1).facts().get(Weather.AT).orElseThrow();
  }

  private void settle() {
    if (desk.top() instanceof ClockScreen) {
      desk.press("<esc>");
    }
  }

  @Test
  void a_clock_that_runs_is_not_told_of() {
    settle();
    desk.after(Duration.ofHours(3));
    assertThat(desk.frame()).doesNotContain("clock was set");
  }

  @Test
  void a_jump_nobody_vouches_for_is_told_with_the_key_that_looks_at_it() {
    settle();
    desk.jump(DAY.negated()).after(Duration.ofSeconds(1));
    assertThat(desk.frame())
        .contains("The machine's clock was set to 1 May 09:30:01. Is that right? k on the Day");
    assertThat(clocks()).isEmpty();
    assertThat(desk.press("k").frame()).contains("Friday 1 May 2026");
  }

  @Test
  void once_the_system_has_the_time_what_was_entered_follows_by_the_uptime() {
    settle();
    desk.jump(DAY.negated()).after(Duration.ofSeconds(1));
    desk.press("w3g4 SW<f2>").after(Duration.ofMinutes(2));
    assertThat(readAt()).isEqualTo(Desk.MORNING.minus(DAY).plusSeconds(1));

    desk.jump(DAY).trusting(Trust.SURE).after(Duration.ofSeconds(1)).answerSaves();
    assertThat(desk.frame())
        .contains("The machine's clock was set to 2 May 09:32:02; what was entered");
    assertThat(readAt()).isEqualTo(Desk.MORNING.plusSeconds(1));
    assertThat(clocks()).hasSize(1);
    assertThat(clocks().get(0).facts().get(Anchor.HOW)).contains(Anchor.How.SYNCHRONISED);
  }

  @Test
  void what_the_flier_said_rules_on_when_the_machine_changes_its_mind() {
    settle();
    desk.press("k1432<enter>").jump(DAY).after(Duration.ofMinutes(1)).answerSaves();
    assertThat(desk.frame()).contains("the log keeps to 2 May", "14:33:00, as set (k changes it)");
    assertThat(desk.session().world().now()).isEqualTo(Instant.parse("2026-05-02T14:33:00Z"));
    assertThat(clocks()).hasSize(1);
  }

  @Test
  void a_flight_in_the_air_does_not_wait_for_the_question() {
    settle();
    desk.press("nher<enter>6g9 SW<f5><enter><enter><enter><enter>a ");
    desk.running(Duration.ofSeconds(5)).press(" ").after(Duration.ofSeconds(9)).reboot();
    assertThat(desk.frame()).contains("Marks · Grey Heron", "next: EJECTION");
    desk.press("<enter><f2>");
    assertThat(desk.top()).isInstanceOf(ClockScreen.class);
  }

  @Test
  void a_jump_during_a_flight_changes_none_of_its_durations() {
    settle();
    desk.press("nher<enter>6g9 SW<f5><enter><enter><enter><enter>a ");
    desk.running(Duration.ofSeconds(5)).press(" ");
    assertThat(desk.frame()).contains("Marks · Grey Heron");
    desk.jump(DAY.multipliedBy(-18_250)).after(Duration.ofMillis(6500)).press(" ");
    desk.jump(DAY.multipliedBy(18_251)).after(Duration.ofMillis(33_500)).press(" ");
    Flight flight = meadow.flight(4);
    assertThat(flight.facts().get(Flight.EJECTION_MARK)).contains(new TimeSpan(6.5));
    assertThat(flight.facts().get(Flight.TOUCHDOWN_MARK)).contains(new TimeSpan(40));
  }
}
