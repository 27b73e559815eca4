package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;

class FleetScreenTest {
  private final Season season = new Season();
  private final Desk desk = Desk.over(season.log).opening(FleetScreen::open);

  @Test
  void an_empty_fleet_says_what_to_do() {
    Desk empty = Desk.over(new MemoryFlightLog()).opening(FleetScreen::open);
    Golden.holds("fleet-empty", empty.frame());
  }

  @Test
  void the_fleet() {
    Golden.holds("fleet", desk.frame());
    Golden.holds("fleet-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("fleet-form", desk.press("<enter>").frame());
    Golden.holds("fleet-form-list", desk.press("<tab><tab><tab><tab><down>").frame());
    assertThat(season.log.list(Kind.ROCKET)).hasSize(2);
  }
}
