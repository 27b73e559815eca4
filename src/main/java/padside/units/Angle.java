package padside.units;

/** A plane angle in radians, not reduced to a turn. */
public record Angle(double radians) {
  /** Refuses what is not a finite number. */
  public Angle {
    Finite.require(radians, "radians");
  }

  /** Exact: π/180 rad. */
  public static Angle ofDegrees(double degrees) {
    return new Angle(Math.toRadians(degrees));
  }

  /** Exact: π/180 rad. */
  public double inDegrees() {
    return Math.toDegrees(radians);
  }
}
