package padside.stranger;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;

/** Takes a clock from outside: nothing to object to. */
public final class HandedIn {
  private HandedIn() {}

  static Instant now(Clock clock) {
    return Instant.now(clock);
  }

  static LocalDate today(Clock clock) {
    return LocalDate.now(clock);
  }
}
