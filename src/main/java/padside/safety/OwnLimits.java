package padside.safety;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import padside.units.Length;
import padside.units.Speed;

/**
 * Limits the flier sets beside those of code and house. They only ever narrow these: what is wider
 * than theirs changes nothing.
 *
 * @param wind the largest
 * @param ceiling the highest apogee above the pad
 * @param rodExit the least speed off the rod
 * @param thrustToWeight the least
 */
public record OwnLimits(
    Optional<Speed> wind,
    Optional<Length> ceiling,
    Optional<Speed> rodExit,
    Optional<Double> thrustToWeight) {
  private static final String SET = "set by the flier";

  /** None at all. */
  public static OwnLimits none() {
    return new OwnLimits(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The same with the lesser of two largest winds. */
  public OwnLimits withWind(Optional<Speed> other) {
    Optional<Speed> lesser =
        Stream.concat(wind.stream(), other.stream())
            .min(Comparator.comparingDouble(Speed::metresPerSecond));
    return new OwnLimits(lesser, ceiling, rodExit, thrustToWeight);
  }

  /** A value of the flier's own. */
  static <T> Sourced<T> sourced(T value) {
    return new Sourced<>(value, SET, Sourced.Status.OWN, "");
  }
}
