package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.flight.Rocket;
import padside.units.Bearing;
import padside.units.Length;

/** How good predictions were, on an invented log. */
class ForetoldScreenTest {
  private final MemoryFlightLog log = log();
  private final Desk desk = Desk.over(log).opening(LogScreen::open).press("g");

  private static MemoryFlightLog log() {
    MemoryFlightLog log = new MemoryFlightLog();
    RecordId heron = log.has(Kind.ROCKET, Facts.none().with(Rocket.NAME, "Heron"));
    RecordId kite = log.has(Kind.ROCKET, Facts.none().with(Rocket.NAME, "Kite"));
    double[][] feet = {{400, 440, 350, 450}, {410, 370, 360, 460}, {700, 690, 600, 800}};
    for (double[] one : feet) {
      flew(log, heron, one);
    }
    flew(log, kite, new double[] {200, 280, 180, 220});
    return log;
  }

  private static void flew(MemoryFlightLog log, RecordId rocket, double[] feet) {
    log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.ROCKET, rocket)
            .with(Flight.PREDICTED_TOP, Length.ofFeet(feet[0]))
            .with(Flight.ALTITUDE, Length.ofFeet(feet[1]))
            .with(Flight.PREDICTED_TOP_LOW, Length.ofFeet(feet[2]))
            .with(Flight.PREDICTED_TOP_HIGH, Length.ofFeet(feet[3]))
            .with(Flight.PREDICTED_BEARING, new Bearing(90))
            .with(Flight.PREDICTED_DISTANCE, Length.ofFeet(100))
            .with(Flight.PREDICTED_SPREAD_LONG, Length.ofFeet(60))
            .with(Flight.PREDICTED_SPREAD_SHORT, Length.ofFeet(30))
            .with(Flight.PREDICTED_SPREAD_ALONG, new Bearing(90))
            .with(Flight.LANDING_BEARING, new Bearing(90))
            .with(Flight.LANDING_DISTANCE, Length.ofFeet(140)));
  }

  @Test
  void nothing_to_tell_is_said() {
    assertThat(Desk.over(new MemoryFlightLog()).opening(LogScreen::open).press("g").frame())
        .contains("No flight yet with something predicted and measured");
  }

  @Test
  void errors_and_intervals_are_told_by_rocket() {
    Golden.holds("foretold", desk.frame());
    Golden.holds("foretold-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("foretold-120x40", desk.frame(new Size(120, 40)));
    // By hand: of 10, 9.8, 1.4 and 40 % the median is 9.9; three of four within what was told.
    assertThat(desk.frame()).contains("10% (+4)").contains("3 of 4").contains("4 of 4");
  }

  @Test
  void intervals_told_with_another_share_are_not_counted_as_nine_in_ten() {
    MemoryFlightLog log = new MemoryFlightLog();
    Facts told =
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.PREDICTED_TOP, Length.ofFeet(500))
            .with(Flight.ALTITUDE, Length.ofFeet(510))
            .with(Flight.PREDICTED_TOP_LOW, Length.ofFeet(450))
            .with(Flight.PREDICTED_TOP_HIGH, Length.ofFeet(550));
    log.has(Kind.FLIGHT, told);
    log.has(Kind.FLIGHT, told.with(Flight.PREDICTED_SHARE, 0.8));

    assertThat(Desk.over(log).opening(LogScreen::open).press("g").frame(new Size(120, 40)))
        .contains("2 of 2", "what was told to hold 80 or 90 in 100.");
  }

  @Test
  void the_chart_shows_the_rocket_under_the_cursor() {
    desk.press("<down><tab>");
    Golden.holds("foretold-chart", desk.frame());
    Golden.holds("foretold-chart-60x20", desk.frame(new Size(60, 20)));
    assertThat(desk.frame()).contains("How good the predictions were · Heron").contains("×");
    assertThat(desk.press("<esc>").frame()).contains("Outcome");
  }
}
