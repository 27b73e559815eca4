package padside.units;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A direction over the ground in degrees clockwise from true north, at least 0 and below 360.
 *
 * <p>Whether it is where a wind comes from or where a landing lies is told by the name that holds
 * it: {@code windFrom}, {@code landingBearing}.
 */
public record Bearing(double degrees) {
  private static final double POINT_DEGREES = 22.5;
  private static final Pattern BETWEEN = Pattern.compile("[\\s-]");
  private static final List<String> COMPASS_POINTS =
      List.of(
          "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW",
          "NW", "NNW");

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

  /** The nearest of the sixteen compass points, at most 11.25° away: {@code WSW} for 240. */
  public String compassPoint() {
    return COMPASS_POINTS.get((int) Math.round(degrees / POINT_DEGREES) % COMPASS_POINTS.size());
  }

  /** Whether this is a compass point itself, to the rounding of a double. */
  boolean isCompassPoint() {
    return Math.abs(Math.IEEEremainder(degrees, POINT_DEGREES)) < 1e-9;
  }

  /** The bearing of a compass point: {@code wsw}, {@code north}, {@code South-West}. */
  static Optional<Bearing> find(String compassPoint) {
    String point =
        BETWEEN
            .matcher(compassPoint.toLowerCase(Locale.ROOT))
            .replaceAll("")
            .replace("north", "n")
            .replace("south", "s")
            .replace("east", "e")
            .replace("west", "w")
            .toUpperCase(Locale.ROOT);
    int index = COMPASS_POINTS.indexOf(point);
    return index < 0 ? Optional.empty() : Optional.of(new Bearing(index * POINT_DEGREES));
  }
}
