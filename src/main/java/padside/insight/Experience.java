package padside.insight;

import java.util.List;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.motor.MotorTable;

/** What lots and delays are judged by. */
public record Experience(List<Lot> lots, MotorTable motors, FlightLog.Past past) {
  /** Keeps its own list. */
  public Experience {
    lots = List.copyOf(lots);
  }

  /** Of all flights a reading of the log knows of. */
  public static Experience of(Logbook book) {
    return new Experience(book.lots(), book.motors(), book.past());
  }
}
