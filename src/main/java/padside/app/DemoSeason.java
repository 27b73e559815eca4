package padside.app;

import padside.flight.Fault;
import padside.flight.FlightLog;

final class DemoSeason {
  private DemoSeason() {}

  static void write(FlightLog log) throws Fault {}
}
