package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Ruling;
import padside.safety.Rules;

/**
 * What the check says to a card.
 *
 * @param headline one line: {@code GO 6 gusting 9 mph · limit 13 (field edge NE 280 ft)}
 * @param outlook the flight as predicted; absent while something it needs is missing
 * @param reminders what the code asks besides, the same for every card
 * @param advice what would help; absent until it was looked for, and when nothing needs to help
 */
public record Answer(
    Ruling ruling,
    String headline,
    Optional<Outlook> outlook,
    List<Reminder> reminders,
    Optional<Advice> advice) {
  /** Keeps its own list. */
  public Answer {
    reminders = List.copyOf(reminders);
  }

  /**
   * One thing the code asks that no number tells.
   *
   * @param source where it comes from and how sure that is
   */
  public record Reminder(String sentence, String source) {}

  /** The same answer with what would help. */
  public Answer with(Advice found) {
    return new Answer(ruling, headline, outlook, reminders, Optional.of(found));
  }

  /** Whether something done otherwise could make it better. */
  public boolean mayBeHelped() {
    return switch (ruling.verdict()) {
      case MARGINAL, NO_GO -> true;
      case GO, UNKNOWN -> false;
    };
  }

  /** Whether it has yet to be looked for what would help. */
  public boolean wantsAdvice() {
    return advice.isEmpty() && mayBeHelped();
  }

  /** How far people stand back, in words; absent while the motors are not known. */
  public Optional<String> standBack() {
    return ruling.findings().stream()
        .filter(finding -> finding.rule().equals(Rules.STAND_BACK))
        .map(Ruling.Finding::sentence)
        .findFirst();
  }

  private static final List<Column<?>> COLUMNS =
      List.of(
          Flight.VERDICT,
          Flight.REASON,
          Flight.LIMIT,
          Flight.PREDICTED_APOGEE,
          Flight.PREDICTED_BEST_DELAY,
          Flight.PREDICTED_DESCENT,
          Flight.PREDICTED_BEARING,
          Flight.PREDICTED_DISTANCE,
          Flight.PREDICTED_SPREAD_LONG,
          Flight.PREDICTED_SPREAD_SHORT,
          Flight.PREDICTED_SPREAD_ALONG,
          Flight.PREDICTED_EJECTION,
          Flight.PREDICTED_ALOFT,
          Flight.PREDICTED_TOP,
          Flight.PREDICTED_TOP_LOW,
          Flight.PREDICTED_TOP_HIGH,
          Flight.PREDICTED_DRAG,
          Flight.PREDICTED_SHARE);

  /** What of it is stored with the card; columns it has nothing for are emptied. */
  public Facts facts() {
    Facts facts =
        noFacts().with(Flight.VERDICT, ruling.verdict()).with(Flight.REASON, ruling.reason());
    Optional<Spread.Area> landing = outlook.flatMap(Outlook::spread).map(Spread::landingMost);
    return facts
        .with(Flight.LIMIT, ruling.limit())
        .with(Flight.PREDICTED_APOGEE, outlook.map(Outlook::apogee))
        .with(Flight.PREDICTED_BEST_DELAY, outlook.map(Outlook::bestDelay))
        .with(Flight.PREDICTED_DESCENT, outlook.flatMap(Outlook::descentRate))
        .with(
            Flight.PREDICTED_BEARING,
            outlook.filter(Outlook::bearingKnown).map(Outlook::landingBearing))
        .with(Flight.PREDICTED_DISTANCE, outlook.map(Outlook::landingDistance))
        .with(Flight.PREDICTED_SPREAD_LONG, landing.map(Spread.Area::longHalf))
        .with(Flight.PREDICTED_SPREAD_SHORT, landing.map(Spread.Area::shortHalf))
        .with(Flight.PREDICTED_SPREAD_ALONG, landing.map(Spread.Area::along))
        .with(
            Flight.PREDICTED_EJECTION,
            outlook.flatMap(Outlook::ejection).map(Outlook.Ejection::time))
        .with(Flight.PREDICTED_ALOFT, outlook.map(Outlook::flightTime))
        .with(Flight.PREDICTED_TOP, outlook.map(Outlook::top).map(Outlook.Top::height))
        .with(Flight.PREDICTED_TOP_LOW, outlook.map(Outlook::top).flatMap(Outlook.Top::low))
        .with(Flight.PREDICTED_TOP_HIGH, outlook.map(Outlook::top).flatMap(Outlook.Top::high))
        .with(Flight.PREDICTED_DRAG, outlook.map(Outlook::drag).map(DragUsed::coefficient))
        .with(
            Flight.PREDICTED_SHARE,
            outlook
                .filter(flight -> flight.top().low().isPresent())
                .map(flight -> flight.confidence().share()));
  }

  /** What a draft stores: no answer, whatever it was told before it changed. */
  public static Facts noFacts() {
    return Facts.emptied(COLUMNS);
  }
}
