package padside.safety;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import padside.units.Speed;

/** The rules beside the codes, from {@code data/rules/house.json}: all of them are needed. */
public final class HouseRules {
  private static final Set<Figure> NEEDED =
      EnumSet.range(Figure.LEAST_THRUST_TO_WEIGHT, Figure.COLD_BELOW_K);

  private static final Set<Caution.Topic> SPOKEN_OF =
      EnumSet.of(
          Caution.Topic.CLUSTERS, Caution.Topic.STAGES, Caution.Topic.IGNITION, Caution.Topic.COLD);

  private final Map<Figure, Sourced<Double>> figures = new EnumMap<>(Figure.class);
  private final List<Caution> cautions;

  HouseRules(RuleSet rules) {
    cautions = rules.cautions();
    for (Caution.Topic topic : SPOKEN_OF) {
      if (about(topic).isEmpty()) {
        throw new IllegalStateException("house rules lack a caution about " + topic.words());
      }
    }
    for (Figure figure : NEEDED) {
      figures.put(figure, rules.needed(figure));
    }
  }

  private HouseRules(HouseRules other) {
    this.figures.putAll(other.figures);
    this.cautions = other.cautions;
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
    Sourced<Double> own = OwnLimits.sourced(divisor);
    HouseRules changed = new HouseRules(this);
    changed.figures.put(Figure.ADVISED_ROD_DIVISOR, own);
    if (divisor < figures.get(Figure.LEAST_ROD_DIVISOR).value()) {
      changed.figures.put(Figure.LEAST_ROD_DIVISOR, own);
    }
    return changed;
  }

  /** The share of scattered landings that has to lie inside the field, from 0 to 1. */
  public double landingsInsideShare() {
    return amount(Figure.LANDINGS_INSIDE_SHARE);
  }

  /** The share of a limit that is kept from it: a wind closer to it is marginal, from 0 to 1. */
  public double marginalShare() {
    return amount(Figure.MARGINAL_SHARE);
  }

  /** The fastest through the air that an ejection charge is advised to fire at. */
  public Speed advisedEjectionAirspeed() {
    return new Speed(amount(Figure.ADVISED_EJECTION_AIRSPEED_MPS));
  }

  /** What the house says about a topic in words. */
  List<Sourced<String>> about(Caution.Topic topic) {
    return cautions.stream()
        .filter(caution -> caution.about() == topic)
        .map(Caution::text)
        .toList();
  }

  /** The source of what the house says first about a topic. */
  String cited(Caution.Topic topic) {
    return about(topic).get(0).cited();
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
