package padside.screen;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.flight.Operation;

/** Makes conflicts in a log in memory, as two machines would that had not heard of each other. */
record Contested(MemoryFlightLog log, Kind kind, RecordId record) {
  private static final Instant MORNING = Desk.MORNING.minus(Duration.ofHours(1));

  /** One side's cells, the last side's those that show. */
  Contested says(List<Facts> sides) {
    Facts shown = log.facts(kind, record).with(sides.get(sides.size() - 1));
    for (String field : sides.get(0).cells().keySet()) {
      List<FlightLog.Head> heads = new ArrayList<>();
      for (int i = 0; i < sides.size(); i++) {
        heads.add(head(field, sides.get(i).cells().get(field), i));
      }
      log.contest(new FlightLog.Conflict(kind, record, shown, field, heads));
    }
    return this;
  }

  /** Removed on the first machine, while the second changed something. */
  void removedAnd(Facts changed) {
    List<FlightLog.Head> heads = new ArrayList<>();
    heads.add(head(Kind.REMOVED.name(), Facts.Cell.of(true), 0));
    changed.cells().forEach((field, cell) -> heads.add(head(field, cell, 1)));
    log.contest(
        new FlightLog.Conflict(
            kind, record, log.facts(kind, record).with(changed), Kind.REMOVED.name(), heads));
  }

  private static FlightLog.Head head(String field, Facts.Cell cell, int machine) {
    String label = List.of("pad laptop", "desktop", "old laptop").get(machine);
    Operation done =
        new Operation(
            new RecordId(label + "." + field),
            "change",
            MORNING.plus(Duration.ofMinutes(7L * machine)),
            machine != 1,
            label,
            List.of());
    return new FlightLog.Head(field, cell, done, "device " + machine);
  }
}
