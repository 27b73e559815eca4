package padside.app;

import java.time.LocalDate;
import padside.clock.LogClock;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.preflight.Settings;
import padside.report.PageSource;
import padside.screen.KeyCard;

/** What the pages of a log are made of on this machine. */
final class ReportSource {
  private ReportSource() {}

  static PageSource of(FlightLog log, Settings settings) throws Fault {
    ThisMachine machine = new ThisMachine();
    LocalDate today = machine.today(new LogClock(log.anchors(), log.newest()));
    return new PageSource(
        log,
        Shipped.motors(),
        Shipped.outcomes(),
        settings,
        machine.zone(),
        today,
        KeyCard.ofMainScreens());
  }
}
