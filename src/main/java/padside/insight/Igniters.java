package padside.insight;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import padside.flight.Attempt;
import padside.flight.Logbook;

/**
 * How often the key was pressed in vain, by kind of igniter as typed. The log does not tell which
 * igniter lit a motor, so what lit is known of all kinds together only.
 *
 * @param tries tries that failed beside all: one for each flight, one for each misfire
 */
public record Igniters(Failures tries, List<Kind> kinds) {
  /** Words of the outcome table: what was the igniter's own doing. */
  private static final Set<String> OWN = Set.of("igniter_burnt", "igniter_out", "igniter_dead");

  /**
   * Misfires on one kind of igniter.
   *
   * @param name as typed first; empty where none was told
   * @param misfires on it
   * @param own those whose cause was the igniter, not the clips or the current
   */
  public record Kind(String name, int misfires, int own) {
    /** In words: {@code own copper: 3 misfires, 2 by the igniter itself}. */
    public String words() {
      String kind = name.isEmpty() ? "kind not told" : name;
      return "%s: %d misfire%s, %s by the igniter itself"
          .formatted(kind, misfires, misfires == 1 ? "" : "s", own == 0 ? "none" : "" + own);
    }
  }

  /** Keeps its own list. */
  public Igniters {
    kinds = List.copyOf(kinds);
  }

  /** Of all flights and misfires the reading of the log knows of. */
  public static Igniters of(Logbook book) {
    Map<String, Kind> kinds = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    for (Attempt attempt : book.attempts()) {
      String name = attempt.facts().get(Attempt.IGNITER).map(String::strip).orElse("");
      int own = attempt.facts().get(Attempt.CAUSE).filter(OWN::contains).isPresent() ? 1 : 0;
      kinds.merge(
          name,
          new Kind(name, 1, own),
          (one, more) -> new Kind(one.name, one.misfires + 1, one.own + more.own));
    }
    int misfires = book.attempts().size();
    int flights = book.past().burns().values().stream().mapToInt(Integer::intValue).sum();
    return new Igniters(new Failures(misfires, flights + misfires), List.copyOf(kinds.values()));
  }
}
