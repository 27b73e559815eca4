package padside.preflight;

import java.util.HashMap;
import java.util.Map;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;

/**
 * How each lot of a log has done. Malfunctions are looked for in the flights the logbook holds,
 * which are the newest.
 */
final class LotRecords {
  private final Logbook book;
  private final Map<RecordId, Integer> malfunctioned = new HashMap<>();

  LotRecords(Logbook book, OutcomeTable outcomes) {
    this.book = book;
    book.flights().stream()
        .filter(flight -> outcomes.isMalfunction(Flight.BURN.name(), flight.facts()))
        .flatMap(flight -> flight.fired().keySet().stream())
        .forEach(lot -> malfunctioned.merge(lot, 1, Integer::sum));
  }

  Card.LotRecord of(Lot lot) {
    return new Card.LotRecord(
        lot.code(),
        book.firedByLot().getOrDefault(lot.id(), 0),
        malfunctioned.getOrDefault(lot.id(), 0));
  }
}
