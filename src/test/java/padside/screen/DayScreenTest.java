package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;

class DayScreenTest {
  private final Meadow meadow = new Meadow().withMorning();

  private Flight debriefed(Desk desk) {
    return ((DebriefScreen) desk.top()).flight();
  }

  @Test
  void an_empty_log_offers_to_open_a_day() {
    Desk desk = Desk.over(new MemoryFlightLog());
    assertThat(desk.frame()).contains("No day is open yet.").contains("Sat 2 May 2026");

    assertThat(desk.press("n").frame()).contains("> Field").contains("None is described yet");
    assertThat(desk.press("<esc>").book().days()).as("nothing was typed").isEmpty();
  }

  @Test
  void a_day_of_today_is_opened_at_the_field_of_the_last_one() {
    Desk desk = meadow.desk().after(Duration.ofDays(7)).press("o<enter><esc>");

    Day opened = desk.book().latestDay().orElseThrow();
    assertThat(opened.date()).contains(LocalDate.of(2026, 5, 9));
    assertThat(opened.field()).contains(meadow.field);
    assertThat(desk.frame()).contains("Sat 9 May 2026, Mill Meadow").contains("No card yet");
  }

  @Test
  void the_last_day_is_shown_as_such_while_none_is_open_today() {
    Desk desk = meadow.desk().after(Duration.ofDays(7));

    assertThat(desk.frame())
        .contains("Sat 2 May 2026, Mill Meadow")
        .contains("not today")
        .contains("Sat 9 May 2026")
        .contains("Grey Heron");
  }

  @Test
  void of_two_days_on_one_date_the_one_opened_last_is_shown() {
    meadow.log.has(Kind.DAY, Facts.none().with(Day.DATE, LocalDate.of(2026, 5, 2)));

    assertThat(meadow.desk().frame()).doesNotContain("Grey Heron").contains("No card yet");
  }

  @Test
  void the_weather_is_told_in_words_with_its_age() {
    String frame = meadow.withWeather("6g9 SW", Duration.ofMinutes(24)).desk().frame();

    assertThat(frame).contains("Wind 6 gusting 9 mph from SW · read 24 min ago · 61 °F");
  }

  private Desk risingWind() {
    String[] winds = {"4g6 SW", "5g7", "5g8", "6g9 SW", "7g10 SW"};
    for (int i = 0; i < winds.length; i++) {
      meadow.withWeather(winds[i], Duration.ofMinutes(62 - 15 * i));
    }
    Facts place = Facts.none().with(Field.LATITUDE, 51.5).with(Field.LONGITUDE, 0.0);
    meadow.log.save(Action.change("locate", Kind.FIELD, meadow.field, place));
    return meadow.desk();
  }

  /** One mile an hour more every quarter of an hour. */
  @Test
  void trend_and_sun_are_told_above_the_cards_and_push_none_off_the_smallest_terminal() {
    Desk desk = risingWind();
    assertThat(desk.frame()).contains("Wind rising 4 mph an hour over 5 readings").contains("Sun ");

    Golden.holds("day-trend", desk.frame());
    Golden.holds("day-trend-60x20", desk.frame(Size.SMALLEST));
    assertThat(desk.frame(Size.SMALLEST)).contains("3 Wren");
  }

  /** Ten at 9:28 and four more an hour: thirteen at 10:13, told to ten minutes. */
  @Test
  void a_card_tells_when_the_wind_reaches_its_limit() {
    Desk desk = risingWind().press("nher<enter>");

    String pane = desk.frame().replaceAll("(?m)^.*│", "").replaceAll("\\s+", " ");
    assertThat(pane)
        .contains("~ Wind rising 4 mph an hour over 5 readings; the limit of 13 mph at");
    assertThat(pane).contains("about 10:10 (10:0");
    Golden.holds("card-trend", desk.frame());
  }

  @Test
  void neither_trend_nor_sun_is_told_of_another_day() {
    assertThat(risingWind().after(Duration.ofDays(7)).frame())
        .contains("not today")
        .doesNotContain("rising")
        .doesNotContain("Sun ");
  }

  @Test
  void a_fire_ban_stands_out() {
    Desk desk = meadow.desk().press("e<tab><tab><tab>y<enter><esc>");

    assertThat(desk.frame()).contains("FIRE BAN · Permission given");
  }

  @Test
  void the_tally_counts_what_has_flown() {
    assertThat(meadow.desk().frame())
        .contains("Flown 2 · malfunctions 1 · best 912 ft (Red Kite)")
        .contains("Motors used: 1 × C6-5, 1 × D12-5");
  }

  @Test
  void enter_opens_the_debrief_of_what_has_flown_and_else_the_card_at_the_pad() {
    assertThat(meadow.desk().press("<home><enter>").top()).isInstanceOf(DebriefScreen.class);
    assertThat(meadow.desk().press("<end><enter>").top()).isInstanceOf(PadScreen.class);
    assertThat(meadow.desk().press("<end>c").top()).isInstanceOf(CardScreen.class);
    assertThat(meadow.desk().press("<home>c").top()).isInstanceOf(CardScreen.class);
  }

  @Test
  void d_opens_the_newest_debrief_that_waits() {
    Desk desk = meadow.desk().press("d");

    assertThat(debriefed(desk).rocket()).contains(meadow.heron);
  }

  @Test
  void gone_marks_the_flight_and_opens_its_debrief_once_kept() {
    Desk desk = meadow.desk().press("nher<enter>6<f2>").holdSaves().press("g");
    assertThat(desk.top()).isInstanceOf(DayScreen.class);

    desk.answerSaves();
    assertThat(debriefed(desk).id()).isEqualTo(meadow.flight(4).id());
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.FLOWN);
    assertThat(meadow.flight(4).facts().get(Flight.LIFTOFF_AT)).contains(Desk.MORNING);
    assertThat(desk.book().left(desk.book().lot(meadow.lotK).orElseThrow())).contains(4);
  }

  @Test
  void flying_against_no_go_asks_for_a_reason() {
    Desk desk = meadow.desk().press("<end>g");
    assertThat(desk.frame()).contains("NO-GO to Wren").contains(Fixed.REASON);

    desk.press("<enter>");
    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.CARD);

    desk.press("gust died down<enter>");
    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.FLOWN);
    assertThat(meadow.flight(3).facts().get(Flight.AGAINST)).contains("gust died down");
    assertThat(debriefed(desk).id()).isEqualTo(meadow.flight(3).id());
  }

  @Test
  void a_flight_against_no_go_can_be_called_back() {
    Desk desk = meadow.desk().press("<end>gwind<esc>");

    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.CARD);
    assertThat(desk.top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void a_reason_begun_is_there_again_after_leaving_and_after_quitting() {
    assertThat(meadow.desk().press("<end>ggust d<esc>g").frame()).containsPattern("> Why +gust d");

    Desk desk = meadow.desk().press("<end>g<c-u>lull<c-c><enter>");
    assertThat(desk.hasQuit()).isTrue();
    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.CARD);
    assertThat(meadow.flight(3).facts().get(Flight.AGAINST)).contains("lull");
  }

  @Test
  void scrub_and_gone_can_be_taken_back() {
    Desk desk = meadow.desk().press("<end>s");
    assertThat(desk.frame()).contains("scrubbed");

    desk.press("u");
    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.CARD);

    desk.press("<home>u");
    assertThat(meadow.flight(1).status()).as("no debrief yet").isEqualTo(Flight.Status.CARD);

    desk.press("<down>u");
    assertThat(meadow.flight(2).status()).as("debriefed").isEqualTo(Flight.Status.FLOWN);
  }

  @Test
  void what_the_check_does_not_look_at_leaves_a_kept_card_kept() {
    meadow.desk().press("<end>c").press("<s-tab>small<enter><esc>");

    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.CARD);
    assertThat(meadow.flight(3).verdict()).isPresent();
    assertThat(meadow.flight(3).facts().get(Flight.ALTIMETER)).isPresent();
  }

  @Test
  void what_was_scrubbed_as_a_changed_draft_comes_back_as_a_draft() {
    Desk desk = meadow.desk().press("<end>c").press("9oz<esc>").press("<end>su");

    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.DRAFT);
    assertThat(desk.frame()).contains("draft");
  }

  @Test
  void the_list_scrolls_with_the_cursor() {
    for (int i = 0; i < 30; i++) {
      meadow.log.has(
          Kind.FLIGHT,
          Facts.none()
              .with(Flight.DAY, meadow.day)
              .with(Flight.ROCKET, meadow.wren)
              .with(Flight.NOTE, "card " + i));
    }
    Desk desk = meadow.desk().press("<end>");
    assertThat(desk.frame()).contains("> 33  Wren").doesNotContain("Grey Heron");

    assertThat(desk.press("<home>").frame()).contains(">  1  Grey Heron");
  }

  @Test
  void every_key_is_told_in_the_smallest_terminal() {
    Desk desk = meadow.desk().press("?");
    String first = desk.frame(Size.SMALLEST);
    StringBuilder help = new StringBuilder(first);
    while (desk.frame(Size.SMALLEST).contains("… more: Down")) {
      help.append(desk.press("<down>").frame(Size.SMALLEST));
    }

    assertThat(first).contains("… more: Down");
    for (DayKeys key : DayKeys.values()) {
      assertThat(help.toString()).contains(key.binding().meaning());
    }
  }

  @Test
  void q_asks_and_a_second_q_leaves() {
    assertThat(meadow.desk().press("qq").hasQuit()).isTrue();
    assertThat(meadow.desk().press("q<esc>").hasQuit()).isFalse();
  }
}
