package padside.units;

/** A speed in metres per second. */
public record Speed(double metresPerSecond) {
  /** Refuses what is not a finite number. */
  public Speed {
    Finite.require(metresPerSecond, "metres per second");
  }

  /** Exact: 1609.344 m / 3600 s. */
  public static Speed ofMph(double mph) {
    return new Speed(mph * 0.44704);
  }

  /** Exact: 1609.344 m / 3600 s. */
  public double inMph() {
    return metresPerSecond / 0.44704;
  }

  /** Exact: international nautical mile of 1852 m an hour. */
  public static Speed ofKnots(double knots) {
    return new Speed(knots * 1852.0 / 3600.0);
  }

  /** Exact: international nautical mile of 1852 m an hour. */
  public double inKnots() {
    return metresPerSecond * 3600.0 / 1852.0;
  }

  /** Exact: 1000 m / 3600 s. */
  public static Speed ofKilometresPerHour(double kmh) {
    return new Speed(kmh / 3.6);
  }

  /** Exact: 1000 m / 3600 s. */
  public double inKilometresPerHour() {
    return metresPerSecond * 3.6;
  }

  /** Exact: international foot, 1959. */
  public static Speed ofFeetPerSecond(double fps) {
    return new Speed(fps * 0.3048);
  }

  /** Exact: international foot, 1959. */
  public double inFeetPerSecond() {
    return metresPerSecond / 0.3048;
  }
}
