package padside.safety;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;

/** The rules beside the codes, from {@code data/rules/house.json}: all of them are needed. */
public final class HouseRules {
  private static final Set<Figure> NEEDED =
      EnumSet.range(Figure.LEAST_THRUST_TO_WEIGHT, Figure.ADVISED_LANDING_MPS);

  private final Map<Figure, Sourced<Double>> figures = new EnumMap<>(Figure.class);

  HouseRules(RuleSet rules) {
    for (Figure figure : NEEDED) {
      figures.put(figure, rules.needed(figure));
    }
  }

  private HouseRules(Map<Figure, Sourced<Double>> figures) {
    this.figures.putAll(figures);
  }

  /**
   * The same with the flier's own divisor of the rod rule.
   *
   * @param divisor rod-exit speed over wind below which the check warns
   */
  public HouseRules withRodDivisor(double divisor) {
    if (!(divisor > 0)) {
      throw new IllegalArgumentException("a divisor is above 0: " + divisor);
    }
    Sourced<Double> own = new Sourced<>(divisor, "", Sourced.Status.COMMON_PRACTICE, "set by you");
    HouseRules changed = new HouseRules(figures);
    changed.figures.put(Figure.ADVISED_ROD_DIVISOR, own);
    if (divisor < figures.get(Figure.LEAST_ROD_DIVISOR).value()) {
      changed.figures.put(Figure.LEAST_ROD_DIVISOR, own);
    }
    return changed;
  }

  double amount(Figure figure) {
    return sourced(figure).value();
  }

  Sourced<Double> sourced(Figure figure) {
    return Optional.ofNullable(figures.get(figure)).orElseThrow();
  }

  <T> Sourced<T> sourced(Figure figure, DoubleFunction<T> of) {
    return sourced(figure).map(of::apply);
  }
}
