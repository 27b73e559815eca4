package padside.motor;

import java.util.OptionalDouble;

/**
 * A motor as bought: type and delay.
 *
 * @param delay one of the type's delays on sale: seconds, or {@link MotorType#PLUGGED}
 */
public record MotorChoice(MotorType type, String delay) {
  /** The designation as on the box: C6-5. */
  public String designation() {
    return type.withDelay(delay);
  }

  /** Seconds from burnout to ejection, empty when plugged. */
  public OptionalDouble delaySeconds() {
    return delay.equals(MotorType.PLUGGED)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(delay));
  }
}
