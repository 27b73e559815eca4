package padside.stranger;

import java.io.PrintStream;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import padside.units.Length;

/** Asks the outside world, imports a room and a library. */
public final class Asking {
  private Asking() {}

  static PrintStream stream() {
    return System.out;
  }

  static long ticks() {
    return System.nanoTime();
  }

  static Instant now() {
    return Instant.now();
  }

  static Clock clock() {
    return Clock.systemUTC();
  }

  static Optional<String> home() {
    return Optional.ofNullable(System.getenv("HOME"));
  }

  static Length rod() {
    return new Length(1);
  }
}
