package padside.sync;

import java.util.Random;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;

/** A day of ten flights as a log sees it: every field a line of its own. */
public final class TypedDay {
  /** How many lines it has. */
  public static final int LINES = 10 * 41;

  private TypedDay() {}

  /** Types it into a log. */
  public static void into(FlightLog log) throws Fault {
    Random random = new Random(4);
    for (int flight = 0; flight < 10; flight++) {
      RecordId card = log.save(Action.create("new card", Kind.FLIGHT, Facts.none())).get(0);
      for (int field = 0; field < 40; field++) {
        Facts typed = Facts.none().with(Flight.NOTE, "words typed " + random.nextInt());
        log.save(Action.change("keep card", Kind.FLIGHT, card, typed));
      }
    }
  }
}
