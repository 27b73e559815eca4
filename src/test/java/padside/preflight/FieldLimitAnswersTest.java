package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import padside.flight.Field;
import padside.flight.Ruling;
import padside.physics.Dispersion;
import padside.physics.Draws;
import padside.physics.Launch;
import padside.physics.Scatter;
import padside.physics.WindProfile;
import padside.site.FieldShape;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.Wind;

/** The field's limit as the whole check tells it, held against flights of independent luck. */
class FieldLimitAnswersTest {
  private static final int FLIGHTS = 20_000;
  private static final Scatter SIZES = Scattering.shipped().sizes();

  private static final List<Field.Edge> NARROW_TO_THE_WEST =
      List.of(edge(0, 200), edge(90, 200), edge(180, 200), edge(270, 40));
  private static final List<Field.Edge> UNEVEN =
      List.of(edge(10, 150), edge(75, 90), edge(140, 120), edge(230, 200), edge(300, 110));

  private static Field.Edge edge(double degrees, double metres) {
    return new Field.Edge(new Bearing(degrees), new Length(metres), "hedge", "lane");
  }

  private static Wind wind(double meanMps, double gustMps, double fromDegrees) {
    return new Wind(new Speed(meanMps), new Speed(gustMps), Optional.of(new Bearing(fromDegrees)));
  }

  private static Wind undirected(double mps) {
    return new Wind(new Speed(mps), new Speed(mps), Optional.empty());
  }

  private static Speed limit(Card card) {
    return new Preflight(Settings.standard())
        .answer(card).ruling().limits().stream()
            .filter(limit -> limit.rule().equals("field"))
            .map(Ruling.Limit::wind)
            .findFirst()
            .orElseThrow();
  }

  private static double limitMps(Card card) {
    return limit(card).metresPerSecond();
  }

  /**
   * The share of flights that lands inside. Every flight is drawn for itself from a seed of {@link
   * Random}, so that all are independent, unlike the check's own; one standard deviation of the
   * share is then 0.002 (binomial, at 0.9).
   */
  private static double share(Card card, Wind wind, long seed) {
    Random random = new Random(seed);
    Launch planned = Launches.of(card).launch().orElseThrow();
    Launch launch = planned.withWind(new WindProfile(wind, planned.wind().readingHeight()));
    FieldShape field = card.field().flatMap(FieldShape::of).orElseThrow();
    long inside =
        IntStream.range(0, FLIGHTS)
            .mapToObj(i -> one(launch, Draws.of(1, random.nextLong())))
            .filter(flown -> field.contains(flown.landingEastM(0), flown.landingNorthM(0)))
            .count();
    return inside / (double) FLIGHTS;
  }

  private static Dispersion one(Launch launch, Draws drawn) {
    return Dispersion.fly(launch, SIZES, drawn, () -> false);
  }

  /** Within one percent: the requirement. */
  private static void assertNineOfTen(Card card) {
    Wind at = card.wind().orElseThrow().scaledTo(limit(card));
    assertThat(at.tested().metresPerSecond()).isBetween(1.0, 19.0);
    assertThat(share(card, at, 20261126)).isBetween(0.89, 0.91);
  }

  @Test
  void nine_of_ten_land_inside_at_the_limit_of_a_round_field() {
    assertNineOfTen(CardBuilder.small().edge(100).wind(wind(2, 3, 40)).build());
  }

  @Test
  void nine_of_ten_land_inside_at_the_limit_of_an_uneven_field() {
    assertNineOfTen(CardBuilder.small().motor("C6-5").edges(UNEVEN).wind(wind(2, 4, 200)).build());
    assertNineOfTen(CardBuilder.small().motor("B6-4").edges(UNEVEN).wind(wind(3, 3, 255)).build());
  }

  @Test
  void nine_of_ten_land_inside_at_the_limit_with_a_leaning_rod() {
    Card card = CardBuilder.small().motor("B6-4").edges(UNEVEN).wind(wind(2, 3, 200)).build();
    assertNineOfTen(card.withTilt(Angle.ofDegrees(5), new Bearing(110)));
  }

  @Test
  void nine_of_ten_land_inside_at_the_limit_where_a_pond_lies_in_the_way() {
    Field.Hazard pond = new Field.Hazard(new Bearing(40), new Length(60), new Length(25), "pond");
    assertNineOfTen(
        CardBuilder.small()
            .edge(400)
            .fieldFact(facts -> facts.with(Field.HAZARDS, List.of(pond)))
            .wind(wind(2, 3, 220))
            .build());
  }

  /** By the field's shape the worst wind is the east wind, one of the sixteen. */
  @Test
  void where_no_direction_was_noted_nine_of_ten_land_inside_from_the_worst_of_sixteen() {
    Card card =
        CardBuilder.small().motor("B6-4").edges(NARROW_TO_THE_WEST).wind(undirected(3)).build();
    double mps = limitMps(card);

    assertThat(share(card, wind(mps, mps, 90), 3)).isBetween(0.89, 0.91);
    assertThat(share(card, wind(mps, mps, 67.5), 4)).isGreaterThan(0.91);
  }

  /** Calm air has no direction; the wind that may rise can come from any. */
  @Test
  void in_calm_air_the_worst_direction_counts_as_it_does_where_none_was_noted() {
    CardBuilder card = CardBuilder.small().edges(NARROW_TO_THE_WEST);
    double calm = limitMps(card.wind(Wind.calm()).build());

    assertThat(calm)
        .isEqualTo(limitMps(card.wind(undirected(1)).build()))
        .isLessThan(0.5 * limitMps(card.wind(wind(1, 1, 0)).build()));
  }
}
