package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
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

  private static Sights nine(List<Sighting> sightings, Facts flight) {
    return Sights.of(sightings, flight, new Confidence(90));
  }

  @Test
  void two_lines_at_right_angles_cross_over_the_middle_of_their_base() {
    Sights sights =
        nine(
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
    Sights sights = nine(List.of(from(0, 0, Target.LANDING, 50)), expectedAt(40, 100));
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
    Sights.Search search = nine(List.of(), flight).search().orElseThrow();

    assertThat(search.distance().metres()).isCloseTo(80, within(1e-6));
    assertThat(search.longHalf().metres()).isCloseTo(50, within(1e-6));
    assertThat(search.shortHalf().metres()).isCloseTo(20, within(1e-6));
  }

  /** The radius that holds a share is the root of chi-square's quantile with two degrees. */
  @Test
  void an_area_told_with_another_share_is_searched_as_far_as_is_asked_now() {
    Facts flight =
        expectedAt(90, 80)
            .with(Flight.PREDICTED_SPREAD_LONG, new Length(50))
            .with(Flight.PREDICTED_SPREAD_SHORT, new Length(20))
            .with(Flight.PREDICTED_SHARE, 0.8);
    ChiSquaredDistribution square = ChiSquaredDistribution.of(2);
    double factor =
        Math.sqrt(
            square.inverseCumulativeProbability(0.95) / square.inverseCumulativeProbability(0.8));

    Sights.Search search = Sights.of(List.of(), flight, new Confidence(95)).search().orElseThrow();

    assertThat(search.longHalf().metres()).isCloseTo(50 * factor, within(1e-6));
    assertThat(search.shortHalf().metres()).isCloseTo(20 * factor, within(1e-6));
    assertThat(search.distance().metres()).isCloseTo(80, within(1e-6));
  }

  @Test
  void one_line_without_a_prediction_is_refused_in_a_sentence() {
    Sights sights = nine(List.of(from(0, 0, Target.LANDING, 50)), Facts.none());

    assertThat(sights.search()).isEmpty();
    assertThat(sights.remarks()).anyMatch(text -> text.contains("One sight line alone"));
  }

  @Test
  void two_stations_that_see_it_at_45_degrees_over_the_crossing_agree() {
    Sights sights =
        nine(
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
        nine(
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
    Sights sights = nine(List.of(raised(from(100, 270, Target.APOGEE, 90), 60)), Facts.none());

    assertThat(sights.height().orElseThrow().above().metres()).isCloseTo(173.205, within(0.001));
    assertThat(sights.height().orElseThrow().closure()).isEqualTo(Optional.empty());
    assertThat(sights.remarks()).anyMatch(text -> text.contains("straight up"));
  }

  @Test
  void one_station_needs_no_bearing_for_a_height() {
    Sighting only =
        new Sighting(
            new RecordId("sighting"),
            Facts.none()
                .with(Sighting.TARGET, Target.APOGEE)
                .with(Sighting.STATION_DISTANCE, new Length(150))
                .with(Sighting.ELEVATION, Angle.ofDegrees(35)));

    // 150 m at 35 degrees: 105.0311 m (textbook formula, computed elsewhere).
    assertThat(nine(List.of(only), Facts.none()).height().orElseThrow().above().metres())
        .isCloseTo(105.0311, within(1e-4));
  }

  @Test
  void a_spot_known_by_its_distance_alone_is_left_out_and_never_taken_to_lie_north() {
    Sighting halfTold =
        new Sighting(
            new RecordId("half told"),
            Facts.none()
                .with(Sighting.TARGET, Target.LANDING)
                .with(Sighting.STATION_DISTANCE, new Length(200))
                .with(Sighting.BEARING, new Bearing(315)));
    Sights sights = nine(List.of(from(0, 0, Target.LANDING, 45), halfTold), expectedAt(45, 100));

    assertThat(sights.search().orElseThrow().lines()).isEqualTo(1);
    assertThat(sights.remarks()).anyMatch(text -> text.contains("how far and which way"));

    Sighting unread =
        new Sighting(
            halfTold.id(),
            halfTold.facts().with(Sighting.STATION_DISTANCE.name(), Facts.Cell.unread("some way")));
    assertThat(nine(List.of(unread), expectedAt(45, 100)).search().orElseThrow().lines())
        .as("what cannot be read is not the pad")
        .isZero();
  }

  @Test
  void a_stated_default_stands_in_for_a_spread_that_was_not_kept() {
    Sights sights = nine(List.of(), expectedAt(90, 80));

    assertThat(sights.search().orElseThrow().longHalf().metres())
        .as("half the distance and 20 m")
        .isCloseTo(60, within(1e-6));
    assertThat(sights.remarks()).anyMatch(text -> text.contains("common practice, no source"));
  }

  // The two rows of a 300 m baseline in the contest rules' reduction (association contest rules,
  // chapter 14, formulas from memory; rows computed elsewhere): azimuths inward from the baseline.
  @Test
  void two_stations_reduce_and_close_as_the_contest_rules_do() {
    Sights.Height closing = onBaseline(33, 52, 29, 49);
    assertThat(closing.above().metres()).isCloseTo(211.8580, within(1e-4));
    assertThat(closing.closure().orElseThrow()).isCloseTo(0.004817, within(1e-6));
    assertThat(closing.counts()).isTrue();

    Sights.Height apart = onBaseline(32.7, 58.0, 29.4, 44.0);
    assertThat(apart.above().metres()).isCloseTo(221.8882, within(1e-4));
    assertThat(apart.closure().orElseThrow()).isCloseTo(0.201869, within(1e-6));
    assertThat(apart.counts()).isFalse();
  }

  private static Sights.Height onBaseline(double a1, double e1, double a2, double e2) {
    return nine(
            List.of(
                raised(from(0, 0, Target.APOGEE, 90 - a1), e1),
                raised(from(300, 90, Target.APOGEE, 270 + a2), e2)),
            Facts.none())
        .height()
        .orElseThrow();
  }

  @Test
  void lines_that_cross_are_not_drawn_toward_a_prediction_that_was_wrong() {
    Facts wrong =
        expectedAt(225, 60)
            .with(Flight.PREDICTED_SPREAD_LONG, new Length(10))
            .with(Flight.PREDICTED_SPREAD_SHORT, new Length(5))
            .with(Flight.PREDICTED_SPREAD_ALONG, new Bearing(45));
    Sights.Search search =
        nine(List.of(from(0, 0, Target.LANDING, 45), from(200, 90, Target.LANDING, 315)), wrong)
            .search()
            .orElseThrow();

    assertThat(search.distance().metres()).isCloseTo(DIAGONAL_M, within(0.01));
    assertThat(search.expectation()).isFalse();
  }

  @Test
  void lines_almost_side_by_side_are_helped_by_the_prediction() {
    Sights.Search search =
        nine(
                List.of(from(0, 0, Target.LANDING, 45), from(5, 135, Target.LANDING, 44)),
                expectedAt(45, 100))
            .search()
            .orElseThrow();

    assertThat(search.expectation()).isTrue();
    assertThat(search.distance().metres()).isBetween(80.0, 120.0);
  }

  @Test
  void lines_that_cross_behind_a_spot_are_doubted() {
    Sights sights =
        nine(
            List.of(from(0, 0, Target.LANDING, 315), from(200, 90, Target.LANDING, 45)),
            Facts.none());

    assertThat(sights.remarks()).anyMatch(text -> text.contains("check the bearings"));
  }
}
