package padside.store;

import java.nio.file.Path;
import padside.fact.Fault;

/** A program that makes a log of so many flights, every field filled, to measure with. */
public final class MadeLog {
  private MadeLog() {}

  /** Named: the folder, which is made, and how many flights. */
  public static void main(String[] args) throws Fault {
    try (LogFolder log = LogFolder.openToFill(Path.of(args[0]), new PretendMachine(1))) {
      SeasonOfFlights.save(log, Integer.parseInt(args[1]));
    }
  }
}
