package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.insight.Confidence;
import padside.safety.OwnLimits;
import padside.safety.RuleSets;
import padside.units.UnitSystem;

/**
 * What the flier has set.
 *
 * @param units what a bare number means and results are shown in
 * @param ruleSet name of the safety code held to, such as {@code us-model}
 * @param own the flier's own limits for every rocket
 * @param rodDivisor rod-exit speed over wind below which the check warns; the house's when absent
 * @param confidence what intervals and areas of predictions hold
 * @param flier the flier's name
 */
public record Settings(
    UnitSystem units,
    String ruleSet,
    OwnLimits own,
    Optional<Double> rodDivisor,
    Confidence confidence,
    Optional<String> flier) {
  /** The safety codes one may hold to, by name. */
  public static List<String> ruleSets() {
    return RuleSets.names();
  }

  /** US customary units and the US model code. */
  public static Settings standard() {
    return new Settings(
        UnitSystem.US,
        "us-model",
        OwnLimits.none(),
        Optional.empty(),
        Confidence.usual(),
        Optional.empty());
  }

  /** The same in other units. */
  public Settings with(UnitSystem other) {
    return new Settings(other, ruleSet, own, rodDivisor, confidence, flier);
  }

  /** The same under another code. */
  public Settings withRuleSet(String other) {
    return new Settings(units, other, own, rodDivisor, confidence, flier);
  }

  /** The same with other limits. */
  public Settings with(OwnLimits other) {
    return new Settings(units, ruleSet, other, rodDivisor, confidence, flier);
  }

  /** The same with what is told holding more or less. */
  public Settings with(Confidence other) {
    return new Settings(units, ruleSet, own, rodDivisor, other, flier);
  }

  /** The same for a flier of that name. */
  public Settings withFlier(String name) {
    return new Settings(units, ruleSet, own, rodDivisor, confidence, Optional.of(name));
  }
}
