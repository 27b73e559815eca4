package padside.report;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.FlightLog;

/** What flights say of motors and delays while they pass by: none of them is kept. */
final class Taught {
  static final List<Column<?>> ALIKE =
      List.of(
          Flight.STATUS,
          Flight.ROCKET,
          Flight.MOTOR,
          Flight.LOT,
          Flight.BOOSTER_LOT,
          Flight.BURN,
          Flight.EJECTION);

  static final List<Column<?>> OWN = List.of(Flight.MEASURED_DELAY, Flight.PREDICTED_BEST_DELAY);

  /** More would fill the memory where no two flights are alike. */
  private static final int MOST = 1000;

  private final FlightLog.Gathering past = FlightLog.Past.gathering();
  private final IdentityHashMap<Facts, FlightLog.Told> waiting = new IdentityHashMap<>();

  /** These columns beside others. */
  static List<Column<?>> and(List<Column<?>> some, List<Column<?>> more) {
    return Stream.concat(some.stream(), more.stream()).distinct().toList();
  }

  /** Takes a flight that was flown. */
  void take(FlightLog.Passing flight) {
    if (waiting.size() == MOST) {
      count();
    }
    FlightLog.Told told = FlightLog.Told.of(flight.own());
    FlightLog.Told before = waiting.get(flight.alike());
    waiting.put(flight.alike(), before == null ? told : before.and(told));
  }

  private void count() {
    waiting.forEach(past::take);
    waiting.clear();
  }

  /** Of all that were taken. */
  FlightLog.Past past() {
    count();
    return past.past();
  }
}
