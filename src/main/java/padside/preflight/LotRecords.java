package padside.preflight;

import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.insight.Reliability;

/** How each lot of a log has done, as a card is told. */
public final class LotRecords {
  private final Logbook book;
  private final Reliability reliability;

  public LotRecords(Logbook book, OutcomeTable outcomes) {
    this.book = book;
    this.reliability = new Reliability(book, outcomes);
  }

  /** The log they are of. */
  Logbook book() {
    return book;
  }

  public Card.LotRecord of(Lot lot) {
    return new Card.LotRecord(lot.code(), reliability.of(lot));
  }
}
