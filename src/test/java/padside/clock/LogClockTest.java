package padside.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.clock.Moment.Trust;
import padside.fact.Facts;
import padside.units.TimeSpan;

class LogClockTest {
  private static final Instant NOON = Instant.parse("2026-10-17T12:00:00Z");

  private static Moment moment(String boot, double up, Instant wall, Trust trust) {
    return new Moment(wall, new TimeSpan(up), boot, trust);
  }

  private static Anchor anchor(String boot, double up, Instant at) {
    return new Anchor(boot, new TimeSpan(up), at, Anchor.How.SET);
  }

  private static LogClock clock(Moment newest, Anchor... anchors) {
    return new LogClock(List.of(anchors), Optional.of(newest));
  }

  private static Instant fiftyYearsBack(Instant time) {
    return time.minusSeconds(50L * 365 * 86_400);
  }

  @Test
  void with_an_anchor_the_time_runs_with_the_uptime_whatever_the_machine_says() {
    LogClock clock = new LogClock(List.of(anchor("b", 100, NOON)), Optional.empty());
    for (Instant wall : List.of(NOON, fiftyYearsBack(NOON), NOON.plusSeconds(86_400))) {
      assertThat(clock.told(moment("b", 160.5, wall, Trust.NONE)).wall())
          .isEqualTo(NOON.plusMillis(60_500));
    }
    assertThat(clock.told(moment("b", 40, NOON, Trust.NONE)).wall())
        .as("before the anchor")
        .isEqualTo(NOON.minusSeconds(60));
  }

  @Test
  void the_newest_anchor_of_a_start_rules_and_says_nothing_of_other_starts() {
    LogClock clock =
        new LogClock(
            List.of(
                anchor("b", 0, NOON), anchor("b", 10, NOON.plusSeconds(70)), anchor("c", 0, NOON)),
            Optional.empty());
    assertThat(clock.told(moment("b", 20, NOON, Trust.NONE)).wall())
        .isEqualTo(NOON.plusSeconds(80));
    assertThat(clock.told(moment("d", 20, NOON, Trust.NONE)).wall()).isEqualTo(NOON);
  }

  @Test
  void a_clock_nobody_vouches_for_is_asked_about_once_a_start_of_the_machine() {
    LogClock clock = clock(moment("before", 5000, NOON, Trust.NONE));
    Moment later = moment("b", 30, NOON.plusSeconds(3600), Trust.NONE);
    assertThat(clock.knows(later)).isFalse();
    assertThat(clock.asks(later)).isTrue();

    LogClock entered = clock(moment("b", 20, NOON.plusSeconds(3590), Trust.NONE));
    assertThat(entered.asks(later)).as("an entry was made since").isFalse();
    LogClock told = clock(moment("before", 5000, NOON, Trust.NONE), anchor("b", 30, NOON));
    assertThat(told.knows(later)).isTrue();
    assertThat(told.asks(later)).isFalse();
  }

  @Test
  void an_empty_log_has_nothing_to_ask_about() {
    LogClock clock = new LogClock(List.of(), Optional.empty());
    assertThat(clock.asks(moment("b", 30, fiftyYearsBack(NOON), Trust.NONE))).isFalse();
    assertThat(clock.knows(moment("b", 30, NOON, Trust.NONE))).isFalse();
  }

  @Test
  void a_battery_clock_is_believed_until_it_lies_behind_the_log_or_was_set() {
    LogClock clock = clock(moment("before", 5000, NOON, Trust.NONE));
    assertThat(clock.asks(moment("b", 30, NOON.plusSeconds(3600), Trust.BATTERY))).isFalse();
    assertThat(clock.asks(moment("b", 30, fiftyYearsBack(NOON), Trust.BATTERY))).isTrue();

    LogClock same = clock(moment("b", 20, NOON, Trust.NONE));
    assertThat(same.asks(moment("b", 30, NOON.plusSeconds(10), Trust.BATTERY))).isFalse();
    assertThat(same.asks(moment("b", 30, NOON.plusSeconds(86_410), Trust.BATTERY))).isTrue();
  }

  @Test
  void a_synchronised_clock_is_never_asked_about() {
    LogClock clock = clock(moment("before", 5000, NOON, Trust.NONE));
    assertThat(clock.asks(moment("b", 30, fiftyYearsBack(NOON), Trust.SURE))).isFalse();
    LogClock same = clock(moment("b", 20, NOON, Trust.NONE));
    assertThat(same.asks(moment("b", 30, fiftyYearsBack(NOON), Trust.SURE))).isFalse();
  }

  @Test
  void a_time_is_behind_only_entries_of_other_starts_by_more_than_a_minute() {
    LogClock clock = clock(moment("before", 5000, NOON, Trust.NONE));
    assertThat(clock.isBehind(NOON.minusSeconds(61), "b")).isTrue();
    assertThat(clock.isBehind(NOON.minusSeconds(60), "b")).isFalse();
    assertThat(clock.isBehind(fiftyYearsBack(NOON), "before"))
        .as("what was entered since the start moves with the clock")
        .isFalse();
    LogClock told =
        clock(
            moment("before", 5000, NOON, Trust.NONE), anchor("before", 5000, fiftyYearsBack(NOON)));
    assertThat(told.newestTime()).contains(fiftyYearsBack(NOON));
    assertThat(told.isBehind(NOON.minusSeconds(61), "b")).as("by the log's time").isFalse();
  }

  @Test
  void a_step_over_two_seconds_is_a_jump_within_one_start() {
    Moment then = moment("b", 100, NOON, Trust.NONE);
    assertThat(moment("b", 160, NOON.plusSeconds(62), Trust.NONE).jumpedSince(then)).isFalse();
    assertThat(moment("b", 160, NOON.plusSeconds(63), Trust.NONE).jumpedSince(then)).isTrue();
    assertThat(moment("b", 160, NOON, Trust.NONE).jumpedSince(then)).isTrue();
    assertThat(moment("c", 160, fiftyYearsBack(NOON), Trust.NONE).jumpedSince(then)).isFalse();
  }

  @Test
  void an_anchor_is_kept_as_a_record_and_read_back() {
    Anchor anchor = new Anchor("b", new TimeSpan(12.25), NOON, Anchor.How.CONFIRMED);
    assertThat(Anchor.in(anchor.facts())).contains(anchor);
    assertThat(Anchor.in(Facts.none().with(Anchor.BOOT, "b"))).isEmpty();
  }
}
