package padside.site;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

/**
 * Where to stand round the pad so that the path of the rocket keeps clear of the sun: the best of
 * sixteen bearings. Between its points the path is straight.
 *
 * @param bearing from the pad to where one stands
 * @param clearance least angle between the sun's centre and the path as seen from there
 * @param apogeeClearance angle between the sun's centre and the highest point, from there
 * @param apogeeInSunFrom from how many of the sixteen the highest point lies in the sun
 */
public record Stand(Bearing bearing, Angle clearance, Angle apogeeClearance, int apogeeInSunFrom) {
  /** The bearings tried. */
  public static final int BEARINGS = 16;

  /** So near the sun nothing is looked for: common practice, no source. */
  public static final Angle IN_SUN = Angle.ofDegrees(15);

  /** Height of a standing flier's eyes: common practice, no source. */
  private static final double EYE_M = 1.6;

  /** A place in the air, from the pad. */
  public record Point(Length east, Length north, Length up) {
    private Direction fromPad() {
      return new Direction(east.metres(), north.metres(), up.metres());
    }
  }

  /**
   * Looks for it; absent when the sun is not up or there is no path.
   *
   * @param standOff how far from the pad people keep back
   */
  public static Optional<Stand> of(List<Point> path, Sun sun, Length standOff) {
    if (!sun.isUp() || path.isEmpty()) {
      return Optional.empty();
    }
    Direction toSun = Direction.toward(sun);
    List<Stand> stands =
        IntStream.range(0, BEARINGS)
            .mapToObj(i -> new Bearing(360.0 * i / BEARINGS))
            .map(bearing -> at(bearing, seen(path, bearing, standOff), toSun))
            .toList();
    int inSun = Math.toIntExact(stands.stream().filter(Stand::apogeeInSun).count());
    return stands.stream()
        .max(Comparator.comparingDouble(stand -> stand.clearance.radians()))
        .map(best -> new Stand(best.bearing, best.clearance, best.apogeeClearance, inSun));
  }

  /** Whether from the best bearing too the highest point lies in the sun. */
  public boolean apogeeInSun() {
    return apogeeClearance.radians() <= IN_SUN.radians();
  }

  /** Where the points of the path lie as seen from a stand. */
  static List<Direction> seen(List<Point> path, Bearing bearing, Length standOff) {
    Landing stand = new Landing(bearing, standOff);
    Direction eye = new Direction(stand.eastM(), stand.northM(), EYE_M);
    return path.stream().map(point -> point.fromPad().minus(eye)).toList();
  }

  static Stand at(Bearing bearing, List<Direction> seen, Direction toSun) {
    double least = toSun.angleTo(seen.get(0));
    for (int i = 1; i < seen.size(); i++) {
      least = Math.min(least, toSun.angleToWay(seen.get(i - 1), seen.get(i)));
    }
    Direction apogee = seen.stream().max(Comparator.comparingDouble(Direction::up)).orElseThrow();
    return new Stand(bearing, new Angle(least), new Angle(toSun.angleTo(apogee)), 0);
  }
}
