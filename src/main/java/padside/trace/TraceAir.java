package padside.trace;

import java.util.Optional;
import padside.physics.Air;
import padside.units.Length;
import padside.units.Temperature;

/**
 * What is known of the air over the field, absent where nobody read it.
 *
 * @param elevation of the field above the sea
 */
public record TraceAir(Optional<Temperature> temperature, Optional<Length> elevation) {
  public static TraceAir unknown() {
    return new TraceAir(Optional.empty(), Optional.empty());
  }

  /** What an altimeter fixed to the standard air takes the ground to be at. */
  Temperature standard() {
    return Air.standardTemperature(elevation.orElse(new Length(0)));
  }

  /** By which pressures become heights. */
  Temperature atGround() {
    return temperature.orElseGet(this::standard);
  }

  /**
   * The height that a height reckoned in standard air really is: air expands with its absolute
   * temperature.
   */
  Optional<Length> warmed(Length read) {
    return temperature.map(t -> new Length(read.metres() * t.kelvins() / standard().kelvins()));
  }

  /** The height a standard altimeter would have shown for this one. */
  Length asStandard(Length height) {
    return new Length(height.metres() * standard().kelvins() / atGround().kelvins());
  }
}
