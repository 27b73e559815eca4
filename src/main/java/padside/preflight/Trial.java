package padside.preflight;

import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.physics.Prediction;
import padside.units.Speed;
import padside.units.TimeSpan;

/** A change made on a card, and what came of it. */
record Trial(Change change, Check.Checked checked) {
  Verdict verdict() {
    return checked.ruling().verdict();
  }

  double limitMps() {
    return checked.ruling().limit().map(Speed::metresPerSecond).orElse(0.0);
  }

  /** Whether it brings nothing advised against that the card does not have already. */
  boolean bringsNothingNew(Ruling before) {
    Set<String> amiss = amiss(before);
    return amiss(checked.ruling()).stream()
        .allMatch(rule -> amiss.contains(rule) || (rule.equals("lot") && change.marked()));
  }

  private static Set<String> amiss(Ruling ruling) {
    return ruling.findings().stream()
        .filter(finding -> finding.verdict() != Verdict.GO)
        .map(Ruling.Finding::rule)
        .collect(Collectors.toSet());
  }

  /** Whether anything but the wind forbids it. */
  boolean forbidden() {
    return checked.ruling().findings().stream()
        .anyMatch(finding -> finding.verdict() == Verdict.NO_GO);
  }

  /**
   * What keeps it from a verdict: findings, and limits that this wind is past or too near to.
   *
   * @param share of a limit that a wind keeps from it to be GO
   */
  Set<String> amiss(Verdict wanted, double testedMps, double share) {
    Set<String> amiss = new HashSet<>();
    Ruling ruling = checked.ruling();
    for (Ruling.Finding finding : ruling.findings()) {
      if (finding.verdict().compareTo(wanted) > 0) {
        amiss.add(finding.rule());
      }
    }
    for (Ruling.Limit limit : ruling.limits()) {
      double most = limit.wind().metresPerSecond();
      boolean near = wanted == Verdict.GO && testedMps > most * (1 - share);
      if (near || (testedMps > most && limit.past().compareTo(wanted) > 0)) {
        amiss.add("limit of " + limit.rule());
      }
    }
    return amiss;
  }

  Advice.Help help() {
    Ruling ruling = checked.ruling();
    Optional<Prediction> flight =
        checked.flown().map(Flown::prediction).filter(Prediction::leftRod);
    return new Advice.Help(
        change.words(),
        ruling.verdict(),
        ruling.limit(),
        binds(ruling),
        flight.map(Prediction::apogee),
        flight.flatMap(Trial::delayError));
  }

  private static Optional<TimeSpan> delayError(Prediction flight) {
    return flight
        .ejection()
        .map(charge -> new TimeSpan(charge.time().seconds() - flight.timeToApogee().seconds()));
  }

  private static String binds(Ruling ruling) {
    return ruling.limits().stream()
        .min(Comparator.comparingDouble(limit -> limit.wind().metresPerSecond()))
        .map(Ruling.Limit::words)
        .orElse("");
  }
}
