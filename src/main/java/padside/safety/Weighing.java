package padside.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.flight.Ruling.Finding;
import padside.flight.Ruling.Limit;
import padside.flight.Ruling.Verdict;
import padside.units.Speed;
import padside.units.Wind;

/** The worst of limits and findings, and which of them it was: limits come before findings. */
record Weighing(WindLimits winds, Optional<Wind> wind, List<Limit> limits, List<Finding> findings) {

  Verdict verdict() {
    return Stream.concat(limits.stream().map(this::of), findings.stream().map(Finding::verdict))
        .reduce(Verdict.GO, Verdict::or);
  }

  /** The largest wind of all. */
  Optional<Speed> least() {
    return least(limits.stream()).map(Limit::wind);
  }

  /** What makes the verdict what it is; the least limit when all is well. */
  String reason(Verdict verdict) {
    return least(limits.stream().filter(limit -> of(limit) == verdict))
        .map(limit -> words(limit, verdict))
        .or(() -> worst(verdict).map(Finding::sentence))
        .orElse("no limit is known");
  }

  private Optional<Finding> worst(Verdict verdict) {
    return findings.stream().filter(finding -> finding.verdict() == verdict).findFirst();
  }

  private String words(Limit limit, Verdict verdict) {
    boolean passed = wind.map(each -> winds.passes(each, limit)).orElse(false);
    boolean near = verdict == Verdict.MARGINAL && !passed;
    return (near ? "near limit " : "limit ") + winds.shown(limit);
  }

  /** A limit by itself where no wind is known. */
  private Verdict of(Limit limit) {
    return wind.map(each -> winds.verdict(each, limit)).orElse(Verdict.GO);
  }

  private static Optional<Limit> least(Stream<Limit> limits) {
    return limits.min(Comparator.comparingDouble(limit -> limit.wind().metresPerSecond()));
  }
}
