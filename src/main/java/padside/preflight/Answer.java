package padside.preflight;

import java.util.Optional;
import padside.flight.Column;
import padside.flight.Facts;
import padside.flight.Flight;
import padside.flight.Ruling;

/**
 * What the check says to a card.
 *
 * @param headline one line: {@code GO 6 gusting 9 mph · limit 13 (field edge NE 280 ft)}
 * @param outlook the flight as predicted; absent while something it needs is missing
 */
public record Answer(Ruling ruling, String headline, Optional<Outlook> outlook) {
  /** What of it is stored with the card; columns it has nothing for are emptied. */
  public Facts facts() {
    Facts facts =
        Facts.none().with(Flight.VERDICT, ruling.verdict()).with(Flight.REASON, ruling.reason());
    facts = put(facts, Flight.LIMIT, ruling.limit());
    facts = put(facts, Flight.PREDICTED_APOGEE, outlook.map(Outlook::apogee));
    facts = put(facts, Flight.PREDICTED_BEST_DELAY, outlook.map(Outlook::bestDelay));
    facts = put(facts, Flight.PREDICTED_DESCENT, outlook.flatMap(Outlook::descentRate));
    facts = put(facts, Flight.PREDICTED_BEARING, outlook.map(Outlook::landingBearing));
    return put(facts, Flight.PREDICTED_DISTANCE, outlook.map(Outlook::landingDistance));
  }

  private static <T> Facts put(Facts facts, Column<T> column, Optional<T> value) {
    return value
        .map(present -> facts.with(column, present))
        .orElse(facts.with(column.name(), Facts.Cell.emptied()));
  }
}
