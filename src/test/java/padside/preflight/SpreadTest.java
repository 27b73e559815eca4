package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import padside.flight.Field;
import padside.flight.Flight;
import padside.insight.Confidence;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.Wind;

/** Where flights like the card's come to, the path, and how the delays fit with scatter. */
class SpreadTest {
  private static final Preflight PREFLIGHT = new Preflight(Settings.standard());

  private static Outlook outlook(CardBuilder card) {
    return PREFLIGHT.answer(card.build()).outlook().orElseThrow();
  }

  private static Spread spread(CardBuilder card) {
    return outlook(card).spread().orElseThrow();
  }

  private static Field.Edge edge(double degrees, double metres, String name, String beyond) {
    return new Field.Edge(new Bearing(degrees), new Length(metres), name, beyond);
  }

  @Test
  void landings_lie_downwind_round_the_nominal_one() {
    Outlook outlook = outlook(CardBuilder.small());
    Spread.Area landing = outlook.spread().orElseThrow().landingMost();
    double toward = outlook.landingBearing().inRadians();
    double along =
        landing.east().metres() * Math.sin(toward) + landing.north().metres() * Math.cos(toward);

    assertThat(along).isCloseTo(outlook.landingDistance().metres(), within(3.0));
    assertThat(landing.longHalf().metres()).isGreaterThan(landing.shortHalf().metres());
  }

  /** Radii of a Rayleigh distribution that hold 50 % and 90 %: 1.177410 and 2.145966. */
  @Test
  void nine_of_ten_take_the_larger_ellipse_in_the_ratio_of_the_rayleigh_radii() {
    Spread spread = spread(CardBuilder.small());

    assertThat(spread.landingMost().longHalf().metres() / spread.landingHalf().longHalf().metres())
        .isCloseTo(2.145966 / 1.177410, within(1e-5));
    assertThat(spread.apogeeMost().shortHalf().metres() / spread.apogeeHalf().shortHalf().metres())
        .isCloseTo(2.145966 / 1.177410, within(1e-5));
  }

  /** The same radius for 75 %: 1.665109, by sqrt(-2 ln 0.25). */
  @Test
  void the_confidence_set_is_what_areas_and_heights_hold_and_is_kept_with_the_card() {
    Settings set = Settings.standard().with(new Confidence(75));
    Answer answer = new Preflight(set).answer(CardBuilder.small().build());
    Outlook outlook = answer.outlook().orElseThrow();
    Outlook.Top usual = outlook(CardBuilder.small()).top();
    Spread spread = outlook.spread().orElseThrow();

    assertThat(spread.landingMost().longHalf().metres() / spread.landingHalf().longHalf().metres())
        .isCloseTo(1.665109 / 1.177410, within(1e-5));
    assertThat(outlook.top().low().orElseThrow().metres())
        .isBetween(usual.low().orElseThrow().metres(), usual.height().metres());
    assertThat(outlook.top().high().orElseThrow().metres())
        .isBetween(usual.height().metres(), usual.high().orElseThrow().metres());
    assertThat(answer.facts().get(Flight.PREDICTED_SHARE)).contains(0.75);
    assertThat(answer.ruling())
        .as("no setting of what is told changes what is allowed")
        .isEqualTo(PREFLIGHT.answer(CardBuilder.small().build()).ruling());
  }

  @Test
  void what_is_not_inside_is_past_an_edge_or_in_a_hazard_by_its_name() {
    double reach = outlook(CardBuilder.small()).landingDistance().metres();
    List<Field.Edge> edges =
        List.of(
            edge(0, 300, "", ""),
            edge(45, reach * 1.1, "lane", "road"),
            edge(90, 300, "", ""),
            edge(180, 300, "", ""),
            edge(270, 300, "", ""));
    Field.Hazard pond =
        new Field.Hazard(new Bearing(45), new Length(reach), new Length(reach / 12), "pond");
    Spread spread =
        spread(
            CardBuilder.small()
                .edges(edges)
                .fieldFact(field -> field.with(Field.HAZARDS, List.of(pond))));

    assertThat(spread.past())
        .extracting(Spread.Past::words)
        .anyMatch(words -> words.matches("lane NE \\d+ ft \\(road\\)"))
        .anyMatch(words -> words.matches("pond NE \\d+ ft"));
    double lost = spread.past().stream().mapToDouble(Spread.Past::share).sum();
    assertThat(lost + spread.inside().orElseThrow()).isCloseTo(1, within(1e-12));
    assertThat(spread.past()).isSortedAccordingTo((a, b) -> Double.compare(b.share(), a.share()));
  }

  /** Somewhat more than half: a charge that fires early or late opens lower either way. */
  @Test
  void half_of_the_landings_lie_inside_where_the_edge_cuts_their_middle() {
    double reach = outlook(CardBuilder.small()).landingDistance().metres();

    assertThat(spread(CardBuilder.small().edge(reach)).inside().orElseThrow()).isBetween(0.5, 0.62);
    assertThat(spread(CardBuilder.small().edge(5 * reach)).inside()).contains(1.0);
    assertThat(spread(CardBuilder.small().noField()).inside()).isEmpty();
  }

  @Test
  void nothing_is_told_of_where_they_land_while_wind_direction_or_recovery_is_unknown() {
    Wind anywhere = new Wind(new Speed(2), new Speed(3), Optional.empty());

    assertThat(outlook(CardBuilder.small().noWind()).spread()).isEmpty();
    assertThat(outlook(CardBuilder.small().wind(anywhere)).spread()).isEmpty();
    assertThat(outlook(CardBuilder.small().noDevice()).spread()).isEmpty();
    assertThat(outlook(CardBuilder.small().wind(Wind.calm())).spread()).isPresent();
  }

  @Test
  void a_delay_near_the_best_is_safe_nearly_always_and_none_at_all_hardly_ever() {
    List<Outlook.DelayFit> delays = outlook(CardBuilder.small().motor("A8-3")).delays();

    assertThat(delays).extracting(Outlook.DelayFit::delay).containsExactly("0", "3", "5");
    assertThat(delays.get(0).safeShare().orElseThrow()).isLessThan(0.05);
    assertThat(delays.get(1).safeShare().orElseThrow()).isGreaterThan(0.8);
    assertThat(delays.get(2).safeShare().orElseThrow())
        .isLessThan(delays.get(1).safeShare().orElseThrow());
  }

  @Test
  void the_path_runs_from_the_pad_to_the_landing_in_equal_steps() {
    Outlook outlook = outlook(CardBuilder.small());
    List<Outlook.PathPoint> path = outlook.path();
    Outlook.PathPoint last = path.get(path.size() - 1);

    assertThat(path).hasSizeBetween(60, 120);
    assertThat(path.get(0).height().metres()).isZero();
    assertThat(last.height().metres()).isCloseTo(0, within(0.01));
    assertThat(last.time().seconds()).isCloseTo(outlook.flightTime().seconds(), within(0.02));
    assertThat(Math.hypot(last.east().metres(), last.north().metres()))
        .isCloseTo(outlook.landingDistance().metres(), within(0.1));
    assertThat(path.stream().mapToDouble(point -> point.height().metres()).max().orElseThrow())
        .isCloseTo(outlook.apogee().metres(), within(1.5));
    double step = path.get(1).time().seconds();
    assertThat(path.get(40).time().seconds()).isCloseTo(40 * step, within(1e-9));
  }

  @Test
  void an_abandoned_check_stops_at_once() {
    AtomicInteger asked = new AtomicInteger();

    assertThatThrownBy(
            () ->
                PREFLIGHT.answer(CardBuilder.small().build(), () -> asked.incrementAndGet() > 100))
        .isInstanceOf(CancellationException.class);
    assertThat(asked).hasValue(101);
  }
}
