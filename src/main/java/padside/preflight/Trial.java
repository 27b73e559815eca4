package padside.preflight;

import java.util.Comparator;
import java.util.Optional;
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

  /** Whether anything but the wind stands against it. */
  boolean forbidden() {
    return checked.ruling().findings().stream()
        .anyMatch(finding -> finding.verdict() == Verdict.NO_GO);
  }

  /** The largest wind by the rules alone, the field left out. */
  double limitOfRulesMps() {
    return checked.ruling().limits().stream()
        .filter(limit -> !limit.rule().equals("field"))
        .mapToDouble(limit -> limit.wind().metresPerSecond())
        .min()
        .orElse(Double.MAX_VALUE);
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
