package padside.physics;

import java.util.List;
import java.util.Optional;
import padside.units.Bearing;
import padside.units.Length;

/**
 * Where something lies on the ground by lines of sight, and by where it was expected: the weighted
 * least squares of a fix by bearings (Stansfield, J. IEE 94 IIIA (1947), 762-770, from memory), the
 * expected landing taken for one more observation. A line seen with a deviation of σ from a
 * distance d says the place to σd across the line; d is that of the place found, so that it is
 * worked out again a few times.
 */
final class SearchArea {
  private static final int ROUNDS = 20;

  /** Nearer to a station than this, in metres, the width of its line shrinks no more. */
  private static final double NEAREST_M = 5;

  private final List<Tracking.Line> lines;
  private final Optional<Spread> expected;
  private double ee;
  private double en;
  private double nn;
  private double e;
  private double n;

  /** Mean and covariance of the expected landing, as information: the inverse of the covariance. */
  private record Spread(double east, double north, double ee, double en, double nn) {
    static Spread of(Ellipse ellipse, double share) {
      double radius = Ellipse.radius(share);
      double lengthwise = Math.pow(radius / Math.max(ellipse.longHalf().metres(), 1e-3), 2);
      double across = Math.pow(radius / Math.max(ellipse.shortHalf().metres(), 1e-3), 2);
      double sin = Math.sin(ellipse.along().inRadians());
      double cos = Math.cos(ellipse.along().inRadians());
      return new Spread(
          ellipse.east().metres(),
          ellipse.north().metres(),
          lengthwise * sin * sin + across * cos * cos,
          (lengthwise - across) * sin * cos,
          lengthwise * cos * cos + across * sin * sin);
    }
  }

  SearchArea(List<Tracking.Line> lines, Optional<Ellipse> landing, double share) {
    this.lines = lines;
    this.expected = landing.map(ellipse -> Spread.of(ellipse, share));
  }

  /** The ellipse that holds a share of where it may lie. */
  Ellipse holding(double share) {
    double[] place = start();
    for (int i = 0; i < ROUNDS; i++) {
      place = round(place);
    }
    double determinant = ee * nn - en * en;
    double varianceE = nn / determinant;
    double varianceN = ee / determinant;
    double covariance = -en / determinant;
    return Ellipse.of(
        share, new Ellipse.Moments(place[0], place[1], varianceE, covariance, varianceN));
  }

  /** Where it was expected, else some way out along the first line. */
  private double[] start() {
    if (expected.isPresent()) {
      return new double[] {expected.get().east, expected.get().north};
    }
    Tracking.Line first = lines.get(0);
    return new double[] {
      first.east().metres() + 100 * Math.sin(first.toward().inRadians()),
      first.north().metres() + 100 * Math.cos(first.toward().inRadians())
    };
  }

  private double[] round(double[] near) {
    ee = 0;
    en = 0;
    nn = 0;
    e = 0;
    n = 0;
    expected.ifPresent(
        by -> {
          ee = by.ee;
          en = by.en;
          nn = by.nn;
          e = by.ee * by.east + by.en * by.north;
          n = by.en * by.east + by.nn * by.north;
        });
    lines.forEach(line -> add(line, near));
    double determinant = ee * nn - en * en;
    RefusedInput.unless(
        determinant > 1e-12 * (ee + nn) * (ee + nn),
        "The sight lines run side by side and cross nowhere; look from another spot.");
    return new double[] {(nn * e - en * n) / determinant, (ee * n - en * e) / determinant};
  }

  private void add(Tracking.Line line, double[] near) {
    double fromE = line.east().metres();
    double fromN = line.north().metres();
    double away = Math.hypot(near[0] - fromE, near[1] - fromN);
    double width = line.deviation().radians() * Math.max(NEAREST_M, away);
    double weight = 1 / (width * width);
    double acrossE = Math.cos(line.toward().inRadians());
    double acrossN = -Math.sin(line.toward().inRadians());
    double offset = acrossE * fromE + acrossN * fromN;
    ee += weight * acrossE * acrossE;
    en += weight * acrossE * acrossN;
    nn += weight * acrossN * acrossN;
    e += weight * acrossE * offset;
    n += weight * acrossN * offset;
  }

  /** Distance and bearing of an ellipse's centre from a spot. */
  static Tracking.Way way(Ellipse area, Length east, Length north) {
    double dx = area.east().metres() - east.metres();
    double dy = area.north().metres() - north.metres();
    return new Tracking.Way(
        new Bearing(Math.toDegrees(Math.atan2(dx, dy))), new Length(Math.hypot(dx, dy)));
  }
}
