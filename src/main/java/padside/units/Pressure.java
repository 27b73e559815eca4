package padside.units;

/**
 * An absolute pressure in pascals; at the field it is station pressure, never reduced to sea level.
 */
public record Pressure(double pascals) {
  /** Refuses what is not a finite number. */
  public Pressure {
    Finite.require(pascals, "pascals");
  }

  /** Exact: SI prefix; the millibar is the same. */
  public static Pressure ofHectopascals(double hectopascals) {
    return new Pressure(hectopascals * 100.0);
  }

  /** Exact: SI prefix; the millibar is the same. */
  public double inHectopascals() {
    return pascals / 100.0;
  }

  /** Exact: SI prefix. */
  public static Pressure ofKilopascals(double kilopascals) {
    return new Pressure(kilopascals * 1000.0);
  }

  /** Exact: SI prefix. */
  public double inKilopascals() {
    return pascals / 1000.0;
  }

  /** Conventional inch of mercury at 0 °C (NIST SP 811). */
  public static Pressure ofInchesOfMercury(double inHg) {
    return new Pressure(inHg * 3386.389);
  }

  /** Conventional inch of mercury at 0 °C (NIST SP 811). */
  public double inInchesOfMercury() {
    return pascals / 3386.389;
  }
}
