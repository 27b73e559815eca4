package padside.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

/** Triangles and cones worked by hand; eyes are 1.6 m above the ground. */
class StandTest {
  private static final Length STAND_OFF = new Length(10);
  private static final Sun SOUTH_45 = sun(180, 45);

  /** Seen from 10 m, 11.6 m up is 45° up. */
  private static final List<Stand.Point> STRAIGHT_UP = List.of(up(0), up(11.6));

  @Test
  void a_rocket_straight_up_is_watched_with_the_sun_behind() {
    Stand stand = Stand.of(STRAIGHT_UP, SOUTH_45, STAND_OFF).orElseThrow();

    assertThat(stand.bearing()).isEqualTo(new Bearing(180));
    // Of the path, which rises in the north to 45°, the top is nearest to 45° in the south.
    assertThat(stand.clearance().inDegrees()).isCloseTo(90, within(1e-9));
    assertThat(stand.apogeeClearance().inDegrees()).isCloseTo(90, within(1e-9));
    assertThat(stand.apogeeInSun()).isFalse();
  }

  @Test
  void from_how_many_bearings_the_apogee_lies_in_the_sun_is_counted() {
    // From 22.5° k beside the north the apogee is 45° up, at cosine ½ + ½ cos 22.5° k of the sun:
    // 0° and 15.86° away.
    assertThat(Stand.of(STRAIGHT_UP, SOUTH_45, STAND_OFF).orElseThrow().apogeeInSunFrom())
        .isEqualTo(1);
    // Both 60° up: cosine ¾ + ¼ cos 22.5° k, so 0° and 11.20°, then 22.07° away.
    List<Stand.Point> steep = List.of(up(0), up(1.6 + 10 * Math.sqrt(3)));
    assertThat(Stand.of(steep, sun(180, 60), STAND_OFF).orElseThrow().apogeeInSunFrom())
        .isEqualTo(3);
    assertThat(Stand.of(STRAIGHT_UP, sun(180, 5), STAND_OFF).orElseThrow().apogeeInSunFrom())
        .isZero();
  }

  @Test
  void an_apogee_far_out_in_front_of_the_sun_lies_in_it_from_everywhere() {
    // 3 km south and as high: from 10 m round the pad the direction changes by 0.3° at most.
    List<Stand.Point> far = List.of(up(0), point(0, -3000, 3000));
    Stand stand = Stand.of(far, SOUTH_45, STAND_OFF).orElseThrow();

    assertThat(stand.apogeeInSun()).isTrue();
    assertThat(stand.apogeeClearance().inDegrees()).isLessThan(0.3);
    assertThat(stand.clearance().radians()).isLessThanOrEqualTo(stand.apogeeClearance().radians());
    assertThat(stand.apogeeInSunFrom()).isEqualTo(Stand.BEARINGS);
  }

  @Test
  void the_path_between_two_points_counts_too() {
    // Seen from the north it passes 45° up, where the sun stands, on its way to 100 m.
    List<Stand.Point> high = List.of(up(0), up(100));
    Stand fromNorth = only(high, SOUTH_45, new Bearing(0));

    assertThat(fromNorth.clearance().inDegrees()).isCloseTo(0, within(1e-9));
    assertThat(fromNorth.apogeeClearance().inDegrees())
        .isCloseTo(Math.toDegrees(Math.atan2(98.4, 10)) - 45, within(1e-9));
    // From the south the whole way is in the north, and its top is nearest to the sun.
    assertThat(Stand.of(high, SOUTH_45, STAND_OFF).orElseThrow().clearance().inDegrees())
        .isCloseTo(135 - Math.toDegrees(Math.atan2(98.4, 10)), within(1e-9));
  }

  @Test
  void with_the_sun_overhead_every_side_is_as_good() {
    Stand stand = Stand.of(STRAIGHT_UP, sun(0, 90), STAND_OFF).orElseThrow();

    assertThat(stand.clearance().inDegrees()).isCloseTo(45, within(1e-9));
    assertThat(stand.apogeeInSunFrom()).isZero();
  }

  @Test
  void at_night_and_without_a_path_there_is_nothing_to_say() {
    assertThat(Stand.of(STRAIGHT_UP, sun(180, -1), STAND_OFF)).isEmpty();
    assertThat(Stand.of(List.of(), SOUTH_45, STAND_OFF)).isEmpty();
  }

  @Test
  void turning_sun_and_path_together_turns_the_stand() {
    Random random = new Random(61);
    for (int i = 0; i < 300; i++) {
      List<Stand.Point> path = path(random);
      double azimuth = 360 * random.nextDouble();
      double elevation = 1 + 80 * random.nextDouble();
      int steps = random.nextInt(Stand.BEARINGS);
      double turn = 360.0 * steps / Stand.BEARINGS;
      Stand before = Stand.of(path, sun(azimuth, elevation), STAND_OFF).orElseThrow();
      Stand after =
          Stand.of(
                  path.stream().map(point -> turned(point, turn)).toList(),
                  sun(azimuth + turn, elevation),
                  STAND_OFF)
              .orElseThrow();

      String which = "seed 61, case %d: turned by %s".formatted(i, turn);
      assertThat(after.bearing().degreesTo(before.bearing()) + turn)
          .as(which)
          .satisfies(off -> assertThat(Math.IEEEremainder(off, 360)).isCloseTo(0, within(1e-6)));
      assertThat(after.clearance().radians())
          .as(which)
          .isCloseTo(before.clearance().radians(), within(1e-9));
      assertThat(after.apogeeClearance().radians())
          .as(which)
          .isCloseTo(before.apogeeClearance().radians(), within(1e-9));
      assertThat(after.apogeeInSunFrom()).as(which).isEqualTo(before.apogeeInSunFrom());
    }
  }

  /** A path cut finely has its points close to every place of the coarse one. */
  @Test
  void a_path_with_more_points_on_it_keeps_as_clear() {
    Random random = new Random(62);
    for (int i = 0; i < 100; i++) {
      List<Stand.Point> path = path(random);
      Sun sun = sun(360 * random.nextDouble(), 1 + 80 * random.nextDouble());
      Stand coarse = Stand.of(path, sun, STAND_OFF).orElseThrow();
      Stand fine = Stand.of(cut(path), sun, STAND_OFF).orElseThrow();

      assertThat(fine.clearance().radians())
          .as("seed 62, case %d", i)
          .isCloseTo(coarse.clearance().radians(), within(1e-9));
    }
  }

  @Test
  void small_and_straight_angles_keep_their_digits() {
    Direction north = new Direction(0, 1, 0);

    assertThat(north.angleTo(new Direction(1e-12, 1, 0))).isCloseTo(1e-12, within(1e-24));
    assertThat(Math.PI - north.angleTo(new Direction(1e-9, -5, 0))).isCloseTo(2e-10, within(1e-15));
    assertThat(north.angleTo(new Direction(3, 0, 0))).isEqualTo(Math.PI / 2);
  }

  private static Stand only(List<Stand.Point> path, Sun sun, Bearing from) {
    return Stand.at(from, Stand.seen(path, from, STAND_OFF), Direction.toward(sun));
  }

  private static List<Stand.Point> cut(List<Stand.Point> path) {
    return IntStream.range(0, 10 * (path.size() - 1) + 1)
        .mapToObj(
            k ->
                between(
                    path.get(k / 10),
                    path.get(Math.min(k / 10 + 1, path.size() - 1)),
                    k % 10 / 10.0))
        .toList();
  }

  private static Stand.Point between(Stand.Point a, Stand.Point b, double share) {
    return point(
        a.east().metres() + share * (b.east().metres() - a.east().metres()),
        a.north().metres() + share * (b.north().metres() - a.north().metres()),
        a.up().metres() + share * (b.up().metres() - a.up().metres()));
  }

  /** Up in a few steps, each a little further out. */
  private static List<Stand.Point> path(Random random) {
    double east = 20 * random.nextGaussian();
    double north = 20 * random.nextGaussian();
    return IntStream.range(0, 6)
        .mapToObj(k -> point(k * k * east / 25, k * k * north / 25, 40.0 * k))
        .toList();
  }

  private static Stand.Point turned(Stand.Point point, double degrees) {
    Landing below = Landing.of(point.east().metres(), point.north().metres());
    Landing turned =
        new Landing(new Bearing(below.bearing().degrees() + degrees), below.distance());
    return point(turned.eastM(), turned.northM(), point.up().metres());
  }

  private static Sun sun(double azimuth, double elevation) {
    return new Sun(new Bearing(azimuth), Angle.ofDegrees(elevation));
  }

  private static Stand.Point up(double metres) {
    return point(0, 0, metres);
  }

  private static Stand.Point point(double eastM, double northM, double upM) {
    return new Stand.Point(new Length(eastM), new Length(northM), new Length(upM));
  }
}
