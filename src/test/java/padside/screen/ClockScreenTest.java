package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.clock.Anchor;
import padside.clock.Moment.Trust;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.flight.Operation;
import padside.flight.Weather;

/** A machine whose clock nobody vouches for, over a log with entries of an earlier start. */
class ClockScreenTest {
  private static final Duration FIFTY_YEARS = Duration.ofDays(50 * 365);
  private static final Size SMALL = new Size(60, 20);

  private final Season season = new Season();
  private final Desk desk = Desk.over(season.log).trusting(Trust.NONE);

  private Desk rebooted(Duration jump) {
    return desk.jump(jump).reboot();
  }

  private List<Anchor> anchors() {
    return season.log.list(Kind.CLOCK).stream()
        .flatMap(each -> Anchor.in(each.facts()).stream())
        .toList();
  }

  private Anchor anchor() {
    assertThat(anchors()).hasSize(1);
    return anchors().get(0);
  }

  @Test
  void a_clock_behind_the_log_is_asked_about_first_and_doubted_before_it_is_accepted() {
    rebooted(FIFTY_YEARS.negated());
    Golden.holds("clock-behind", desk.frame());
    Golden.holds("clock-behind-60x20", desk.frame(SMALL));

    desk.press("<enter>");
    Golden.holds("clock-doubt", desk.frame());
    Golden.holds("clock-doubt-60x20", desk.frame(SMALL));
    assertThat(anchors()).isEmpty();

    desk.press("<enter>");
    assertThat(anchor().how()).isEqualTo(Anchor.How.CONFIRMED);
    assertThat(desk.top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void after_a_start_of_the_machine_one_key_accepts_what_is_shown() {
    rebooted(Duration.ZERO);
    assertThat(desk.frame()).contains("Nobody has said so since this machine was started.");
    desk.press("<enter>");
    assertThat(anchor().at()).isEqualTo(Desk.MORNING);
    assertThat(desk.frame()).contains("The log's time is Saturday 2 May 2026, 09:30.");
    assertThat(desk.restart().top()).as("known from now on").isInstanceOf(DayScreen.class);
    assertThat(desk.press("o").top()).isNotInstanceOf(ClockScreen.class);
  }

  @Test
  void four_digits_and_enter_set_the_time_of_day() {
    rebooted(Duration.ZERO).press("1432");
    Golden.holds("clock-typed", desk.frame());
    desk.press("<enter>");
    assertThat(anchor().at()).isEqualTo(Instant.parse("2026-05-02T14:32:00Z"));
    assertThat(anchor().how()).isEqualTo(Anchor.How.SET);
    assertThat(desk.after(Duration.ofMinutes(3)).session().world().now())
        .isEqualTo(Instant.parse("2026-05-02T14:35:00Z"));
  }

  @Test
  void a_text_that_is_no_time_is_refused_and_stays() {
    rebooted(Duration.ZERO).press("25:99<enter>");
    assertThat(desk.frame()).contains("25:99", "is no date or time; type it like 14:32");
    assertThat(anchors()).isEmpty();
  }

  @Test
  void opening_a_day_asks_first_and_goes_on_to_the_day_either_way() {
    desk.restart();
    rebooted(Duration.ZERO).press("<esc>o");
    assertThat(desk.frame()).contains("Is this the date and time here?");
    desk.press("<esc>");
    assertThat(desk.frame()).contains("Now Sat 2 May 2026, 09:30. Not right? Esc, then k");
    assertThat(anchors()).isEmpty();

    desk.press("<esc>o17 Oct 2026<enter>");
    assertThat(desk.frame()).contains("Now Sat 17 Oct 2026, 09:30.");
    assertThat(anchors()).hasSize(1);
  }

  @Test
  void a_battery_clock_that_agrees_with_the_log_and_a_synchronised_one_are_not_asked_about() {
    desk.trusting(Trust.BATTERY);
    assertThat(rebooted(Duration.ZERO).top()).isInstanceOf(DayScreen.class);
    assertThat(desk.press("o").top()).isNotInstanceOf(ClockScreen.class);
    desk.trusting(Trust.SURE);
    assertThat(rebooted(FIFTY_YEARS.negated()).top()).isInstanceOf(DayScreen.class);
    assertThat(desk.press("o").top()).isNotInstanceOf(ClockScreen.class);
  }

  @Test
  void a_battery_clock_behind_the_log_is_asked_about() {
    desk.trusting(Trust.BATTERY);
    assertThat(rebooted(FIFTY_YEARS.negated()).top()).isInstanceOf(ClockScreen.class);
  }

  @Test
  void setting_the_clock_corrects_what_this_start_entered_and_the_history_takes_it_back() {
    rebooted(FIFTY_YEARS.negated()).press("<esc>o<esc>1");
    desk.press("<esc>w3g4 SW<f2>").after(Duration.ofMinutes(5));
    FlightLog.Stored reading = newest(Kind.WEATHER);
    Instant wrong = reading.facts().get(Weather.AT).orElseThrow();
    assertThat(wrong).isEqualTo(Desk.MORNING.minus(FIFTY_YEARS));

    desk.press("k2026-05-02 10:00<enter>");
    assertThat(desk.frame())
        .contains("The log's time is Saturday 2 May 2026, 10:00; ", "corrected.");
    assertThat(newest(Kind.WEATHER).facts().get(Weather.AT))
        .contains(Instant.parse("2026-05-02T09:55:00Z"));
    assertThat(season.log.facts(Kind.DAY, season.day).get(Day.DATE))
        .as("of an earlier start")
        .contains(LocalDate.parse("2026-04-25"));

    Action undo = newestOperation(Kind.WEATHER).undoing().action();
    assertThat(undo.label()).isEqualTo("undo: set the clock");
    season.log.save(undo);
    assertThat(newest(Kind.WEATHER).facts().get(Weather.AT)).contains(wrong);
    assertThat(anchors().size() - removed()).isZero();
  }

  @Test
  void its_own_history_takes_the_last_answer_back_and_does_it_again() {
    rebooted(FIFTY_YEARS.negated()).press("<esc>o<esc>1<esc>k<f4>");
    assertThat(desk.frame()).contains("Nobody has confirmed or set the clock yet.");
    desk.press("<esc>w3g4 SW<f2>k2026-05-02 10:00<enter>").press("k<f4>");
    Golden.holds("clock-history", desk.frame());
    desk.press("u<esc>");
    assertThat(desk.frame()).contains("1976");
    assertThat(newest(Kind.WEATHER).facts().get(Weather.AT))
        .contains(Desk.MORNING.minus(FIFTY_YEARS));
    desk.press("<f4>r<esc>");
    assertThat(desk.frame()).contains("Saturday 2 May 2026");
    assertThat(newest(Kind.WEATHER).facts().get(Weather.AT))
        .contains(Instant.parse("2026-05-02T10:00:00Z"));
  }

  private long removed() {
    return season.log.list(Kind.CLOCK).stream()
        .filter(each -> each.facts().get(Kind.REMOVED).orElse(false))
        .count();
  }

  private FlightLog.Stored newest(Kind kind) {
    List<FlightLog.Stored> all = season.log.list(kind);
    return all.get(all.size() - 1);
  }

  private Operation newestOperation(Kind kind) {
    List<Operation> all = season.log.history(kind, newest(kind).id());
    return all.get(all.size() - 1);
  }

  @Test
  void what_cannot_be_kept_leaves_the_question_open() {
    rebooted(Duration.ZERO).failNextSave(new Fault("full", "The disk is full.", "Make room."));
    assertThat(desk.press("<enter>").frame()).contains("The disk is full.");
    desk.press("<enter>");
    assertThat(desk.frame()).contains("Is this the date and time here?");
    assertThat(anchors()).isEmpty();
  }

  @Test
  void an_empty_log_on_a_new_machine_opens_without_a_question() {
    Desk fresh = Desk.over(new MemoryFlightLog()).trusting(Trust.NONE);
    assertThat(fresh.reboot().top()).isInstanceOf(DayScreen.class);
    assertThat(fresh.press("o").top()).isInstanceOf(ClockScreen.class);
  }
}
