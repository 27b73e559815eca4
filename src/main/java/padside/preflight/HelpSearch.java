package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.units.Speed;

/**
 * Looks for the smallest changes that make a card GO: waiting and single changes, then pairs. Where
 * none does, for what makes it better, then for what raises its limit.
 *
 * @param card nothing is missing on it
 * @param now what the check says to it
 */
record HelpSearch(
    Card card, Ruling now, Alternatives alternatives, Trials trials, Waiting waiting) {
  private static final int SHOWN = 5;

  /** A limit that rises by less is not worth the change; no source. */
  private static final double NOTICEABLY = 1.1;

  Advice advice() {
    if (fixedLimit().isPresent()) {
      return onlyLessWind(fixedLimit().get());
    }
    List<Trial> found = better(alternatives.single(), waiting.until(Verdict.GO), Verdict.GO);
    if (found.isEmpty()) {
      found = better(alternatives.pairs(), Optional.empty(), Verdict.GO);
    }
    return found.isEmpty() ? lesser() : new Advice(helps(found), Optional.empty());
  }

  /** A limit that nothing on the card can raise and the wind is past. */
  private Optional<Ruling.Limit> fixedLimit() {
    return now.limits().stream()
        .filter(limit -> limit.rule().equals("code") || limit.rule().equals("own"))
        .filter(limit -> limit.wind().metresPerSecond() < testedMps())
        .findFirst();
  }

  private Advice onlyLessWind(Ruling.Limit limit) {
    Optional<Trial> wait = waiting.until(Verdict.GO);
    if (wait.isPresent()) {
      return new Advice(helps(List.of(wait.get())), Optional.empty());
    }
    String why =
        "Nothing but less wind: it is past the limit of "
            + waiting.shown(limit.wind())
            + " ("
            + limit.words()
            + ")";
    return new Advice(helps(waiting.until(Verdict.MARGINAL).stream().toList()), sentence(why));
  }

  private List<Trial> better(List<Change> changes, Optional<Trial> wait, Verdict wanted) {
    Predicate<Trial> reaches =
        trial ->
            trial.verdict().compareTo(wanted) <= 0
                && (trial.verdict() == Verdict.GO || trial.bringsNothingNew(now));
    List<Trial> found = new ArrayList<>(wait.stream().toList());
    List<Trial> promising = trials.promising(changes, wanted).stream().filter(reaches).toList();
    found.addAll(trials.confirmed(promising, reaches, SHOWN - found.size()));
    return found;
  }

  /** What makes it better, though not GO, without bringing anything advised against. */
  private Advice lesser() {
    List<Trial> found = List.of();
    if (now.verdict() == Verdict.NO_GO) {
      found = better(alternatives.single(), waiting.until(Verdict.MARGINAL), Verdict.MARGINAL);
      if (found.isEmpty()) {
        found = better(alternatives.pairs(), Optional.empty(), Verdict.MARGINAL);
      }
    }
    if (found.isEmpty()) {
      found = raised();
    }
    if (found.isEmpty()) {
      return new Advice(List.of(), sentence(none() + ": " + now.reason()));
    }
    String still = found.get(0).checked().ruling().reason();
    return new Advice(helps(found), sentence("Nothing looked at makes it GO; still " + still));
  }

  private String none() {
    return card.box().equals(Box.EMPTY)
        ? "No lean of the rod helps and there is no range box to choose from"
        : "Nothing looked at helps";
  }

  private List<Trial> raised() {
    if (!waiting.windMatters()) {
      return List.of();
    }
    double wanted = NOTICEABLY * now.limit().map(Speed::metresPerSecond).orElse(0.0);
    Predicate<Trial> higher =
        trial ->
            trial.limitMps() > wanted
                && trial.bringsNothingNew(now)
                && trial.verdict().compareTo(now.verdict()) <= 0;
    List<Trial> promising =
        trials.raising(alternatives.single(), wanted).stream().filter(higher).toList();
    return trials.confirmed(promising, higher, SHOWN).stream()
        .sorted((one, other) -> Change.compare(one.change(), other.change()))
        .toList();
  }

  /** Ended with the wind in which the card as it is would be GO. */
  private Optional<String> sentence(String start) {
    String calm =
        waiting
            .largest(Verdict.GO)
            .map(wind -> "; as it is, it is GO up to " + waiting.shown(wind))
            .orElse("");
    return Optional.of(start + calm + ".");
  }

  private static List<Advice.Help> helps(List<Trial> trials) {
    return trials.stream().map(Trial::help).toList();
  }

  private double testedMps() {
    return card.wind().orElseThrow().tested().metresPerSecond();
  }
}
