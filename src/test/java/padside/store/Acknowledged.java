package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padside.fact.Facts.Cell;
import padside.fact.RecordId;
import padside.flight.FlightLog.Stored;

/** The saves a {@link SavingProgram} said were kept: the last count of each record. */
final class Acknowledged {
  private final Map<RecordId, Long> counts = new HashMap<>();

  /** A line {@code ID COUNT}. */
  void note(String line) {
    int blank = line.indexOf(' ');
    counts.put(new RecordId(line.substring(0, blank)), Long.parseLong(line.substring(blank + 1)));
  }

  /** How many records there are. */
  int records() {
    return counts.size();
  }

  /** Records whose last acknowledged save, or one after it, is not there. */
  long lost(List<Stored> days) {
    Map<RecordId, Long> kept = new HashMap<>();
    days.forEach(day -> kept.put(day.id(), count(day)));
    return counts.entrySet().stream()
        .filter(each -> kept.getOrDefault(each.getKey(), -1L) < each.getValue())
        .count();
  }

  /** A save that was under way may have been kept without being acknowledged; none is half. */
  void areIn(List<Stored> days, String when) {
    Map<RecordId, Stored> kept = new HashMap<>();
    days.forEach(day -> kept.put(day.id(), day));
    counts.forEach(
        (id, count) -> {
          assertThat(kept).as("%s: %s, acknowledged at %d", when, id, count).containsKey(id);
          assertThat(count(kept.get(id))).as("%s: %s", when, id).isBetween(count, count + 1);
        });
    areWhole(days, when);
  }

  /** The note and its twin were always saved together. */
  static void areWhole(List<Stored> days, String when) {
    assertThat(days)
        .as(when)
        .allSatisfy(
            day ->
                assertThat(day.facts().cells())
                    .containsEntry("note", Cell.of(count(day), "typed " + count(day)))
                    .containsEntry("twin", Cell.of(count(day))));
  }

  private static Long count(Stored day) {
    return (Long) day.facts().cells().get("note").value().orElseThrow();
  }
}
