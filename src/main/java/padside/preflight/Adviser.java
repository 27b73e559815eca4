package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.UnitSystem;

/** Looks for the smallest changes that make a card GO, or better than it is. */
final class Adviser {
  private static final int SHOWN = 5;

  /** A limit that rises by less is not worth the change; no source. */
  private static final double NOTICEABLY = 1.1;

  private final Check check;
  private final Card card;
  private final Ruling now;
  private final UnitSystem units;
  private final Trials trials;
  private final BooleanSupplier abandoned;

  Adviser(Check check, Card card, Ruling now, UnitSystem units, BooleanSupplier abandoned) {
    this.check = check;
    this.card = card;
    this.now = now;
    this.units = units;
    this.trials = new Trials(check, card, abandoned);
    this.abandoned = abandoned;
  }

  Advice advice() {
    if (now.verdict() == Verdict.GO) {
      return new Advice(List.of(), Optional.empty());
    }
    return pointless().map(Adviser::nothing).orElseGet(this::searched);
  }

  private static Advice nothing(String why) {
    return new Advice(List.of(), Optional.of(why));
  }

  /** Why no change of rod, motor, recovery or time could help; absent when one could. */
  private Optional<String> pointless() {
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

  private Advice searched() {
    Check.Checked asItIs = check.measured(card, abandoned);
    Waiting waiting = new Waiting(check, card, asItIs.flown().flatMap(Flown::field));
    Optional<Speed> calm = waiting.largest(Verdict.GO);
    Optional<Trial> wait = calm.flatMap(wind -> waiting.until(wind, units));
    if (fixedLimit().isPresent()) {
      return only(waiting, wait, calm);
    }
    Alternatives alternatives = new Alternatives(card, check.mostTilt());
    List<Trial> singles = trials.glance(alternatives.single());
    List<Trial> found = better(wait, singles, Verdict.GO);
    List<Trial> pairs = found.isEmpty() ? trials.glance(alternatives.pairs()) : List.of();
    if (found.isEmpty()) {
      found = better(Optional.empty(), pairs, Verdict.GO);
    }
    if (!found.isEmpty()) {
      return new Advice(helps(found), Optional.empty());
    }
    return lesser(waiting, calm, singles, pairs);
  }

  /** A limit in the wind that nothing on the card can raise and the wind is past. */
  private Optional<Ruling.Limit> fixedLimit() {
    double tested = testedMps();
    return now.limits().stream()
        .filter(limit -> limit.rule().equals("code") || limit.rule().equals("own"))
        .filter(limit -> limit.wind().metresPerSecond() < tested)
        .findFirst();
  }

  private Advice only(Waiting waiting, Optional<Trial> wait, Optional<Speed> calm) {
    if (wait.isPresent()) {
      return new Advice(helps(wait.stream().toList()), Optional.empty());
    }
    Ruling.Limit limit = fixedLimit().orElseThrow();
    String why =
        "Nothing but less wind: it is past the limit of %s (%s)%s."
            .formatted(
                Notations.windSpeed(units).showDown(limit.wind()), limit.words(), calm(calm));
    return new Advice(helps(bearable(waiting).stream().toList()), Optional.of(why));
  }

  private Optional<Trial> bearable(Waiting waiting) {
    return waiting.largest(Verdict.MARGINAL).flatMap(wind -> waiting.until(wind, units));
  }

  private List<Trial> better(Optional<Trial> wait, List<Trial> glanced, Verdict wanted) {
    Predicate<Trial> reaches = trial -> trial.verdict().compareTo(wanted) <= 0;
    List<Trial> found = new ArrayList<>(wait.filter(reaches).stream().toList());
    List<Trial> promising = glanced.stream().filter(reaches).toList();
    found.addAll(trials.confirmed(promising, reaches, SHOWN - found.size()));
    return found;
  }

  /** What makes it better, though not GO, without bringing anything advised against. */
  private Advice lesser(
      Waiting waiting, Optional<Speed> calm, List<Trial> singles, List<Trial> pairs) {
    List<Trial> found = List.of();
    if (now.verdict() == Verdict.NO_GO) {
      found = better(bearable(waiting), soundest(singles), Verdict.MARGINAL);
      if (found.isEmpty()) {
        found = better(Optional.empty(), soundest(pairs), Verdict.MARGINAL);
      }
    }
    if (found.isEmpty()) {
      found = raised(soundest(singles));
    }
    if (found.isEmpty()) {
      return nothing(none() + ": " + now.reason() + calm(calm) + ".");
    }
    String still = found.get(0).checked().ruling().reason();
    return new Advice(
        helps(found),
        Optional.of("Nothing looked at makes it GO; still " + still + calm(calm) + "."));
  }

  private String none() {
    return card.box().equals(Box.EMPTY)
        ? "No lean of the rod helps and there is no range box to choose from"
        : "Nothing looked at helps";
  }

  private List<Trial> soundest(List<Trial> glanced) {
    return glanced.stream().filter(trial -> trial.bringsNothingNew(now)).toList();
  }

  private List<Trial> raised(List<Trial> singles) {
    double limit = now.limit().map(Speed::metresPerSecond).orElse(0.0);
    double wanted = limit * NOTICEABLY;
    if (testedMps() <= limit * (1 - check.marginalShare())) {
      return List.of();
    }
    Predicate<Trial> higher =
        trial ->
            trial.limitMps() > wanted
                && !trial.forbidden()
                && trial.verdict().compareTo(now.verdict()) <= 0;
    return trials.confirmed(trials.raising(singles, wanted), higher, SHOWN).stream()
        .sorted((one, other) -> Change.compare(one.change(), other.change()))
        .toList();
  }

  private String calm(Optional<Speed> wind) {
    return wind.map(
            speed -> "; as it is, it is GO up to " + Notations.windSpeed(units).showDown(speed))
        .orElse("");
  }

  private static List<Advice.Help> helps(List<Trial> trials) {
    return trials.stream().map(Trial::help).toList();
  }

  private double testedMps() {
    return card.wind().orElseThrow().tested().metresPerSecond();
  }
}
