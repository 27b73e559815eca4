package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;

class PlanScreenTest {
  private static final Size SMALLEST = new Size(60, 20);

  private final Meadow meadow = new Meadow().withMorning();
  private final RecordId nextDay =
      meadow.log.has(
          Kind.DAY,
          Facts.none().with(Day.DATE, LocalDate.of(2026, 5, 9)).with(Day.FIELD, meadow.field));

  /** Three flights on the next day, the third without a motor in the box. */
  private Desk planned() {
    meadow.log.save(
        Action.change("", Kind.LOT, meadow.lotK, Facts.none().with(Lot.CORRECTION, -4)));
    meadow.log.has(
        Kind.FIX,
        Facts.none()
            .with(Fix.ROCKET, meadow.wren)
            .with(Fix.TEXT, "reglue fin 2")
            .with(Fix.SEVERITY, Fix.Severity.GROUNDS_IT));
    plan(meadow.heron, "C6-5", 1);
    plan(meadow.wren, "A10T-3", 2);
    plan(meadow.kite, "C6-5", 3);
    return meadow.desk();
  }

  private RecordId plan(RecordId rocket, String motor, int place) {
    return meadow.log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.STATUS, Flight.Status.PLANNED)
            .with(Flight.DAY, nextDay)
            .with(Flight.PLACE, place)
            .with(Flight.ROCKET, rocket)
            .with(Flight.MOTOR, motor)
            .with(Flight.DEVICE, meadow.dome)
            .with(Flight.ALTIMETER, meadow.altimeter));
  }

  private List<String> order(Desk desk) {
    return desk.book().plannedFor(nextDay).stream()
        .map(flight -> FlightText.name(flight, desk.session().world()))
        .toList();
  }

  private static Fault full() {
    return new Fault("full", "The disk is full.", "Make room.");
  }

  @Test
  void the_plan_of_the_next_day_is_one_key_away() {
    Desk desk = planned().press("t");

    assertThat(desk.frame()).contains("Plan · Sat 9 May 2026, Mill Meadow");
    Golden.holds("plan", desk.frame());
    Golden.holds("plan-60x20", desk.frame(SMALLEST));
    Golden.holds("plan-120x40", desk.frame(new Size(120, 40)));
  }

  @Test
  void without_a_day_to_come_the_day_is_opened_first() {
    Desk desk = Desk.over(new MemoryFlightLog()).press("t");
    assertThat(desk.frame()).contains("> Field").contains("2026-05-03");

    desk.press("<tab>2026-05-10<esc>");
    assertThat(desk.frame()).contains("Plan · Sun 10 May 2026").contains("Nothing planned yet");
    assertThat(desk.press("n").frame()).contains("Plan 1 · Sun 10 May 2026");
  }

  @Test
  void each_row_tells_what_wind_it_stands_as_the_answers_come() {
    Desk desk = planned().holdChecks().press("t");
    assertThat(desk.frame()).contains("…").doesNotContain("13 mph");

    desk.answerOldestCheck();
    assertThat(desk.frame()).containsOnlyOnce("13 mph (field)");
    assertThat(desk.answerChecks().frame()).contains("13 mph (field)").doesNotContain("A10T-3 …");
  }

  @Test
  void a_flight_is_added_like_a_card_without_wind() {
    Desk desk = meadow.desk().press("t<tab>n");
    Golden.holds("plan-card", desk.press("red<enter>").frame());
    assertThat(desk.frame()).contains("Plan 1 · Sat 9 May 2026").doesNotContain("Wind  ");

    desk.press("<f2>");
    Flight added = desk.book().plannedFor(nextDay).get(0);
    assertThat(added.motor()).contains("D12-5");
    assertThat(added.place()).contains(1);
    assertThat(added.verdict()).as("no answer is kept with it").isEmpty();
    assertThat(desk.frame()).contains("Red Kite").contains("1 planned");
  }

  @Test
  void a_flight_left_half_filled_stays_planned() {
    Desk desk = meadow.desk().press("t<tab>nwren<enter><esc>");

    assertThat(desk.book().plannedFor(nextDay)).hasSize(1);
    assertThat(desk.press("<enter>").frame()).contains("Plan 1");
  }

  @Test
  void plus_and_minus_change_the_places_of_two_flights_in_one_act() {
    Desk desk = planned().press("t+");
    assertThat(order(desk))
        .containsExactly("Wren on A10T-3", "Grey Heron on C6-5", "Red Kite on C6-5");
    List<Action> actions = meadow.log.actions();
    assertThat(actions.get(actions.size() - 1).changes()).hasSize(2);

    assertThat(order(desk.press("-"))).startsWith("Grey Heron on C6-5");
    assertThat(order(desk.press("++"))).endsWith("Grey Heron on C6-5");
    assertThat(desk.press("+").frame()).contains("> 3  Grey Heron");
  }

  @Test
  void moving_does_not_wait_for_the_medium() {
    Desk desk = planned().press("t").holdSaves().press("++");
    assertThat(desk.frame()).contains("> 3  Grey Heron");

    assertThat(order(desk.answerSaves()))
        .containsExactly("Wren on A10T-3", "Red Kite on C6-5", "Grey Heron on C6-5");
  }

  @Test
  void an_order_that_could_not_be_kept_is_as_it_was() {
    Desk desk = planned().press("t").failNextSave(full()).press("+<esc>");

    assertThat(desk.frame()).contains("> 1  Grey Heron");
  }

  @Test
  void the_last_of_the_list_is_short_whoever_that_is() {
    Desk desk = planned().press("t<end>");
    assertThat(desk.frame()).contains("> 3  Red Kite").contains("! short 1 C6-5");

    desk.press("--");
    assertThat(desk.frame()).contains("> 1  Red Kite").doesNotContain("! short");
    assertThat(desk.press("<end>").frame()).contains("> 3  Wren");
    assertThat(desk.press("<up>").frame()).contains("> 2  Grey Heron").contains("! short 1 C6-5");
  }

  @Test
  void a_flight_is_taken_out_after_a_question() {
    Desk desk = planned().press("tx");
    assertThat(desk.frame()).contains("Take Grey Heron on C6-5 out? x does");

    assertThat(order(desk.press("n"))).hasSize(3);
    assertThat(order(desk.press("xx"))).containsExactly("Wren on A10T-3", "Red Kite on C6-5");
    assertThat(desk.frame()).doesNotContain("short 1 C6-5").contains("> 1  Wren");
  }

  @Test
  void the_other_days_are_behind_tab_and_a_new_one_behind_o() {
    Desk desk = planned().press("t<tab>");
    assertThat(desk.frame()).contains("Plan · Sat 2 May 2026").contains("Nothing planned yet");

    desk.press("o<enter><tab>");
    assertThat(desk.press("<esc>").frame()).contains("Plan · Sun 3 May 2026");
    assertThat(desk.press("<tab>").frame()).contains("Plan · Sat 9 May 2026");
  }

  @Test
  void a_plan_whose_day_has_passed_gets_another_date() {
    Desk desk = planned().after(Duration.ofDays(14)).press("t");
    assertThat(desk.frame()).contains("This day has passed; e gives the plan another date.");

    desk.press("e<tab><c-u>2026-05-23<enter><esc>");
    assertThat(desk.frame()).contains("Plan · Sat 23 May 2026").doesNotContain("has passed");
  }

  @Test
  void a_question_lost_to_the_card_is_asked_again() {
    Desk desk = planned().holdChecks().press("t<enter>");
    // The check answers only the newest: the plan's question made way for the card's.
    desk.dropOldestCheck().answerOldestCheck();
    desk.press("<esc>").answerChecks();

    assertThat(desk.frame()).contains("13 mph (field)").doesNotContain("…  ");
  }

  @Test
  void the_packing_list_is_ticked_with_space() {
    Desk desk = planned().press("tk");
    Golden.holds("packing", desk.frame());
    Golden.holds("packing-60x20", desk.frame(SMALLEST));

    desk.press("  ");
    assertThat(desk.book().day(nextDay).map(Day::packed).orElseThrow()).hasSize(2);
    assertThat(desk.frame())
        .contains("[x]  Grey Heron")
        .contains("[x]  Wren")
        .contains("> [ ]  Red Kite");
    desk.press("<home> ");
    assertThat(desk.frame()).contains("> [ ]  Grey Heron").contains("[x]  Wren");
    assertThat(desk.restart().press("tk").frame()).contains("[x]  Wren");
  }

  @Test
  void ticks_do_not_wait_for_the_medium_and_a_failed_one_is_taken_back() {
    Desk desk = planned().press("tk").holdSaves().press("  ");
    assertThat(desk.frame()).contains("[x]  Grey Heron").contains("[x]  Wren");
    desk.answerSaves();
    assertThat(desk.book().day(nextDay).map(Day::packed).orElseThrow()).hasSize(2);

    Desk failing = meadow.desk().press("tk<end>").failNextSave(full()).press(" <esc>");
    assertThat(failing.frame()).doesNotContain("[x]  this machine");
  }

  @Test
  void on_the_day_the_plan_stands_below_the_cards_and_enter_begins_the_next() {
    Desk desk = planned().after(Duration.ofDays(7));
    meadow.log.has(Kind.FLIGHT, Facts.none().with(Flight.DAY, nextDay));
    Golden.holds("day-planned", desk.restart().frame());
    Golden.holds("day-planned-60x20", desk.frame(SMALLEST));
    assertThat(desk.frame()).contains("next: Grey Heron on C6-5").contains("Flown 0");

    desk.press("<down><enter>");
    assertThat(desk.frame()).contains("Card 2 ·").contains("> Wind");
    Flight begun = desk.book().flightsOf(nextDay).get(1);
    assertThat(begun.status()).as("at once").isEqualTo(Flight.Status.DRAFT);
    assertThat(begun.motor()).contains("C6-5");
    assertThat(begun.lot()).contains(meadow.lotK);

    desk.press("6<f2>");
    assertThat(desk.book().flightsOf(nextDay).get(1).status()).isEqualTo(Flight.Status.CARD);
    assertThat(desk.frame()).contains("next: Wren on A10T-3").contains("> 2  Grey Heron");
  }

  @Test
  void what_is_planned_keeps_its_order_where_several_fly() {
    Desk desk = planned().after(Duration.ofDays(7));
    flier("Oda", meadow.heron, "begun");
    desk.book().plannedFor(nextDay).forEach(flight -> flier(flight, "Piet"));
    flier(desk.book().plannedFor(nextDay).get(1), "Oda");

    assertThat(desk.restart().frame())
        .containsSubsequence("1  Oda", "2  Piet", "3  Oda", "4  Piet")
        .contains("next: Grey Heron on C6-5");
  }

  private void flier(Flight flight, String name) {
    Facts facts = Facts.none().with(Flight.FLIER, name);
    meadow.log.save(Action.change("", Kind.FLIGHT, flight.id(), facts));
  }

  private void flier(String name, RecordId rocket, String note) {
    meadow.log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.DAY, nextDay)
            .with(Flight.ROCKET, rocket)
            .with(Flight.FLIER, name)
            .with(Flight.NOTE, note));
  }

  @Test
  void a_planned_flight_begun_starts_from_the_wind_of_the_day() {
    Desk desk = planned().after(Duration.ofDays(7)).restart().press("w7g9 W<f2><enter>");

    assertThat(desk.frame()).contains("7g9 W");
    assertThat(desk.book().flightsOf(nextDay).get(0).wind()).isPresent();
  }

  @Test
  void after_a_debrief_enter_begins_what_is_planned_next() {
    Desk desk = planned().after(Duration.ofDays(7)).restart().press("<enter>6<f2>g<f2><enter>");

    assertThat(desk.frame()).contains("Card 2 ·").contains("Wren");
  }

  @Test
  void at_home_the_day_that_was_is_shown_and_not_the_one_to_come() {
    Desk desk = planned().after(Duration.ofDays(2)).restart();

    assertThat(desk.frame()).contains("Day · Sat 2 May 2026").doesNotContain("next:");
    assertThat(desk.after(Duration.ofDays(20)).restart().frame()).contains("Day · Sat 2 May 2026");
  }

  @Test
  void planned_flights_are_no_flights_yet() {
    Desk desk = planned();

    assertThat(desk.book().lastFlight(meadow.heron).flatMap(Flight::day)).contains(meadow.day);
    assertThat(desk.book().lot(meadow.lotK).flatMap(desk.book()::left)).contains(1);
    assertThat(desk.press("l").frame()).containsPattern("2026-05-09 +Red Kite").contains("planned");
    assertThat(desk.press("<enter>").frame()).contains("Plan 3");
  }
}
