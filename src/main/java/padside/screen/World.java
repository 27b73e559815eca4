package padside.screen;

import java.time.Instant;
import java.time.ZoneId;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.preflight.Settings;

/**
 * All that screens know of the outside at one moment.
 *
 * @param now the machine's clock
 * @param log the log as last read
 * @param braille whether the terminal shows the Unicode braille patterns
 * @param turn counts the keys pressed, so that every screen opened can have a number of its own
 */
public record World(
    Instant now,
    ZoneId zone,
    Settings settings,
    Logbook log,
    OutcomeTable outcomes,
    boolean braille,
    long turn) {
  World with(Logbook newer) {
    return new World(now, zone, settings, newer, outcomes, braille, turn);
  }

  World at(Instant later) {
    return new World(later, zone, settings, log, outcomes, braille, turn);
  }

  World next(Instant later) {
    return new World(later, zone, settings, log, outcomes, braille, turn + 1);
  }
}
