package padside.units;

/**
 * A direction over the ground in degrees clockwise from true north, at least 0 and below 360.
 *
 * <p>Whether it is where a wind comes from or where a landing lies is told by the name that holds
 * it: {@code windFrom}, {@code landingBearing}.
 */
public record Bearing(double degrees) {
  /** Folds any finite angle into one turn. */
  public Bearing {
    Finite.require(degrees, "degrees");
    degrees = ((degrees % 360.0) + 360.0) % 360.0;
  }

  /** The opposite direction. */
  public Bearing reversed() {
    return new Bearing(degrees + 180.0);
  }

  public double inRadians() {
    return Math.toRadians(degrees);
  }

  /** Turns from here to {@code other}: positive clockwise, more than -180 and at most 180. */
  public double degreesTo(Bearing other) {
    double turn = (other.degrees - degrees + 540.0) % 360.0 - 180.0;
    return turn == -180.0 ? 180.0 : turn;
  }
}
