package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.motor.MotorTable;
import padside.units.Bearing;
import padside.units.Length;

class ScoresTest {
  private static final MotorTable MOTORS = new MotorTable(List.of());

  private static Flight flight(int number, double predictedM, double measuredM) {
    Facts facts =
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.PREDICTED_APOGEE, new Length(predictedM))
            .with(Flight.ALTITUDE, new Length(measuredM));
    return new Flight(new RecordId("test." + number), facts);
  }

  private static Flight with(Flight flight, Facts facts) {
    return new Flight(flight.id(), flight.facts().with(facts));
  }

  private static Scores.Summary altitudes(List<Flight> flights) {
    return Scores.of(flights, MOTORS).summary(Scores.Scored::altitude).orElseThrow();
  }

  /** By hand: 0, 5, 8, 12, 23 and 31 %; -23, -12, -5, 0, 8 and 31 %. */
  @Test
  void half_of_the_errors_are_within_the_median() {
    double[] measured = {95, 108, 131, 88, 100, 77};
    List<Flight> flights = new ArrayList<>();
    for (int i = 0; i < measured.length; i++) {
      flights.add(flight(i, 100, measured[i]));
    }

    Scores.Summary summary = altitudes(flights);

    assertThat(summary.count()).isEqualTo(6);
    assertThat(summary.median()).isCloseTo(0.10, within(1e-12));
    assertThat(summary.bias()).isCloseTo(-0.025, within(1e-12));
    assertThat(summary.told()).isEmpty();
  }

  @Test
  void an_interval_told_at_the_time_holds_what_was_measured_or_not() {
    Facts told =
        Facts.none()
            .with(Flight.PREDICTED_TOP_LOW, new Length(90))
            .with(Flight.PREDICTED_TOP_HIGH, new Length(110));

    Scores.Summary summary =
        altitudes(
            List.of(
                with(flight(0, 100, 109), told),
                with(flight(1, 100, 111), told),
                flight(2, 100, 100)));

    assertThat(summary.told()).hasSize(2);
    assertThat(summary.held()).isEqualTo(1);
  }

  @Test
  void every_interval_counts_against_the_share_it_was_told_with() {
    Facts told =
        Facts.none()
            .with(Flight.PREDICTED_TOP_LOW, new Length(90))
            .with(Flight.PREDICTED_TOP_HIGH, new Length(110));
    List<Flight> flights =
        List.of(
            with(flight(0, 100, 109), told),
            with(flight(1, 100, 111), told.with(Flight.PREDICTED_SHARE, 0.6)),
            flight(2, 100, 100));

    assertThat(altitudes(flights).told())
        .containsExactly(new Scores.Told(0.9, true), new Scores.Told(0.6, false));
    assertThat(Scores.of(flights, MOTORS).toldToHold()).containsExactly(0.6, 0.9);
  }

  /** A charge before apogee: what the altimeter can read is the top, not the free apogee. */
  @Test
  void the_top_as_flown_is_what_an_altitude_is_held_against() {
    Flight early =
        with(flight(0, 200, 150), Facts.none().with(Flight.PREDICTED_TOP, new Length(150)));

    assertThat(altitudes(List.of(early)).median()).isZero();
  }

  /** An ellipse 60 m by 30 m along east about a place 100 m east, by hand. */
  @Test
  void a_landing_lies_inside_the_ellipse_or_not() {
    Facts told =
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.PREDICTED_BEARING, new Bearing(90))
            .with(Flight.PREDICTED_DISTANCE, new Length(100))
            .with(Flight.PREDICTED_SPREAD_LONG, new Length(60))
            .with(Flight.PREDICTED_SPREAD_SHORT, new Length(30))
            .with(Flight.PREDICTED_SPREAD_ALONG, new Bearing(90))
            .with(Flight.LANDING_BEARING, new Bearing(90));
    Flight inside =
        new Flight(new RecordId("a"), told.with(Flight.LANDING_DISTANCE, new Length(155)));
    Flight outside =
        new Flight(new RecordId("b"), told.with(Flight.LANDING_DISTANCE, new Length(165)));

    Scores.Summary summary =
        Scores.of(List.of(inside, outside), MOTORS).summary(Scores.Scored::landing).orElseThrow();

    assertThat(summary.held()).isEqualTo(1);
    assertThat(summary.median()).isCloseTo(0.60, within(1e-9));
  }

  @Test
  void another_altitude_of_one_flight_changes_the_score_of_no_other() {
    List<Flight> flights = List.of(flight(0, 100, 90), flight(1, 100, 95), flight(2, 100, 99));
    List<Flight> changed = List.of(flights.get(0), flight(1, 100, 300), flights.get(2));

    List<Scores.Scored> before = Scores.of(flights, MOTORS).flights();
    List<Scores.Scored> after = Scores.of(changed, MOTORS).flights();

    assertThat(after.get(0)).isEqualTo(before.get(0));
    assertThat(after.get(2)).isEqualTo(before.get(2));
    assertThat(after.get(1).top().orElseThrow().predicted())
        .isEqualTo(before.get(1).top().orElseThrow().predicted());
  }
}
