package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Sighting;
import padside.flight.Sighting.Target;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

/** Lines of sight whose crossing is plain geometry: right angles over a base of 200 m. */
class SightsTest {
  private static final double DIAGONAL_M = 141.4214;

  private static Sighting from(double distance, double bearing, Target target, double toward) {
    return new Sighting(
        new RecordId("sighting." + distance + "." + toward),
        Facts.none()
            .with(Sighting.TARGET, target)
            .with(Sighting.STATION_DISTANCE, new Length(distance))
            .with(Sighting.STATION_BEARING, new Bearing(bearing))
            .with(Sighting.BEARING, new Bearing(toward)));
  }

  private static Sighting raised(Sighting sighting, double degrees) {
    return new Sighting(
        sighting.id(), sighting.facts().with(Sighting.ELEVATION, Angle.ofDegrees(degrees)));
  }

  private static Facts expectedAt(double bearing, double distance) {
    return Facts.none()
        .with(Flight.PREDICTED_BEARING, new Bearing(bearing))
        .with(Flight.PREDICTED_DISTANCE, new Length(distance));
  }

  @Test
  void two_lines_at_right_angles_cross_over_the_middle_of_their_base() {
    Sights sights =
        Sights.of(
            List.of(from(0, 0, Target.LANDING, 45), from(200, 90, Target.LANDING, 315)),
            Facts.none());
    Sights.Search search = sights.search().orElseThrow();

    assertThat(search.distance().metres()).isCloseTo(DIAGONAL_M, within(0.01));
    assertThat(search.toward().degrees()).isCloseTo(45, within(0.01));
    Sights.Way way = search.fromLast().orElseThrow();
    assertThat(way.distance().metres()).isCloseTo(DIAGONAL_M, within(0.01));
    assertThat(way.toward().degrees()).isCloseTo(315, within(0.01));
    // 3° at 141.42 m is 7.40 m, 2.1460 deviations hold nine of ten (Rayleigh).
    assertThat(search.longHalf().metres()).isCloseTo(15.89, within(0.05));
    assertThat(search.shortHalf().metres()).isCloseTo(15.89, within(0.05));
    assertThat(search.expectation()).isFalse();
  }

  @Test
  void one_line_and_the_predicted_landing_meet_between_them() {
    Sights sights = Sights.of(List.of(from(0, 0, Target.LANDING, 50)), expectedAt(40, 100));
    Sights.Search search = sights.search().orElseThrow();

    assertThat(search.toward().degrees()).isBetween(45.0, 50.0);
    assertThat(search.shortHalf().metres()).isLessThan(search.longHalf().metres());
    assertThat(search.along().degrees()).isCloseTo(50, within(3.0));
  }

  @Test
  void the_predicted_landing_alone_is_where_to_look_first() {
    Facts flight =
        expectedAt(90, 80)
            .with(Flight.PREDICTED_SPREAD_LONG, new Length(50))
            .with(Flight.PREDICTED_SPREAD_SHORT, new Length(20))
            .with(Flight.PREDICTED_SPREAD_ALONG, new Bearing(90));
    Sights.Search search = Sights.of(List.of(), flight).search().orElseThrow();

    assertThat(search.distance().metres()).isCloseTo(80, within(1e-6));
    assertThat(search.longHalf().metres()).isCloseTo(50, within(1e-6));
    assertThat(search.shortHalf().metres()).isCloseTo(20, within(1e-6));
  }

  @Test
  void one_line_without_a_prediction_is_refused_in_a_sentence() {
    Sights sights = Sights.of(List.of(from(0, 0, Target.LANDING, 50)), Facts.none());

    assertThat(sights.search()).isEmpty();
    assertThat(sights.remarks()).anyMatch(text -> text.contains("One sight line alone"));
  }

  @Test
  void two_stations_that_see_it_at_45_degrees_over_the_crossing_agree() {
    Sights sights =
        Sights.of(
            List.of(
                raised(from(0, 0, Target.APOGEE, 45), 45),
                raised(from(200, 90, Target.APOGEE, 315), 45)),
            Facts.none());
    Sights.Height height = sights.height().orElseThrow();

    assertThat(height.above().metres()).isCloseTo(DIAGONAL_M, within(0.001));
    assertThat(height.closure().orElseThrow()).isCloseTo(0, within(1e-9));
    assertThat(height.counts()).isTrue();
    assertThat(sights.search()).isEmpty();
  }

  @Test
  void stations_too_far_apart_do_not_count() {
    // tan 45° and tan 30° over the same distance: (1 - 0.5774) / 1.5774 = 26.8 %.
    Sights.Height height =
        Sights.of(
                List.of(
                    raised(from(0, 0, Target.APOGEE, 45), 45),
                    raised(from(200, 90, Target.APOGEE, 315), 30)),
                Facts.none())
            .height()
            .orElseThrow();

    assertThat(height.closure().orElseThrow()).isCloseTo(0.268, within(0.001));
    assertThat(height.counts()).isFalse();
  }

  @Test
  void one_station_tells_distance_times_tangent_and_what_it_takes_for_granted() {
    Sights sights = Sights.of(List.of(raised(from(100, 270, Target.APOGEE, 90), 60)), Facts.none());

    assertThat(sights.height().orElseThrow().above().metres()).isCloseTo(173.205, within(0.001));
    assertThat(sights.height().orElseThrow().closure()).isEqualTo(Optional.empty());
    assertThat(sights.remarks()).anyMatch(text -> text.contains("straight up"));
  }
}
