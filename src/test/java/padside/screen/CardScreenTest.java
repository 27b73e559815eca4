package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Ruling.Verdict;
import padside.flight.Weather;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.Wind;

class CardScreenTest {
  private final Meadow meadow = new Meadow().withMorning();

  private static Fault cardFull() {
    return new Fault("disk-full", "The memory card is full.", "Make room, then go on.");
  }

  @Test
  void a_new_card_starts_from_the_rockets_last_flight() {
    meadow.desk().press("nher<enter>");

    Flight card = meadow.flight(4);
    assertThat(card.status()).isEqualTo(Flight.Status.DRAFT);
    assertThat(card.rocket()).contains(meadow.heron);
    assertThat(card.motor()).contains("C6-5");
    assertThat(card.lot()).contains(meadow.lotK);
    assertThat(card.device()).contains(meadow.dome);
    assertThat(card.facts().get(Flight.ALTIMETER)).contains(meadow.altimeter);
    assertThat(card.facts().typed(Flight.MASS)).contains("3.3oz");
    assertThat(card.facts().get(Flight.ROD)).contains(Length.ofInches(36));
    assertThat(card.facts().get(Flight.VERDICT)).as("of the last flight").isEmpty();
    assertThat(card.facts().get(Flight.NOTE)).isEmpty();
  }

  @Test
  void what_the_last_flight_does_not_say_comes_from_the_rocket() {
    meadow.desk().press("nkite<enter>");

    Facts card = meadow.flight(4).facts();
    assertThat(card.get(Flight.MASS)).contains(Mass.ofOunces(4.4));
    assertThat(card.get(Flight.ROD)).contains(Length.ofInches(34));
    assertThat(card.get(Flight.DEVICE)).as("of the last flight").contains(meadow.dome);
  }

  @Test
  void a_used_up_lot_is_not_taken_over() {
    meadow.log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.DAY, meadow.day)
            .with(Flight.ROCKET, meadow.heron)
            .with(Flight.MOTOR, "A8-3")
            .with(Flight.LOT, meadow.lotUsedUp));

    Desk desk = meadow.desk().press("nher<enter>");

    assertThat(meadow.flight(5).motor()).contains("A8-3");
    assertThat(meadow.flight(5).lot()).isEmpty();
    assertThat(desk.frame()).contains("> Lot");
  }

  @Test
  void the_cursor_lands_on_a_stale_wind() {
    Desk desk = meadow.withWeather("6g9 SW", Duration.ofMinutes(11)).desk().press("nher<enter>");

    assertThat(desk.frame()).contains("? Wind        6g9 SW").contains("read 11 min ago");
  }

  @Test
  void the_cursor_lands_at_the_end_when_nothing_is_missing() {
    Desk desk = meadow.withWeather("6g9 SW", Duration.ofMinutes(9)).desk().press("nher<enter>");

    assertThat(desk.frame()).contains("> Note").contains("  Wind        6g9 SW");
    assertThat(desk.press("<enter>").book().flight(meadow.flight(4).id()))
        .map(Flight::status)
        .contains(Flight.Status.CARD);
  }

  @Test
  void the_cursor_lands_on_what_is_missing_first() {
    meadow.log.has(Kind.ROCKET, Facts.none().with(padside.flight.Rocket.NAME, "Nameless Stork"));

    assertThat(meadow.desk().press("nstork<enter>").frame()).contains("> Motor");
  }

  /** The figure asked for: at most 12 keys from the Day screen to the kept card, new wind typed. */
  @Test
  void a_repeat_flight_takes_at_most_twelve_keys() {
    Desk desk = meadow.withWeather("6g9 SW", Duration.ofMinutes(40)).desk();

    desk.press("ng<enter>7g11sw<f2>");

    assertThat(desk.keys()).isLessThanOrEqualTo(12);
    Flight card = meadow.flight(4);
    assertThat(card.status()).isEqualTo(Flight.Status.CARD);
    assertThat(card.rocket()).contains(meadow.heron);
    assertThat(card.wind().map(Wind::gust)).contains(Speed.ofMph(11));
    assertThat(card.verdict()).contains(Verdict.GO);
    assertThat(card.facts().get(Flight.LIMIT)).contains(Fixed.LIMIT);
    assertThat(card.facts().get(Flight.PREDICTED_APOGEE)).contains(Length.ofFeet(913));
  }

  @Test
  void go_turns_to_no_go_while_the_wind_is_typed_up() {
    Desk desk = meadow.desk().press("nher<enter>");
    assertThat(desk.frame()).contains("UNKNOWN").contains("no wind entered");

    assertThat(desk.press("1").frame()).contains(" GO\n").contains("1 mph · limit 13 mph");
    assertThat(desk.press("4").frame()).contains("NO-GO").contains("14 mph · limit 13 mph");
    assertThat(desk.press("<backspace>0").frame()).contains(" GO\n").contains("10 mph");
  }

  @Test
  void browsing_rockets_shows_what_the_check_says_to_each() {
    Desk desk = meadow.withWeather("6g9 SW", Duration.ofMinutes(1)).desk().press("nher");

    assertThat(desk.frame()).contains("> Grey Heron").contains("GO").contains("> 5   ");
    assertThat(desk.log().actions()).as("nothing is chosen yet").noneMatch(this::isCard);
  }

  private boolean isCard(Action action) {
    return action.label().equals("fill in card");
  }

  @Test
  void no_go_can_be_kept_and_says_why() {
    meadow.desk().press("nher<enter>22g30<f2>");

    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.CARD);
    assertThat(meadow.flight(4).verdict()).contains(Verdict.NO_GO);
    assertThat(meadow.flight(4).facts().get(Flight.REASON)).contains(Fixed.REASON);
  }

  @Test
  void an_older_answer_is_told_as_out_of_date_and_never_stored() {
    Desk desk = meadow.desk().press("nher<enter>9").holdChecks();
    assertThat(desk.frame()).contains(" GO\n");

    desk.press("9");
    assertThat(desk.frame()).contains("checking… out of date: GO").doesNotContain("│  GO\n");

    desk.press("<f2>");
    assertThat(desk.frame()).contains("checking… kept with the answer");
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.DRAFT);
    assertThat(meadow.flight(4).verdict()).isEmpty();

    desk.answerChecks();
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.DRAFT);
    desk.answerSaves();
    assertThat(meadow.flight(4).verdict()).contains(Verdict.NO_GO);
  }

  @Test
  void answers_that_come_late_do_not_count() {
    Desk desk = meadow.desk().press("nher<enter>").holdChecks().press("14<f2>");

    desk.answerOldestCheck();
    desk.answerSaves();
    assertThat(meadow.flight(4).verdict()).as("the answer to a wind of 1").isEmpty();

    desk.answerChecks().answerSaves();
    assertThat(meadow.flight(4).verdict()).contains(Verdict.NO_GO);
  }

  @Test
  void typing_on_takes_back_the_wish_to_keep() {
    Desk desk = meadow.desk().press("nher<enter>").holdChecks().press("4<f2>").press("x");

    desk.answerChecks().answerSaves();

    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.DRAFT);
    assertThat(desk.top()).isInstanceOf(CardScreen.class);
  }

  @Test
  void text_that_cannot_be_read_survives_leaving_and_quitting() {
    Desk desk = meadow.desk().press("nher<enter>6x9 sw<esc>");
    assertThat(desk.frame()).contains("draft");

    desk.press("<enter>");
    assertThat(desk.frame()).contains("! Wind        6x9 sw").contains("\"6x9 sw\"");

    desk.press("<end> and more<c-c><enter>");
    assertThat(desk.hasQuit()).isTrue();
    assertThat(desk.restart().press("<end><enter>").frame()).contains("6x9 sw and more");
  }

  @Test
  void keeping_with_an_unreadable_field_goes_there_and_keeps_the_draft() {
    Desk desk = meadow.desk().press("nher<enter>6x9<enter>calm air<f2>");

    assertThat(desk.frame()).contains("! Wind        6x9").contains("draft kept");
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.DRAFT);
    assertThat(meadow.flight(4).facts().typed(Flight.WIND_MEAN)).contains("6x9");
    assertThat(meadow.flight(4).facts().get(Flight.NOTE)).contains("calm air");
  }

  @Test
  void kept_is_said_only_once_it_is_on_the_medium() {
    Desk desk = meadow.desk().holdSaves().press("nher<enter>");
    assertThat(desk.frame()).contains("saving…").doesNotContain("kept");

    assertThat(desk.answerSaves().frame()).contains("draft kept");
  }

  @Test
  void a_card_closes_only_once_it_is_on_the_medium() {
    Desk desk = meadow.desk().press("nher<enter>6").holdSaves().press("<f2>");
    assertThat(desk.top()).isInstanceOf(CardScreen.class);
    assertThat(desk.frame()).contains("saving…");

    assertThat(desk.answerSaves().top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void what_is_typed_while_a_new_flights_id_is_awaited_follows_it() {
    Desk desk = meadow.desk().holdSaves().press("nher<enter>6g9<enter>tall grass<f2>");
    assertThat(meadow.log.flights(padside.flight.FlightLog.FlightQuery.newest(9))).hasSize(3);

    desk.answerSaves();

    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.CARD);
    assertThat(meadow.flight(4).facts().get(Flight.NOTE)).contains("tall grass");
    assertThat(meadow.flight(4).wind().map(Wind::gust)).contains(Speed.ofMph(9));
  }

  @Test
  void a_failed_save_is_told_and_the_form_stays() {
    Desk desk = meadow.desk().failNextSave(cardFull()).press("nher<enter>");
    assertThat(desk.frame()).contains("The memory card is full.").contains("Make room");

    desk.press("<enter>");
    assertThat(desk.frame()).contains("Grey Heron").contains("not kept").doesNotContain("kept\n");

    desk.press("6g9<enter>");
    assertThat(desk.frame()).contains("draft kept");
    assertThat(meadow.flight(4).motor()).as("sent again in full").contains("C6-5");
  }

  @Test
  void a_card_that_could_not_be_kept_comes_back() {
    Desk desk = meadow.desk().press("nher<enter>6g9").failNextSave(cardFull()).press("<esc>");
    assertThat(desk.frame()).contains("The memory card is full.");

    assertThat(desk.press("<enter>").frame()).contains("> Wind        6g9");
    assertThat(desk.press("<esc>").top()).isInstanceOf(DayScreen.class);
    assertThat(meadow.flight(4).wind().map(Wind::gust)).contains(Speed.ofMph(9));
  }

  @Test
  void leaving_an_empty_card_leaves_no_trace() {
    Desk desk = meadow.desk().press("n<esc>");

    assertThat(desk.top()).isInstanceOf(DayScreen.class);
    assertThat(desk.book().flights()).hasSize(3);
  }

  @Test
  void a_typed_wind_becomes_a_weather_reading_in_the_same_act() {
    Desk desk =
        meadow.withWeather("6g9 SW", Duration.ofMinutes(40)).desk().press("nher<enter>7g11 w<f2>");

    Action last = meadow.log.actions().get(meadow.log.actions().size() - 1);
    assertThat(last.changes()).extracting(Action.Change::kind).contains(Kind.WEATHER);
    Facts reading = last.changes().get(1).facts();
    assertThat(Weather.windIn(reading).map(Wind::gust)).contains(Speed.ofMph(11));
    assertThat(reading.get(Weather.AT)).contains(Desk.MORNING);
    assertThat(reading.get(Weather.TEMPERATURE)).as("nobody read it now").isEmpty();
    assertThat(reading.get(Weather.DAY)).contains(meadow.day);
    Weather latest = desk.book().latestWeather(meadow.day).orElseThrow();
    assertThat(latest.at()).contains(Desk.MORNING);
    assertThat(latest.temperature()).as("the day's last").contains(Temperature.ofFahrenheit(61));
  }

  @Test
  void a_wind_taken_over_is_no_new_reading() {
    meadow.withWeather("6g9 SW", Duration.ofMinutes(2)).desk().press("nher<enter><f2>");

    assertThat(meadow.log.list(Kind.WEATHER)).hasSize(1);
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.CARD);
  }

  @Test
  void a_kept_card_that_changes_is_a_draft_until_it_is_kept_again() {
    Desk desk = meadow.desk().press("nher<enter>6g9<f2>").press("<end>c");
    assertThat(desk.frame()).contains("kept");

    desk.press("<s-tab>22g30<esc>");
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.DRAFT);

    desk.press("<end>c<f2>");
    assertThat(meadow.flight(4).status()).isEqualTo(Flight.Status.CARD);
    assertThat(meadow.flight(4).verdict()).contains(Verdict.NO_GO);
  }

  @Test
  void a_flown_flight_keeps_the_verdict_it_flew_with() {
    Desk desk = meadow.desk().press("<home>c");
    desk.press("<s-tab><s-tab>").press("30g40<f2>");

    assertThat(meadow.flight(1).status()).isEqualTo(Flight.Status.FLOWN);
    assertThat(meadow.flight(1).verdict()).contains(Verdict.GO);
    assertThat(meadow.log.list(Kind.WEATHER)).isEmpty();
  }

  @Test
  void another_motor_brings_its_lot() {
    Desk desk = meadow.desk().press("nher<enter>");
    while (!desk.frame().contains("> Motor")) {
      desk.press("<s-tab>");
    }
    desk.press("b6-4<enter>");

    assertThat(meadow.flight(4).motor()).contains("B6-4");
    assertThat(meadow.flight(4).lot()).contains(meadow.lotB);

    desk.press("<s-tab>e12-4<tab>");
    assertThat(meadow.flight(4).motor()).contains("E12-4");
    assertThat(meadow.flight(4).lot()).isEmpty();
    assertThat(meadow.flight(4).facts().get(Flight.LOT)).isEqualTo(Optional.empty());
  }

  @Test
  void a_delay_not_sold_is_told_with_those_that_are() {
    Desk desk = meadow.desk().press("nher<enter>");
    while (!desk.frame().contains("> Motor")) {
      desk.press("<s-tab>");
    }

    assertThat(desk.press("c6-4").frame())
        .contains("! Motor       c6-4")
        .contains("C6 is not sold with delay \"4\"");
  }
}
