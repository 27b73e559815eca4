package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.safety.RuleSets;
import padside.units.Speed;
import padside.units.UnitSystem;

/**
 * What the flier has set.
 *
 * @param units what a bare number means and results are shown in
 * @param ruleSet name of the safety code held to, such as {@code us-model}
 * @param ownLimit the flier's own largest wind for every rocket
 * @param rodDivisor rod-exit speed over wind below which the check warns; the house's when absent
 */
public record Settings(
    UnitSystem units, String ruleSet, Optional<Speed> ownLimit, Optional<Double> rodDivisor) {
  /** The safety codes one may hold to, by name. */
  public static List<String> ruleSets() {
    return RuleSets.names();
  }

  /** US customary units and the US model code. */
  public static Settings standard() {
    return new Settings(UnitSystem.US, "us-model", Optional.empty(), Optional.empty());
  }
}
