package padside.preflight;

import java.util.List;
import java.util.Optional;

/**
 * The flight a card would make, or why that cannot be told.
 *
 * @param missing what is still missing, as nouns; the outlook is absent or lacks what depends on it
 * @param refused one sentence when the flight is impossible as entered
 */
public record Forecast(Optional<Outlook> outlook, List<String> missing, Optional<String> refused) {
  /** Keeps its own list. */
  public Forecast {
    missing = List.copyOf(missing);
  }
}
