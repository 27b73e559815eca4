package padside.screen;

import java.util.Optional;
import padside.flight.Column;
import padside.flight.Facts;
import padside.flight.Flight;
import padside.preflight.Answer;
import padside.preflight.Outlook;

/** What of the check's answer is stored with a card; columns it has nothing for are emptied. */
final class CardAnswer {
  private CardAnswer() {}

  static Facts facts(Answer answer) {
    Optional<Outlook> outlook = answer.outlook();
    Facts facts =
        Facts.none()
            .with(Flight.VERDICT, answer.ruling().verdict())
            .with(Flight.REASON, answer.ruling().reason());
    facts = put(facts, Flight.LIMIT, answer.ruling().limit());
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
