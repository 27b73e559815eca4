package padside.preflight;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;

/**
 * How each lot of a log has done. Malfunctions are looked for in the flights the logbook holds,
 * which are the newest.
 */
public final class LotRecords {
  private final Logbook book;
  private final OutcomeTable outcomes;
  private final Map<RecordId, Integer> malfunctioned = new HashMap<>();

  public LotRecords(Logbook book, OutcomeTable outcomes) {
    this.book = book;
    this.outcomes = outcomes;
    Predicate<Facts> malfunction = outcomes.malfunction(Flight.BURN.name());
    book.flights().stream()
        .filter(flight -> malfunction.test(flight.facts()))
        .flatMap(flight -> flight.fired().keySet().stream())
        .forEach(lot -> malfunctioned.merge(lot, 1, Integer::sum));
  }

  /** The log they are of. */
  Logbook book() {
    return book;
  }

  /** What its words for outcomes mean. */
  OutcomeTable outcomes() {
    return outcomes;
  }

  public Card.LotRecord of(Lot lot) {
    return new Card.LotRecord(
        lot.code(),
        book.firedByLot().getOrDefault(lot.id(), 0),
        malfunctioned.getOrDefault(lot.id(), 0));
  }
}
