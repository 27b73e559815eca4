package padside.physics;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

/**
 * Altitude read off with sighting devices on the ground. Frame: x east, y north from the pad, z up;
 * every station is taken to stand on one level, heights are above it.
 */
public final class Tracking {
  /** Closure up to which a track counts in contests: from memory, unconfirmed. */
  public static final double LARGEST_CLOSURE = 0.10;

  /** Sight lines nearer to parallel than this, in radians, meet nowhere in particular. */
  private static final double PARALLEL_RAD = Math.toRadians(1);

  private Tracking() {}

  /** One look at the rocket from a place on the ground; elevation above the horizon. */
  public record Sight(Length east, Length north, Bearing toward, Angle elevation) {
    /** Refuses elevations below the horizon or straight up. */
    public Sight {
      RefusedInput.unless(
          elevation.radians() >= 0 && elevation.inDegrees() < 90,
          () ->
              String.format(
                  Locale.ROOT,
                  "Elevation %.1f° is outside 0 to 90°; measure it up from the horizon.",
                  elevation.inDegrees()));
    }

    private double tan() {
      return Math.tan(elevation.radians());
    }

    /** Unit vector along the sight line. */
    private Vector direction() {
      double flat = Math.cos(elevation.radians());
      return new Vector(
          flat * Math.sin(toward.inRadians()),
          flat * Math.cos(toward.inRadians()),
          Math.sin(elevation.radians()));
    }
  }

  /**
   * What two stations make of one moment.
   *
   * @param first height by the first station's elevation, over where the two planes of sight cross
   * @param second the same by the second station's
   * @param height the mean of both: the vertical midpoint
   * @param closure difference of the two heights over their sum, from 0 to 1
   * @param geodesicHeight middle of the shortest way from one sight line to the other
   * @param gap length of that way
   */
  public record Reduction(
      Length first,
      Length second,
      Length height,
      double closure,
      Length geodesicHeight,
      Length gap) {
    /** Whether both stations' heights lie near enough to their mean for the track to count. */
    public boolean closes() {
      return closure <= LARGEST_CLOSURE;
    }
  }

  /**
   * A look along the ground at where it went down.
   *
   * @param east of the spot looked from
   * @param north of the spot looked from
   * @param deviation one standard deviation of the bearing; 3 degrees for a hand compass is common
   *     practice, no source
   */
  public record Line(Length east, Length north, Bearing toward, Angle deviation) {
    /** Refuses a bearing known exactly or hardly at all. */
    public Line {
      RefusedInput.unless(
          deviation.inDegrees() >= 0.1 && deviation.inDegrees() <= 45,
          () ->
              String.format(
                  Locale.ROOT,
                  "A bearing known to %.2f° is outside 0.1 to 45°.",
                  deviation.inDegrees()));
    }
  }

  /** From a spot to another: bearing and distance. */
  public record Way(Bearing toward, Length distance) {}

  private record Vector(double x, double y, double z) {
    double dot(Vector other) {
      return x * other.x + y * other.y + z * other.z;
    }
  }

  /**
   * Height over a place at a known distance, seen from one station: distance times the tangent of
   * the elevation. True only for a rocket that rose straight up.
   */
  public static Length single(Length distance, Angle elevation) {
    RefusedInput.unless(
        distance.metres() > 0, "The station's distance from the pad must be above zero.");
    Sight sight = new Sight(distance, new Length(0), new Bearing(0), elevation);
    return new Length(distance.metres() * sight.tan());
  }

  /**
   * Reduces two sights of one moment, by vertical midpoint and by the shortest way between the
   * lines. For stations on a baseline b the crossing of the planes is the law of sines d1 = b sin
   * a2/sin(a1 + a2) of contest rules, from memory.
   */
  public static Reduction reduce(Sight one, Sight other) {
    double turn = Math.toRadians(one.toward().degreesTo(other.toward()));
    double across = Math.sin(turn);
    RefusedInput.unless(
        Math.abs(across) >= Math.sin(PARALLEL_RAD),
        "The two sight lines run side by side and cross nowhere; a rocket over the baseline cannot"
            + " be tracked by two stations.");
    double east = other.east().metres() - one.east().metres();
    double north = other.north().metres() - one.north().metres();
    double firstM = crossing(east, north, other.toward()) / across;
    double secondM = crossing(east, north, one.toward()) / across;
    RefusedInput.unless(
        firstM > 0 && secondM > 0,
        "The two sight lines part: they cross behind a station. Check the bearings.");
    double first = firstM * one.tan();
    double second = secondM * other.tan();
    double closure = first + second == 0 ? 0 : Math.abs(first - second) / (first + second);
    Shortest way = Shortest.of(one.direction(), other.direction(), new Vector(east, north, 0));
    return new Reduction(
        new Length(first),
        new Length(second),
        new Length((first + second) / 2),
        closure,
        new Length(way.middleM),
        new Length(way.lengthM));
  }

  /**
   * Where to look for what went down out of sight: the ellipse that holds a share of where it may
   * lie.
   *
   * @param lines none, one or more looks at where it went down
   * @param landing where it was expected, the ellipse that holds {@code share} of the landings;
   *     needed with fewer than two lines
   */
  public static Ellipse search(List<Line> lines, Optional<Ellipse> landing, double share) {
    RefusedInput.unless(
        landing.isPresent() || lines.size() >= 2,
        "One sight line alone tells no spot; look from a second one, or predict the landing.");
    return new SearchArea(lines, landing, share).holding(share);
  }

  /** From where one stands to the middle of an area. */
  public static Way way(Ellipse area, Length east, Length north) {
    return SearchArea.way(area, east, north);
  }

  /** Plan-view cross product of a way with a bearing, up positive for a bearing to its left. */
  private static double crossing(double east, double north, Bearing toward) {
    return north * Math.sin(toward.inRadians()) - east * Math.cos(toward.inRadians());
  }

  /** The shortest way from one line to another: the height of its middle and its length. */
  private record Shortest(double middleM, double lengthM) {
    /** Lines along {@code u} from the origin and along {@code v} from {@code between}. */
    static Shortest of(Vector u, Vector v, Vector between) {
      double uv = u.dot(v);
      double bu = between.dot(u);
      double bv = between.dot(v);
      double square = 1 - uv * uv;
      double s = (bu - uv * bv) / square;
      double t = (uv * bu - bv) / square;
      double dx = between.x + t * v.x - s * u.x;
      double dy = between.y + t * v.y - s * u.y;
      double dz = between.z + t * v.z - s * u.z;
      return new Shortest(
          (s * u.z + between.z + t * v.z) / 2, Math.sqrt(dx * dx + dy * dy + dz * dz));
    }
  }
}
