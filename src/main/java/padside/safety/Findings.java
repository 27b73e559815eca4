package padside.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import padside.flight.Ruling.Finding;
import padside.flight.Ruling.Verdict;

/** Findings as they are gathered, in the few forms they come in. */
final class Findings {
  private final List<Finding> list = new ArrayList<>();

  List<Finding> list() {
    return List.copyOf(list);
  }

  void add(String rule, Verdict verdict, String sentence, String source) {
    list.add(new Finding(rule, verdict, sentence, source));
  }

  void add(Finding finding) {
    list.add(finding);
  }

  /** Something worth knowing that changes no verdict. */
  void told(String rule, String sentence, String source) {
    add(rule, Verdict.GO, sentence, source);
  }

  /** What the rule needs is missing. */
  void unknown(String rule, String sentence, String source) {
    add(rule, Verdict.UNKNOWN, sentence, source);
  }

  /** NO-GO when the value is over the most. */
  void atMost(String rule, double value, Sourced<Double> most, DoubleFunction<String> show) {
    double bound = most.value();
    add(
        rule,
        Bounds.over(value, bound) ? Verdict.NO_GO : Verdict.GO,
        rule + " " + Bounds.beside(value, bound, show) + ", at most " + show.apply(bound),
        most.cited());
  }

  /** Two bounds: past the outer one NO-GO, past the inner one MARGINAL. */
  record Floor(String rule, Sourced<Double> least, Sourced<Double> advised) {
    /** The same where nothing less than another value will do. */
    Floor raised(Optional<Sourced<Double>> other) {
      return new Floor(rule, raised(least, other), raised(advised, other));
    }

    private static Sourced<Double> raised(Sourced<Double> value, Optional<Sourced<Double>> to) {
      return to.filter(other -> other.value() > value.value()).orElse(value);
    }
  }

  /** NO-GO under the least, MARGINAL under the advised value. */
  void atLeast(Floor floor, Optional<Double> value, DoubleFunction<String> show) {
    if (value.isEmpty()) {
      unknown(floor.rule(), floor.rule() + " is not known", floor.advised().cited());
      return;
    }
    if (Bounds.under(value.get(), floor.least().value())) {
      double bound = floor.least().value();
      String found = floor.rule() + " " + Bounds.beside(value.get(), bound, show);
      String sentence = found + ", at least " + show.apply(bound);
      add(floor.rule(), Verdict.NO_GO, sentence, floor.least().cited());
      return;
    }
    double bound = floor.advised().value();
    add(
        floor.rule(),
        Bounds.under(value.get(), bound) ? Verdict.MARGINAL : Verdict.GO,
        "%s %s, %s advised"
            .formatted(floor.rule(), Bounds.beside(value.get(), bound, show), show.apply(bound)),
        floor.advised().cited());
  }
}
