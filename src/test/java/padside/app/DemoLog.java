package padside.app;

import padside.fact.Fault;
import padside.flight.MemoryFlightLog;

/** The made-up season in memory, for tests of other rooms. */
public final class DemoLog {
  private DemoLog() {}

  /** Writes it anew. */
  public static MemoryFlightLog written() {
    MemoryFlightLog log = new MemoryFlightLog();
    try {
      DemoSeason.write(log);
    } catch (Fault e) {
      throw new AssertionError("a log in memory cannot fail", e);
    }
    return log;
  }
}
