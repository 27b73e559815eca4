package padside.preflight;

import java.util.Optional;
import padside.safety.RuleSet;
import padside.safety.RuleSets;
import padside.safety.Sourced;
import padside.units.TimeSpan;

/**
 * What is counted and waited at the pad under a safety code.
 *
 * @param count how long the count takes
 * @param misfire how long nobody goes near after a misfire
 * @param source where that comes from and how sure it is
 */
public record PadTimes(TimeSpan count, TimeSpan misfire, String source) {
  /** The US high-power code asks for five seconds, seen; other codes name no length. */
  private static final TimeSpan USUAL_COUNT = new TimeSpan(5);

  /** The code whose wait stands in where another names none. */
  private static final String USUAL_CODE = "us-model";

  /** Under the code the flier has set; the usual ones where it is silent or not known. */
  public static PadTimes of(Settings settings) {
    Optional<RuleSet> code = RuleSets.find(settings.ruleSet()).value();
    Optional<Sourced<TimeSpan>> own = code.flatMap(RuleSet::misfireWait);
    Sourced<TimeSpan> usual =
        RuleSets.find(USUAL_CODE).value().flatMap(RuleSet::misfireWait).orElseThrow();
    return new PadTimes(
        code.flatMap(RuleSet::countdown).map(Sourced::value).orElse(USUAL_COUNT),
        own.orElse(usual).value(),
        own.map(Sourced::cited)
            .orElseGet(() -> usual.cited() + "; your own code's wait is not known here"));
  }
}
