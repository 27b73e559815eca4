package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.fact.Facts;
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
}
