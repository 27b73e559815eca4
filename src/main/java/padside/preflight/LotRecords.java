package padside.preflight;

import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.insight.Delays;
import padside.insight.Reliability;
import padside.motor.MotorStack;

/** How each lot of a log has done, as a card is told. */
public final class LotRecords {
  private final Logbook book;
  private final OutcomeTable outcomes;
  private final Reliability reliability;

  public LotRecords(Logbook book, OutcomeTable outcomes) {
    this.book = book;
    this.outcomes = outcomes;
    this.reliability = new Reliability(book, outcomes);
  }

  /** The log they are of. */
  Logbook book() {
    return book;
  }

  /** What its words for outcomes mean. */
  OutcomeTable outcomes() {
    return outcomes;
  }

  /** The delay that suits a rocket on some motors by its own flights. */
  Optional<Delays.Suits> suits(RecordId rocket, MotorStack motors) {
    return Delays.ofRocket(rocket, book).suits(rocket, motors);
  }

  public Card.LotRecord of(Lot lot) {
    return new Card.LotRecord(lot.code(), reliability.of(lot));
  }
}
