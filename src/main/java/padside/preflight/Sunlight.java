package padside.preflight;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import padside.flight.Field;
import padside.flight.Ruling.Finding;
import padside.flight.Ruling.Verdict;
import padside.site.Stand;
import padside.site.Sun;
import padside.units.Angle;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitSystem;

/**
 * The sun during a flight.
 *
 * @param everywhere from every side of the pad the apogee lies in the sun
 */
record Sunlight(Outlook.InSun inSun, boolean everywhere) {
  private static final String SOURCE =
      "sun by Reda and Andreas 2004; %.0f° common practice, no source"
          .formatted(Stand.IN_SUN.inDegrees());

  /** Where to stand; absent at night and without a path. */
  static Optional<Sunlight> of(
      List<Outlook.PathPoint> path, Field.Coordinates place, Instant at, Length standOff) {
    Sun sun = Sun.at(place, at);
    List<Stand.Point> points =
        path.stream()
            .map(point -> new Stand.Point(point.east(), point.north(), point.height()))
            .toList();
    return Stand.of(points, sun, standOff)
        .map(
            stand ->
                new Sunlight(
                    new Outlook.InSun(
                        sun.azimuth(),
                        sun.elevation(),
                        stand.bearing(),
                        standOff,
                        stand.clearance(),
                        stand.apogeeClearance()),
                    stand.apogeeInSunFrom() == Stand.BEARINGS));
  }

  Finding finding(UnitSystem units) {
    String stand =
        "stand "
            + inSun.stand().compassPoint()
            + " of the pad, "
            + Notations.distance(units).show(inSun.standOff())
            + " off";
    String sentence =
        everywhere
            ? "the apogee lies within "
                + degrees(Stand.IN_SUN)
                + " of the sun from every side; "
                + stand
                + ", "
                + degrees(inSun.apogeeClearance())
                + " clear, or wait"
            : stand + ": the path keeps " + degrees(inSun.clearance()) + " clear of the sun";
    return new Finding("sun", everywhere ? Verdict.MARGINAL : Verdict.GO, sentence, SOURCE);
  }

  /** Whole degrees rounded down: no nearer to the sun than said. */
  private static String degrees(Angle angle) {
    return Notations.angle().show(Angle.ofDegrees(Math.floor(angle.inDegrees() + 1e-9)));
  }
}
