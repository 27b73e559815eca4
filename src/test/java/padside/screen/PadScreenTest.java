package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.CheckLine;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Ruling.Verdict;

class PadScreenTest {
  private static final Size NARROW = Size.SMALLEST;
  private static final Size WIDE = new Size(120, 40);

  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(4));

  /** The heron once more, kept and at the pad. */
  private Desk pad() {
    return meadow.desk().press("nher<enter>6g9 SW<f5>");
  }

  private Facts facts() {
    return meadow.flight(4).facts();
  }

  private List<String> ticked() {
    return facts().get(Flight.TICKED).orElse(List.of());
  }

  private void fix(String text, Fix.Severity severity) {
    meadow.log.has(
        Kind.FIX,
        Facts.none()
            .with(Fix.ROCKET, meadow.heron)
            .with(Fix.TEXT, text)
            .with(Fix.SEVERITY, severity));
  }

  @Test
  void a_repeat_flight_takes_eight_keys_and_the_wind_from_the_day_to_armed() {
    Desk desk = meadow.desk().press("n<enter>");
    int typed = desk.press("7g9 W").keys() - 2;
    desk.press("<f5><enter><enter><enter><enter>a");

    assertThat(desk.frame()).contains("ARMED");
    assertThat(desk.keys() - typed).isEqualTo(8);
  }

  @Test
  void enter_on_a_kept_card_goes_to_the_pad_and_c_to_the_card() {
    Desk desk = pad().press("<esc>");
    assertThat(desk.press("<enter>").top()).isInstanceOf(PadScreen.class);
    assertThat(desk.press("c").top()).isInstanceOf(CardScreen.class);
    assertThat(desk.press("<esc>").top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void keys_pressed_before_the_card_is_kept_are_those_of_the_checklist() {
    Desk desk = meadow.desk().press("nher<enter>6g9 SW").holdSaves().press("<f5><enter> ");

    assertThat(desk.answerSaves().top()).isInstanceOf(PadScreen.class);
    assertThat(ticked()).containsExactly("wadding", "nose", "body", "altimeter", "lug");
  }

  @Test
  void frames_of_the_checklist() {
    fix("shock cord frayed", Fix.Severity.LOOK_AT);
    fix("reglue fin 2", Fix.Severity.GROUNDS_IT);
    Desk desk = pad().press("   <down> ");

    Golden.holds("pad", desk.frame());
    Golden.holds("pad-60x20", desk.frame(NARROW));
    Golden.holds("pad-120x40", desk.frame(WIDE));
  }

  @Test
  void each_tick_is_kept_at_once_and_is_there_after_a_restart() {
    Desk desk = pad().press("  ");
    assertThat(ticked()).containsExactly("wadding", "nose");

    desk.restart().press("<end><enter>");
    assertThat(desk.frame())
        .contains("[x] wadding or blanket in")
        .contains("[x] recovery hooked to the nose")
        .containsPattern("> +\\[ ] recovery hooked to the body");
  }

  @Test
  void space_on_a_ticked_line_takes_the_tick_back() {
    pad().press(" <up> ");

    assertThat(ticked()).isEmpty();
  }

  @Test
  void enter_ticks_what_is_left_of_the_part_and_goes_to_the_next() {
    Desk desk = pad().press(" <enter>");
    assertThat(ticked()).containsExactly("wadding", "nose", "body", "altimeter");
    assertThat(desk.frame()).containsPattern("> pad +\\[ ] lug on the rod");

    assertThat(desk.press("<enter><enter><enter>").frame()).contains("All ticked");
  }

  @Test
  void a_card_without_an_altimeter_has_none_to_arm() {
    assertThat(meadow.desk().press("<end><enter>").frame()).doesNotContain("altimeter");
  }

  @Test
  void people_are_told_how_far_to_stand_back_and_a_fire_ban_stands_out() {
    meadow.log.save(Action.change("", Kind.DAY, meadow.day, Facts.none().with(Day.FIRE_BAN, true)));
    Desk desk = meadow.desk().checking(card -> FixedPad.standingBack(Fixed.check(card)));

    assertThat(desk.press("nher<enter>6g9 SW<f5>").frame())
        .contains("people back and told · stand back 15 ft")
        .contains("! FIRE BAN noted");
  }

  @Test
  void the_rockets_own_lines_and_its_open_fixes_are_read() {
    meadow.log.has(Kind.CHECKLINE, line("canopy taped").with(CheckLine.ROCKET, meadow.heron));
    meadow.log.has(Kind.CHECKLINE, line("egg in").with(CheckLine.ROCKET, meadow.kite));
    fix("reglue fin 2", Fix.Severity.GROUNDS_IT);

    assertThat(pad().frame())
        .contains("[ ] canopy taped")
        .contains("[ ] ! GROUNDED: reglue fin 2")
        .doesNotContain("egg in");
  }

  private static Facts line(String text) {
    return Facts.none().with(CheckLine.TEXT, text).with(CheckLine.PART, CheckLine.Part.ROCKET);
  }

  @Test
  void a_wind_retyped_at_the_pad_turns_the_verdict_and_is_a_reading_of_the_day() {
    Desk desk = pad().press("<enter>w14g18 SW");
    assertThat(desk.frame()).contains("Wind 14g18 SW");

    desk.press("<enter>");
    assertThat(desk.frame()).contains(" NO-GO").contains("14 gusting 18 mph");
    assertThat(facts().get(Flight.VERDICT)).contains(Verdict.NO_GO);
    assertThat(facts().typed(Flight.WIND_MEAN)).contains("14g18 SW");
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.CARD);
    assertThat(desk.book().weatherOf(meadow.day)).hasSize(2);

    assertThat(desk.press("w8 SW<enter>").frame()).contains(" GO").contains("read just now");
    assertThat(facts().get(Flight.VERDICT)).contains(Verdict.GO);
  }

  @Test
  void a_wind_that_is_still_the_same_is_read_anew_by_two_keys() {
    Desk desk = pad().after(Duration.ofMinutes(15));
    assertThat(desk.frame()).contains("read 19 min ago: w reads it anew");

    assertThat(desk.press("w<enter>").frame()).contains("read just now");
  }

  @Test
  void a_wind_that_cannot_be_read_stays_in_the_field_and_esc_leaves_the_old_one() {
    Desk desk = pad().press("w8x14<enter>");
    assertThat(desk.frame()).contains("Wind 8x14");

    assertThat(desk.press("<esc>").frame()).contains("6 gusting 9 mph from SW");
  }

  @Test
  void a_wind_half_typed_is_kept_when_the_program_is_left() {
    pad().press("w4 SW<c-c><enter>");

    assertThat(facts().typed(Flight.WIND_MEAN)).contains("4 SW");
  }

  @Test
  void weather_that_arrives_is_asked_about() {
    Desk desk = pad().holdChecks();
    meadow.withWeather("20 SW", Duration.ZERO);
    // Any save brings the log as it is now.
    assertThat(desk.press(" ").frame()).contains("checking…");
  }

  @Test
  void going_on_with_open_lines_asks_once_for_a_reason_that_is_kept() {
    Desk desk = pad().press("<enter><enter><enter> a");
    assertThat(desk.frame()).contains("1 not ticked: key in").contains("say why");
    assertThat(desk.press("<enter>").frame()).as("a reason is wanted").contains("say why");

    desk.press("key is in the box<enter>");
    assertThat(desk.frame()).contains("ARMED");
    assertThat(facts().get(Flight.UNTICKED)).contains(List.of("key in"));
    assertThat(facts().get(Flight.WENT_ON)).contains("key is in the box");
    assertThat(facts().get(Flight.AGAINST)).isEmpty();
  }

  @Test
  void open_lines_and_no_go_are_one_question() {
    Desk desk = pad().press("w14g18 SW<enter>" + "<enter><enter><enter> a");
    assertThat(desk.frame(NARROW)).contains("NO-GO").contains("1 not ticked: key in");

    Golden.holds("pad-against", desk.press("club demo<enter>").frame());
    assertThat(facts().get(Flight.AGAINST)).contains("club demo");
    assertThat(facts().get(Flight.WENT_ON)).contains("club demo");
  }

  @Test
  void a_reason_that_is_not_wanted_any_more_goes() {
    Desk desk = pad().press("w14g18 SW<enter><enter><enter><enter><enter>agust<enter>");
    assertThat(facts().get(Flight.AGAINST)).contains("gust");

    desk.press("<esc>w6 SW<enter>a");
    assertThat(desk.frame()).contains("ARMED");
    assertThat(facts().get(Flight.AGAINST)).isEmpty();
    assertThat(facts().get(Flight.VERDICT)).contains(Verdict.GO);
  }

  @Test
  void many_open_lines_leave_room_for_the_answer() {
    assertThat(pad().press("a").frame(NARROW))
        .contains("13 not ticked: wadding or blanket in;")
        .contains("slides and 8")
        .contains("> Why");
  }

  @Test
  void the_question_leads_back_to_the_checklist() {
    Desk desk = pad().press("a").press("<esc>");

    assertThat(desk.top()).isInstanceOf(PadScreen.class);
    assertThat(desk.press("<esc>").top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void the_count_waits_for_the_check() {
    Desk desk = pad().press("<enter><enter><enter><enter>").holdChecks().press("w14g18 SW<enter>a");
    assertThat(desk.frame()).contains("the count follows");

    assertThat(desk.answerChecks().frame()).contains("NO-GO").contains("say why");
  }

  @Test
  void ticks_that_could_not_be_kept_go_out_with_the_next() {
    Desk desk = pad().failNextSave(new Fault("disk-full", "The disk is full.", "Free some."));
    assertThat(desk.press(" ").frame()).contains("The disk is full.");
    assertThat(ticked()).isEmpty();

    desk.press("<enter>");
    assertThat(desk.frame()).contains("NOT KEPT");
    desk.press(" ");
    assertThat(ticked()).containsExactly("wadding", "nose");
    assertThat(desk.frame()).contains("all kept");
  }

  @Test
  void the_standing_list_can_be_renamed_dropped_put_back_and_added_to() {
    Desk desk = pad().press("l");
    Golden.holds("checklist", desk.frame());

    desk.press("<enter><c-u>dog barf in<f2>");
    assertThat(desk.frame()).contains("dog barf in").contains("changed");

    desk.press("<down>xx");
    assertThat(desk.frame()).containsPattern("recovery hooked to the nose +every flight +dropped");

    desk.press("ncanopy taped<f2><esc>");
    assertThat(desk.frame())
        .contains("[ ] dog barf in")
        .doesNotContain("hooked to the nose")
        .contains("[ ] canopy taped");

    desk.press("l<home>u<down>u<esc>");
    assertThat(desk.frame()).contains("wadding or blanket in").contains("hooked to the nose");
    RecordId own = desk.book().checkLines().get(0).id();
    assertThat(desk.book().checkLines().get(0).rocket()).contains(meadow.heron);
    assertThat(desk.press("<home> ").frame()).contains("[x] wadding");
    assertThat(ticked()).doesNotContain(own.text());
  }

  @Test
  void ticks_are_gone_when_the_flight_is_put_back_in_the_queue() {
    pad().press("<enter>").press("<esc>su");

    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.CARD);
    assertThat(ticked()).isEmpty();
  }

  @Test
  void a_changed_set_up_is_read_anew_and_a_changed_wind_is_not() {
    Desk desk = pad().press("<enter>").press("c<end><s-tab>9 SW<f2>");
    assertThat(ticked()).hasSize(4);

    desk.press("c<s-tab><s-tab><s-tab>40in<f2>");
    assertThat(ticked()).isEmpty();
  }

  @Test
  void every_key_is_told() {
    Desk desk = pad().press("?");
    String help = desk.frame(NARROW) + desk.press("<pagedown>").frame(NARROW);

    for (PadKeys key : PadKeys.values()) {
      assertThat(help).contains(key.binding().meaning().substring(0, 20));
    }
  }
}
