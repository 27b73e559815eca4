package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import padside.flight.Flight;
import padside.flight.Ruling.Verdict;
import padside.flight.Weather;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.UnitSystem;
import padside.units.Wind;
import padside.wire.WireWind;

/** Wind by wire on the screens; the check's fixed limit is 13 mph. */
class ByWireTest {
  private static final Size NARROW = Size.SMALLEST;
  private static final Size WIDE = new Size(120, 40);
  private static final TimeSpan TWO_MINUTES = TimeSpan.ofMinutes(2);

  private final Meadow meadow = new Meadow().withMorning();
  private Desk desk;

  @BeforeEach
  void sitDown() {
    desk = meadow.desk();
  }

  private static Wind wind(String typed) {
    return Notations.wind(UnitSystem.US).read(typed).value().orElseThrow();
  }

  /** A reading of the meter comes, the wind of the last minutes being this. */
  private void blows(String typed) {
    tells(typed, Optional.empty());
  }

  private void tells(String typed, Optional<String> trouble) {
    TimeSpan now = desk.session().world().machine().up();
    WireWind wire =
        new WireWind(
            true, Optional.of(wind(typed)), WireWind.Gusts.TOLD, now, TWO_MINUTES, trouble);
    desk.told(new Event.Winded(wire)).after(Duration.ZERO).answerChecks().answerSaves();
  }

  private void passes(int seconds) {
    desk.running(Duration.ofSeconds(seconds)).answerChecks().answerSaves();
  }

  private Flight newest() {
    return meadow.flight(4);
  }

  private String keptWind() {
    return newest().facts().typed(Flight.WIND_MEAN).orElse("none");
  }

  private List<Weather> readings() {
    return desk.book().weatherOf(meadow.day);
  }

  @Test
  void a_card_without_a_typed_wind_follows_the_meter_and_says_so() {
    blows("6g9 SW");
    desk.press("nher<enter>");

    assertThat(desk.frame())
        .contains("GO", "6 gusting 9 mph ·", "6g9 mph 225 by wire", "Wind by wire, now");
    blows("9g14 SW");
    assertThat(desk.frame()).contains("NO-GO", "9 gusting 14 mph ·", "9g14 mph 225 by wire");
  }

  @Test
  void a_repeat_flight_by_wire_takes_no_key_for_the_wind() {
    blows("6g9 SW");
    int keys = desk.press("n<enter><f5>    ").press("<enter><enter><enter>a").keys();

    assertThat(desk.frame()).contains("ARMED");
    assertThat(keys).isLessThanOrEqualTo(11);
    assertThat(keptWind()).isEqualTo("6g9 mph 225 by wire");
  }

  @Test
  void what_was_typed_wins_until_one_key_takes_the_meters() {
    blows("9g14 SW");
    desk.press("nher<enter>4g5 W");
    assertThat(desk.frame()).contains("GO", "  4 gusting 5", "F6 takes 9g14 mph 225 by wire");

    desk.press("<f6>");
    assertThat(desk.frame()).contains("NO-GO", "9 gusting 14 mph ·").doesNotContain("4g5 W");
    desk.press("<f2>");
    assertThat(keptWind()).isEqualTo("9g14 mph 225 by wire");
    assertThat(newest().verdict()).contains(Verdict.NO_GO);
  }

  @Test
  void a_wind_typed_on_the_day_wins_on_the_cards_begun_then() {
    desk.press("w4g5 W<f2>");
    blows("9g14 SW");
    assertThat(desk.frame()).contains("Wind 4 gusting 5 mph from W", "9g14 mph 225 by wire");

    assertThat(desk.press("nher<enter>").frame()).contains("4 gusting 5 mph ·");
    desk.press("<esc><f6>");
    assertThat(desk.frame())
        .contains("Wind 9 gusting 14 mph from SW by wire · now")
        .doesNotContain("F6 takes");
    assertThat(readings()).hasSize(2);
    assertThat(desk.press("nkit<enter>").frame()).contains("NO-GO", "9 gusting 14 mph ·");
  }

  @Test
  void the_form_of_a_reading_takes_the_meters_wind_by_the_same_key() {
    blows("9g14 SW");
    desk.press("w");
    assertThat(desk.frame()).contains("F6 takes 9g14 mph 225 by wire · now", "> Wind");

    desk.press("<f6>");
    assertThat(desk.frame()).contains("> Wind              9g14 mph 225 by wire");
    assertThat(desk.frame()).doesNotContain("F6 takes");
    desk.press("<f2>");
    assertThat(readings()).hasSize(1);
    assertThat(readings().get(0).facts().typed(Weather.WIND_MEAN)).contains("9g14 mph 225 by wire");
    assertThat(desk.frame()).contains("Wind 9 gusting 14 mph from SW by wire · now");

    desk.press("w4g5 W");
    assertThat(desk.frame()).contains("F6 takes 9g14 mph 225 by wire · now");
  }

  @Test
  void the_wind_of_now_is_none_of_another_day() {
    desk.press("nher<enter>4g5 W<f2>").after(Duration.ofDays(1));
    blows("9g14 SW");
    int before = readings().size();
    String told = "The meter tells the wind of now, and this is another day than today.";

    assertThat(desk.press("<f6>").frame()).contains(told);
    assertThat(desk.press("w").frame()).doesNotContain("F6 takes");
    assertThat(desk.press("<f6>").frame()).contains(told).doesNotContain("9g14");
    assertThat(desk.press("<esc>c<f6>").frame()).contains(told, "4 gusting 5 mph");
    assertThat(desk.press("<esc><enter><f6>").frame()).contains(told, "4 gusting 5 mph");
    assertThat(readings()).hasSize(before);
  }

  @Test
  void typing_over_the_meters_wind_is_by_hand_from_then_on() {
    blows("9g14 SW");
    desk.press("nher<enter>");
    assertThat(desk.frame()).contains("NO-GO");

    desk.press("4g5 W");
    blows("10g15 SW");
    assertThat(desk.frame()).contains("4 gusting 5 mph ·");
    desk.press("<c-u>");
    assertThat(desk.frame()).contains("NO-GO", "10 gusting 15 mph");
  }

  @Test
  void a_silent_meter_says_so_and_then_counts_no_more() {
    blows("6g9 SW");
    desk.press("nher<enter>");
    passes(10);
    assertThat(desk.frame()).contains("Wind by wire, 10 s ago");
    passes(24);
    assertThat(desk.frame()).contains("GO", "6 gusting 9 mph ·", "Wind by wire, silent 34 s");
    passes(87);
    assertThat(desk.frame())
        .contains("UNKNOWN", "no wind entered", "No wind by wire: silent 2 min")
        .doesNotContain("6g9 mph");

    blows("7g9 SW");
    assertThat(desk.frame()).contains("GO", "7 gusting 9 mph ·");
  }

  @Test
  void why_the_source_cannot_be_read_is_told_where_it_is_missed() {
    desk.told(new Event.Winded(WireWind.awaited(TWO_MINUTES, "/dev/meter is not there")));
    assertThat(desk.frame()).contains("No wind by wire: /dev/meter is not there");
    desk.press("nher<enter>4g5 W<f6>");
    assertThat(desk.frame()).contains("4 gusting 5 mph ·", "/dev/meter is not there");
  }

  @Test
  void at_the_pad_the_verdict_follows_and_w_offers_the_meters_wind() {
    blows("6g9 SW");
    desk.press("nher<enter>4g5 W<f5>");
    blows("9g14 SW");
    assertThat(desk.frame()).contains("GO", "  4 gusting 5", "F6 takes 9g14 mph 225 by wire");

    int before = desk.keys();
    desk.press("w<enter>");
    assertThat(desk.keys() - before).isEqualTo(2);
    assertThat(desk.frame())
        .contains("NO-GO", "9 gusting 14 mph ·", "9 gusting 14 mph from SW by wire · now");
    blows("6g9 SW");
    assertThat(desk.frame())
        .contains("GO", "6 gusting 9 mph ·", "6 gusting 9 mph from SW by wire · now");
    desk.press("w5 W<enter>");
    blows("9g14 SW");
    assertThat(desk.frame()).contains("5 mph ·");
  }

  @Test
  void the_wind_is_kept_as_it_stood_at_the_count_and_at_lift_off() {
    blows("6g9 SW");
    desk.press("nher<enter><f5><enter><enter><enter><enter>");
    blows("7g10 SW");
    desk.press("a");
    assertThat(desk.frame()).contains("ARMED");
    assertThat(keptWind()).isEqualTo("7g10 mph 225 by wire");

    desk.press(" ");
    desk.running(Duration.ofSeconds(20)).answerSaves();
    blows("8g11 W");
    desk.press(" ");
    assertThat(keptWind()).isEqualTo("8g11 mph 270 by wire");
    assertThat(newest().wind().map(Wind::gust)).contains(Speed.ofMph(11));
    assertThat(readings().get(readings().size() - 1).wind()).contains(wind("8g11 W"));
    blows("3 N");
    assertThat(keptWind()).isEqualTo("8g11 mph 270 by wire");
  }

  @Test
  void while_it_is_counted_wind_and_verdict_go_on_and_no_key_is_taken() {
    blows("6g9 SW");
    desk.press("nher<enter><f5><enter><enter><enter><enter>a");
    blows("7g10 SW");
    assertThat(desk.frame())
        .contains("GO", "7 gusting 10 mph · limit 13 mph", "Wind by wire, now", "ARMED");
    desk.press(" ");
    int bells = desk.bells();
    blows("9g14 SW");
    assertThat(desk.frame())
        .contains("NO-GO", "9 gusting 14 mph", "limit mph", "Any key holds.")
        .contains("COUNT · turned to NO-GO: any key holds; you decide");
    assertThat(desk.bells()).isEqualTo(bells + 1);
    blows("10g15 SW");
    assertThat(desk.bells()).as("told once").isEqualTo(bells + 1);

    desk.running(Duration.ofSeconds(5));
    assertThat(desk.frame()).contains("LAUNCH · turned to NO-GO: h holds; you decide");
    blows("6g9 SW");
    assertThat(desk.frame()).contains("6 gusting 9 mph", "LAUNCH").doesNotContain("turned to");
    blows("9g14 SW");
    assertThat(desk.bells()).isEqualTo(bells + 2);
    desk.press(" ").answerSaves();
    assertThat(desk.frame()).contains("next: EJECTION");
    assertThat(newest().verdict()).as("as it was at lift-off").contains(Verdict.NO_GO);
  }

  @Test
  void a_count_by_wire_says_when_the_meter_falls_silent() {
    blows("6g9 SW");
    desk.press("nher<enter><f5><enter><enter><enter><enter>a");
    passes(34);
    assertThat(desk.frame()).contains("ARMED", "Wind by wire, silent 34 s");
    passes(90);
    assertThat(desk.frame()).contains("UNKNOWN", "ARMED · turned to UNKNOWN; you decide");
  }

  @Test
  void a_typed_wind_stands_at_the_count_with_the_meters_beside_it() {
    blows("9g14 SW");
    desk.press("nher<enter>4g5 W<f5><enter><enter><enter><enter>a ");
    assertThat(desk.frame())
        .contains("GO", "4 gusting 5 mph", "The meter says 9g14 mph 225 by wire · now", "COUNT");
    assertThat(desk.press("<f6>").frame()).as("any key holds").contains("HOLD");
  }

  @Test
  void a_meter_gone_silent_before_lift_off_leaves_the_wind_of_the_count() {
    blows("6g9 SW");
    desk.press("nher<enter><f5><enter><enter><enter><enter>a");
    passes(180);
    desk.press("  ").running(Duration.ofSeconds(20));
    desk.press(" ").answerSaves();
    assertThat(newest().status()).isEqualTo(Flight.Status.FLOWN);
    assertThat(keptWind()).isEqualTo("6g9 mph 225 by wire");
  }

  @Test
  void a_small_difference_from_what_was_typed_is_not_told() {
    desk.press("w6g9 SW<f2>");
    blows("6.5g10 S");
    assertThat(desk.frame()).contains("F6 takes 6.5g10 mph 180 by wire · now");
    blows("6.5g10 SW");
    assertThat(desk.frame()).doesNotContain("by wire");
  }

  @Test
  void frames_by_wire() {
    desk.press("w4g5 W<f2>");
    blows("9g14 240");
    Golden.holds("wire-day", desk.frame());
    Golden.holds("wire-day-60x20", desk.frame(NARROW));
    desk.press("nher<enter>");
    Golden.holds("wire-card-typed", desk.frame());
    desk.press("<f6>");
    passes(34);
    Golden.holds("wire-card", desk.frame());
    Golden.holds("wire-card-60x20", desk.frame(NARROW));
    desk.press("<f5>");
    Golden.holds("wire-pad", desk.frame());
    Golden.holds("wire-pad-60x20", desk.frame(NARROW));
    Golden.holds("wire-pad-120x40", desk.frame(WIDE));
    blows("9g14 240");
    desk.press("w");
    Golden.holds("wire-pad-typing-60x20", desk.frame(NARROW));
  }
}
