package padside.safety;

import java.math.BigDecimal;
import java.math.RoundingMode;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.UnitSystem;

/** How this room's sentences write quantities. */
record Shown(UnitSystem system) {
  String mass(Mass mass) {
    return Notations.mass(system).show(mass);
  }

  String temperature(Temperature temperature) {
    return Notations.temperature(system).show(temperature);
  }

  String distance(Length distance) {
    return Notations.distance(system).show(distance);
  }

  String altitude(Length altitude) {
    return Notations.altitude(system).show(altitude);
  }

  String flightSpeed(Speed speed) {
    return Notations.flightSpeed(system).show(speed);
  }

  String descent(Speed speed) {
    return Notations.descentRate(system).show(speed);
  }

  /** A largest wind, never rounded up. */
  String limit(Speed wind) {
    return Notations.windSpeed(system).showDown(wind);
  }

  /** A plain number with one decimal at most, rounded down: a ratio must not look better. */
  static String ratio(double ratio) {
    return BigDecimal.valueOf(ratio + 1e-9)
        .setScale(1, RoundingMode.DOWN)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** A share from 0 to 1 as {@code 90 %}, to a tenth at most. */
  static String percent(double share) {
    return BigDecimal.valueOf(100 * share)
            .setScale(1, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " %";
  }
}
