package padside.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.motor.MotorChoice;
import padside.motor.MotorText;

/**
 * The motors in the range box while one flight after the other takes its own: from the lot it
 * names, and where that runs out from the others of the same designation. A lot that was never
 * counted never runs out.
 */
final class Supply {
  private final Logbook book;
  private final Map<RecordId, Integer> left = new HashMap<>();

  Supply(Logbook book) {
    this.book = book;
    book.lots().forEach(lot -> book.left(lot).ifPresent(count -> left.put(lot.id(), count)));
  }

  /** The motors of a flight, stage by stage from the ground up. */
  List<Taken> take(Flight flight) {
    List<Taken> taken = new ArrayList<>();
    List<MotorText.Part> parts =
        flight.motor().map(motor -> MotorText.of(motor).parts()).orElse(List.of());
    for (int i = 0; i < parts.size(); i++) {
      boolean top = i == parts.size() - 1;
      Optional<RecordId> lot = top ? flight.lot() : i == 0 ? flight.boosterLot() : Optional.empty();
      taken.add(take(parts.get(i), lot.flatMap(book::lot)));
    }
    return taken;
  }

  private Taken take(MotorText.Part part, Optional<Lot> named) {
    String motor = designation(part.motor());
    List<Taken.Draw> draws = new ArrayList<>();
    int wanted = part.count();
    for (Lot lot : lotsOf(motor, named)) {
      int some = Math.min(wanted, Math.max(0, left.getOrDefault(lot.id(), wanted)));
      if (some > 0) {
        draws.add(new Taken.Draw(lot, some));
        left.computeIfPresent(lot.id(), (id, count) -> count - some);
        wanted -= some;
      }
    }
    // Who keeps no lots at all does not count motors, and is not told that all are missing.
    return new Taken(motor, part.count(), named, draws, book.lots().isEmpty() ? 0 : wanted);
  }

  private List<Lot> lotsOf(String motor, Optional<Lot> named) {
    return book.lots().stream()
        .filter(lot -> designation(lot.motor()).equals(motor))
        .sorted(Comparator.comparing(lot -> !named.equals(Optional.of(lot))))
        .toList();
  }

  private String designation(String typed) {
    return book.motors().choose(typed).value().map(MotorChoice::designation).orElse(typed);
  }
}
