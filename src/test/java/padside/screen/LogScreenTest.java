package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.units.TimeSpan;

class LogScreenTest {
  private final Season season = new Season();
  private final Desk desk = Desk.over(season.log).opening(LogScreen::open);

  @Test
  void no_flights_yet() {
    assertThat(Desk.over(new MemoryFlightLog()).opening(LogScreen::open).frame())
        .contains("No flights yet.");
  }

  @Test
  void flights_are_listed_newest_first() {
    Golden.holds("log", desk.frame());
    Golden.holds("log-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("log-120x40", desk.frame(new Size(120, 40)));
    assertThat(desk.press("/tree").frame()).contains("Kestrel").doesNotContain("Skylark");
  }

  @Test
  void a_flight_is_viewed_with_everything_kept() {
    desk.press("<end>v");
    Golden.holds("flight", desk.frame());
    Golden.holds("flight-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("flight-60x20-down", desk.press("<pagedown>").frame(new Size(60, 20)));
    assertThat(desk.press("<pageup><up>").frame()).contains("CARD");
    assertThat(desk.press("<esc>").frame()).contains("Outcome");
  }

  @Test
  void a_flight_that_waits_for_its_debrief_opens_into_it() {
    season.log.has(Kind.FLIGHT, Facts.none().with(Flight.STATUS, Flight.Status.FLOWN));
    Desk waiting = Desk.over(season.log).opening(LogScreen::open);
    assertThat(waiting.frame()).contains("debrief waits");

    assertThat(waiting.press("<enter>").top()).isInstanceOf(DebriefScreen.class);
  }

  @Test
  void what_has_not_flown_is_not_debriefed_but_opens_its_card() {
    season.log.has(Kind.FLIGHT, Facts.none().with(Flight.STATUS, Flight.Status.DRAFT));
    Desk draft = Desk.over(season.log).opening(LogScreen::open).press("v");

    assertThat(draft.press("d").top()).isInstanceOf(CardScreen.class);
  }

  @Test
  void what_could_not_be_read_is_told_as_typed() {
    season.log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.MOTOR.name(), Facts.Cell.unread("Z9"))
            .with(Flight.WIND_MEAN.name(), Facts.Cell.unread("breezy"))
            .with(Flight.MEASURED_DELAY, new TimeSpan(5.5)));
    Desk odd = Desk.over(season.log).opening(LogScreen::open).press("v");

    assertThat(odd.frame())
        .contains("Z9 (could not be read)", "breezy (could not be read)")
        .contains("not predicted · measured 5.5 s");
  }

  @Test
  void words_and_filters_find_flights_as_they_are_typed() {
    desk.press("/outcome:tree kes");
    Golden.holds("log-find", desk.frame());
    Golden.holds("log-find-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("log-find-120x40", desk.frame(new Size(120, 40)));

    assertThat(desk.press("<esc>").frame()).contains("Skylark").doesNotContain("found");
    assertThat(desk.press("/kes<tab><esc>").frame()).contains("Skylark", "in all");
  }

  @Test
  void what_can_be_typed_stands_there_until_something_is() {
    Golden.holds("log-find-begun-60x20", desk.press("/").frame(new Size(60, 20)));
    assertThat(desk.press("k").frame()).doesNotContain("outcome:");
  }

  @Test
  void a_filter_that_cannot_be_read_is_told_and_the_lines_stay() {
    desk.press("/kes");
    assertThat(desk.press(" on:soon").frame())
        .contains("on: takes a date, a month or a year such as", "Kestrel");
    Golden.holds("log-find-objection-60x20", desk.frame(new Size(60, 20)));
    assertThat(desk.press("<backspace><backspace><backspace><backspace>2031").frame())
        .contains("No flight has all of that. Esc shows all.", "0 found");
  }

  @Test
  void an_answer_older_than_the_newest_key_is_passed_over() {
    desk.holdSaves().press("/kes");
    assertThat(desk.frame()).contains("looking ...").doesNotContain("Kestrel");
    long screen = ((RecordList) desk.top()).serials().screen();
    List<RecordId> wrong = List.of(desk.book().flights().get(0).id());
    desk.told(new Event.FlightsFound(new Ticket(screen, 2), wrong, 1, true, desk.book()));
    assertThat(desk.frame()).contains("looking ...");

    assertThat(desk.answerSaves().frame()).contains("Kestrel", "found").doesNotContain("looking");
    assertThat(desk.press("<backspace>").frame()).as("typing goes on").contains("Find: ke");
  }

  @Test
  void what_was_found_so_far_is_shown_until_all_is_looked_through() {
    desk.holdSaves().press("/kes");
    long screen = ((RecordList) desk.top()).serials().screen();
    desk.told(new Event.FlightsFound(new Ticket(screen, 3), List.of(), 0, false, desk.book()));
    assertThat(desk.frame()).contains("0 found so far").doesNotContain("No flight");

    assertThat(desk.answerSaves().frame()).contains("1 found", "Kestrel").doesNotContain("so far");
  }

  @Test
  void a_flight_too_old_to_be_listed_is_found_opened_and_come_back_from() {
    MemoryFlightLog log = new MemoryFlightLog();
    log.has(Kind.FLIGHT, Facts.none().with(Flight.NOTE, "maiden flight, Zoë caught it"));
    for (int i = 0; i < 700; i++) {
      log.has(Kind.FLIGHT, Facts.none().with(Flight.NOTE, "flight " + i));
    }
    Desk large = Desk.over(log).opening(LogScreen::open);
    assertThat(large.frame()).contains("the newest 500");
    assertThat(large.press("/flight").frame()).contains("the newest 100 of 701");
    assertThat(large.press("<esc>/zoe").frame()).contains("1 found");

    assertThat(large.press("<tab>v").frame()).contains("maiden flight");
    assertThat(large.press("<esc>").frame()).contains("1 found", "Find: zoe");
    assertThat(large.press("<esc>").frame()).contains("the newest 500");
  }

  @Test
  void what_was_changed_above_the_list_is_found_as_it_is_now() {
    desk.press("/tree<tab>v");
    RecordId tree = ((FlightScreen) desk.top()).id();
    season.log.save(
        Action.change("", Kind.FLIGHT, tree, Facts.none().with(Flight.LANDED_ON, "grass")));

    assertThat(desk.press("<esc>").frame()).contains("No flight has all of that.");
  }
}
