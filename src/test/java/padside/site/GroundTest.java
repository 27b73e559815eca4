package padside.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.units.Bearing;
import padside.units.Length;

class GroundTest {
  /**
   * Geoscience Australia's standard example of the inverse problem, printed for GRS80; WGS84's
   * flattening differs from it by 2e-11, which is less than a tenth of a millimetre over that way.
   */
  @Test
  void flinders_peak_to_buninyong_is_as_published() {
    Field.Coordinates flindersPeak =
        new Field.Coordinates(-degrees(37, 57, 3.72030), degrees(144, 25, 29.52440));
    Field.Coordinates buninyong =
        new Field.Coordinates(-degrees(37, 39, 10.15610), degrees(143, 55, 35.38390));
    Ground ground = new Ground(flindersPeak);
    Landing landing = ground.landing(buninyong);

    assertThat(landing.distance().metres()).isCloseTo(54_972.271, within(1e-3));
    assertThat(landing.bearing().degrees()).isCloseTo(degrees(306, 52, 5.37), within(0.005 / 3600));
    assertThat(ground.coordinates(landing).latitudeDeg())
        .isCloseTo(buninyong.latitudeDeg(), within(1e-9));
    assertThat(ground.coordinates(landing).longitudeDeg())
        .isCloseTo(buninyong.longitudeDeg(), within(1e-9));
  }

  /** Worked examples of the documentation of GeographicLib (C. F. F. Karney). */
  @ParameterizedTest
  @CsvSource({
    "40.6, -73.8, 51.6, -0.5, 5551759.400, 51.198882846",
    "-41.32, 174.81, 40.96, -5.50, 19959679.267, 161.067669986"
  })
  void long_ways_are_as_in_the_reference(
      double fromNorth, double fromEast, double north, double east, double metres, double azimuth) {
    Landing landing =
        new Ground(new Field.Coordinates(fromNorth, fromEast))
            .landing(new Field.Coordinates(north, east));

    assertThat(landing.distance().metres()).isCloseTo(metres, within(1e-3));
    assertThat(landing.bearing().degrees()).isCloseTo(azimuth, within(1e-9));
  }

  /**
   * The first row from the same documentation, half way round and so north of the equator; the rest
   * computed beforehand at the scale of a field. A sphere would be 0.7 m off in the second.
   */
  @ParameterizedTest
  @CsvSource({
    "-32.06, 115.74, 225, 20000000, 32.111955291, -63.959252784",
    "40, -105, 225, 350, 39.997771043, -105.002898093",
    "51.5, -1, 90, 1000, 51.499999116, -0.985599186"
  })
  void places_seen_from_the_pad_have_these_coordinates(
      double fromNorth, double fromEast, double bearing, double metres, double north, double east) {
    Field.Coordinates place =
        new Ground(new Field.Coordinates(fromNorth, fromEast))
            .coordinates(new Landing(new Bearing(bearing), new Length(metres)));

    assertThat(place.latitudeDeg()).isCloseTo(north, within(1e-9));
    assertThat(place.longitudeDeg()).isCloseTo(east, within(1e-9));
  }

  @Test
  void there_and_back_is_the_same_landing() {
    Random random = new Random(41);
    for (int i = 0; i < 500; i++) {
      Ground ground =
          new Ground(
              new Field.Coordinates(
                  170 * random.nextDouble() - 85, 360 * random.nextDouble() - 180));
      Landing landing =
          new Landing(
              new Bearing(360 * random.nextDouble()), new Length(1 + 2000 * random.nextDouble()));
      Landing again = ground.landing(ground.coordinates(landing));

      String which = "seed 41, case %d: %s, %s".formatted(i, ground, landing);
      assertThat(again.distance().metres())
          .as(which)
          .isCloseTo(landing.distance().metres(), within(1e-6));
      assertThat(again.bearing().degreesTo(landing.bearing())).as(which).isCloseTo(0, within(1e-4));
    }
  }

  /** The curvature of the ground over 500 m shortens nothing by more than 500 · (500 m/R)². */
  @Test
  void between_two_landings_the_ground_is_as_good_as_flat() {
    Random random = new Random(42);
    for (int i = 0; i < 500; i++) {
      Ground ground = new Ground(new Field.Coordinates(170 * random.nextDouble() - 85, 179.999));
      Landing a = Landing.of(400 * random.nextGaussian(), 400 * random.nextGaussian());
      Landing b = Landing.of(400 * random.nextGaussian(), 400 * random.nextGaussian());

      assertThat(
              new Ground(ground.coordinates(a)).landing(ground.coordinates(b)).distance().metres())
          .as("seed 42, case %d: %s, %s", i, a, b)
          .isCloseTo(Math.hypot(a.eastM() - b.eastM(), a.northM() - b.northM()), within(1e-4));
    }
  }

  @Test
  void the_pad_itself_lies_nowhere_from_the_pad() {
    Field.Coordinates pad = new Field.Coordinates(40, -105);

    assertThat(new Ground(pad).landing(pad)).isEqualTo(Landing.of(0, 0));
  }

  @Test
  void a_field_has_coordinates_when_both_are_known_and_on_the_globe() {
    assertThat(field(46.21, -15.43).coordinates()).contains(new Field.Coordinates(46.21, -15.43));
    assertThat(field(146.21, -15.43).coordinates()).isEmpty();
    assertThat(field(46.21, -181).coordinates()).isEmpty();
    Facts half = Facts.none().with(Field.LONGITUDE, -15.43);
    assertThat(new Field(new RecordId("f"), half).coordinates()).isEmpty();
  }

  private static Field field(double north, double east) {
    return new Field(
        new RecordId("f"), Facts.none().with(Field.LATITUDE, north).with(Field.LONGITUDE, east));
  }

  private static double degrees(int degrees, int minutes, double seconds) {
    return degrees + minutes / 60.0 + seconds / 3600;
  }
}
