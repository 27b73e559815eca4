package padside.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;

/** What is short is counted by hand beside each case. */
class PlanTest {
  private final PlannedFlights flights = new PlannedFlights();

  private List<List<String>> lacks() {
    return flights.plan().lines().stream().map(Plan.Line::lacks).toList();
  }

  private List<RecordId> order() {
    return flights.plan().lines().stream().map(line -> line.flight().id()).toList();
  }

  @Test
  void the_third_of_two_motors_left_is_short() {
    flights.lot("C6-5", "K7", 2);
    for (int i = 0; i < 3; i++) {
      flights.planned(flights.heron, "C6-5");
    }

    assertThat(lacks()).containsExactly(List.of(), List.of(), List.of("short 1 C6-5"));
    assertThat(flights.plan().lacking()).isEqualTo(1);
  }

  @Test
  void what_was_fired_and_what_open_cards_of_the_day_hold_is_gone_before() {
    RecordId lot = flights.lot("C6-5", "K7", 3);
    Facts ofLot = Facts.none().with(Flight.LOT, lot);
    flights.flight(flights.heron, "C6-5", Flight.Status.FLOWN, ofLot);
    flights.flight(flights.heron, "C6-5", Flight.Status.CARD, ofLot);
    flights.flight(flights.heron, "C6-5", Flight.Status.SCRUBBED, ofLot);
    flights.planned(flights.heron, "C6-5");
    flights.planned(flights.wren, "C6-5");

    // 3 bought, 1 fired, 1 on an open card, 1 for the first planned flight.
    assertThat(lacks()).containsExactly(List.of(), List.of("short 1 C6-5"));
  }

  @Test
  void a_lot_that_runs_out_is_made_up_for_by_another() {
    RecordId named = flights.lot("C6-5", "K7", 1);
    flights.lot("C6-5", "M2", 4);
    Facts ofLot = Facts.none().with(Flight.LOT, named);
    flights.planned(flights.heron, "3xC6-5", ofLot);
    flights.planned(flights.wren, "C6-5");

    assertThat(lacks()).containsExactly(List.of("lot K7 runs out, take M2"), List.of());
    assertThat(flights.plan().lines().get(0).motors().get(0).draws())
        .extracting(draw -> draw.lot().code(), Taken.Draw::count)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("K7", 1),
            org.assertj.core.groups.Tuple.tuple("M2", 2));
  }

  @Test
  void a_stack_takes_from_two_lots_and_a_cluster_all_its_motors() {
    RecordId lower = flights.lot("C6-0", "L0", 1);
    RecordId upper = flights.lot("C6-7", "U7", 1);
    Facts lots = Facts.none().with(Flight.LOT, upper).with(Flight.BOOSTER_LOT, lower);
    flights.planned(flights.heron, "C6-0 then C6-7", lots);
    flights.planned(flights.wren, "2xC6-0 then C6-7", lots);

    assertThat(lacks()).containsExactly(List.of(), List.of("short 2 C6-0", "short 1 C6-7"));
    assertThat(flights.plan().lacking()).isEqualTo(3);
  }

  @Test
  void a_lot_never_counted_does_not_run_out_and_a_box_without_lots_tells_nothing() {
    flights.planned(flights.heron, "4xC6-5");
    assertThat(lacks()).as("no lots at all").containsExactly(List.of());

    flights.log.has(Kind.LOT, PlannedFlights.uncounted("C6-5", "old"));
    assertThat(lacks()).as("one that was not counted").containsExactly(List.of());

    flights.planned(flights.wren, "D12-5");
    assertThat(lacks()).containsExactly(List.of(), List.of("short 1 D12-5"));
  }

  @Test
  void open_fixes_are_told_and_done_ones_are_not() {
    fix("reglue fin 2", false);
    fix("new lug", true);
    flights.planned(flights.heron, "C6-5");

    assertThat(lacks()).containsExactly(List.of("grounds it: reglue fin 2"));
  }

  private void fix(String text, boolean done) {
    flights.log.has(
        Kind.FIX,
        Facts.none()
            .with(Fix.ROCKET, flights.heron)
            .with(Fix.TEXT, text)
            .with(Fix.SEVERITY, Fix.Severity.GROUNDS_IT)
            .with(Fix.DONE, done));
  }

  @Test
  void changing_places_changes_those_of_two_flights() {
    RecordId first = flights.planned(flights.heron, "C6-5");
    RecordId second = flights.planned(flights.wren, "C6-5");
    RecordId third = flights.planned(flights.wren, "D12-5");
    flights.log.save(Action.remove("", Kind.FLIGHT, flights.planned(flights.wren, "B6-4")));
    RecordId fourth = flights.planned(flights.wren, "B6-4");
    Plan plan = flights.plan();

    assertThat(plan.moved(second, true)).isEqualTo(Map.of(second, 3, third, 2));
    assertThat(plan.moved(second, false)).isEqualTo(Map.of(second, 1, first, 2));
    assertThat(plan.moved(first, false)).isEmpty();
    assertThat(plan.moved(fourth, true)).isEmpty();
  }

  @Test
  void places_that_tell_no_order_are_given_anew() {
    RecordId first = without();
    RecordId second = without();
    RecordId third = without();
    assertThat(order()).as("as they were planned").containsExactly(first, second, third);

    flights
        .plan()
        .moved(third, false)
        .forEach(
            (id, place) ->
                flights.log.save(
                    Action.change("", Kind.FLIGHT, id, Facts.none().with(Flight.PLACE, place))));
    assertThat(order()).containsExactly(first, third, second);
  }

  private RecordId without() {
    return flights.flight(flights.heron, "C6-5", Flight.Status.PLANNED, Facts.none());
  }

  @Test
  void planned_flights_stand_behind_those_begun() {
    RecordId planned = flights.planned(flights.heron, "C6-5");
    RecordId card = flights.flight(flights.wren, "C6-5", Flight.Status.CARD, Facts.none());

    assertThat(flights.book().flightsOf(flights.day))
        .extracting(Flight::id)
        .containsExactly(card, planned);
    assertThat(order()).containsExactly(planned);
  }

  @Test
  void the_next_day_with_a_plan_comes_first_and_one_that_passed_before_an_empty_one() {
    RecordId later = day("2026-05-30");
    assertThat(first("2026-05-01")).as("nothing is planned").contains(flights.day);

    flights.planned(flights.heron, "C6-5");
    assertThat(first("2026-05-09")).contains(flights.day);
    assertThat(first("2026-05-10")).as("it has passed").contains(flights.day);
    assertThat(days("2026-05-10").after(flights.day).map(Day::id)).contains(later);
    assertThat(days("2026-05-10").after(later).map(Day::id)).contains(flights.day);

    flights.log.has(
        Kind.FLIGHT,
        Facts.none().with(Flight.DAY, later).with(Flight.STATUS, Flight.Status.PLANNED));
    assertThat(first("2026-05-10")).contains(later);
    assertThat(first("2026-06-01")).as("the last that passed").contains(later);
  }

  @Test
  void a_day_that_passed_without_a_plan_is_left_out() {
    assertThat(days("2026-05-10").days()).isEmpty();
    assertThat(first("2026-05-10")).isEmpty();
  }

  private Optional<RecordId> first(String today) {
    return days(today).first().map(Day::id);
  }

  private PlanDays days(String today) {
    return PlanDays.of(flights.book(), LocalDate.parse(today));
  }

  private RecordId day(String date) {
    return flights.log.has(Kind.DAY, Facts.none().with(Day.DATE, LocalDate.parse(date)));
  }
}
