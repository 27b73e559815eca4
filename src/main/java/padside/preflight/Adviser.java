package padside.preflight;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.site.FieldShape;
import padside.units.UnitSystem;

/** Says what would help a card, or why it need not be looked for. */
record Adviser(Check check, UnitSystem units, BooleanSupplier abandoned) {
  /** What would help a card of that verdict. */
  Advice on(Card card, Ruling now) {
    if (now.verdict() == Verdict.GO) {
      return new Advice(List.of(), Optional.empty());
    }
    return pointless(card, now)
        .map(why -> new Advice(List.of(), Optional.of(why)))
        .orElseGet(() -> search(card, now).advice());
  }

  /** Why no change of rod, motor, recovery or time could help; absent when one could. */
  private Optional<String> pointless(Card card, Ruling now) {
    Optional<Fix> grounding =
        card.openFixes().stream()
            .filter(fix -> fix.severity() == Fix.Severity.GROUNDS_IT)
            .findFirst();
    if (grounding.isPresent()) {
      return Optional.of("Nothing but mending it: " + grounding.get().text() + ".");
    }
    if (card.day().flatMap(Day::fireBan).orElse(false)) {
      return Optional.of("Nothing while a fire ban is in force.");
    }
    return now.verdict() == Verdict.UNKNOWN || check.lacks(card)
        ? Optional.of("Enter what is missing first; then it is looked for.")
        : Optional.empty();
  }

  private HelpSearch search(Card card, Ruling now) {
    FieldShape field = card.field().flatMap(FieldShape::of).orElseThrow();
    return new HelpSearch(
        card,
        now,
        new Alternatives(card, check.mostTilt()),
        new Trials(check, card, field, abandoned),
        new Waiting(check, units, abandoned, card, now));
  }
}
