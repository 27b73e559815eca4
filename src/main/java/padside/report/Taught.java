package padside.report;

import java.util.ArrayList;
import java.util.List;
import padside.fact.Column;
import padside.flight.Flight;
import padside.flight.FlightLog;

/** What flights say of motors and delays while they pass by: none of them is kept for long. */
final class Taught {
  static final List<Column<?>> WANTED =
      List.of(
          Flight.STATUS,
          Flight.ROCKET,
          Flight.MOTOR,
          Flight.LOT,
          Flight.BOOSTER_LOT,
          Flight.BURN,
          Flight.EJECTION,
          Flight.MEASURED_DELAY,
          Flight.PREDICTED_BEST_DELAY);

  /** So many are counted at once; putting counts together costs more than counting. */
  private static final int AT_ONCE = 5000;

  private final List<Flight> waiting = new ArrayList<>();
  private FlightLog.Past past = FlightLog.Past.of(List.of(), true);

  void take(Flight flight) {
    waiting.add(flight);
    if (waiting.size() == AT_ONCE) {
      count();
    }
  }

  private void count() {
    past = past.and(FlightLog.Past.of(waiting, true));
    waiting.clear();
  }

  /** Of all that were taken. */
  FlightLog.Past past() {
    count();
    return past;
  }
}
