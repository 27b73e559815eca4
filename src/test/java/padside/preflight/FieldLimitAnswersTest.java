package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.flight.Field;
import padside.flight.Ruling;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.Wind;

/** The field's limit as the whole check tells it. */
class FieldLimitAnswersTest {
  private static final List<Field.Edge> NARROW_TO_THE_WEST =
      List.of(edge(0, 200), edge(90, 200), edge(180, 200), edge(270, 40));

  private static Field.Edge edge(double degrees, double metres) {
    return new Field.Edge(new Bearing(degrees), new Length(metres), "hedge", "lane");
  }

  private static double limitMps(Card card) {
    return new Preflight(Settings.standard())
        .answer(card).ruling().limits().stream()
            .filter(limit -> limit.rule().equals("field"))
            .map(Ruling.Limit::wind)
            .mapToDouble(Speed::metresPerSecond)
            .findFirst()
            .orElseThrow();
  }

  /** Calm air has no direction; the wind that may rise can come from any. */
  @Test
  void in_calm_air_the_worst_direction_counts_as_it_does_where_none_was_noted() {
    CardBuilder card = CardBuilder.small().edges(NARROW_TO_THE_WEST);
    Speed some = new Speed(1);
    double calm = limitMps(card.wind(Wind.calm()).build());

    assertThat(calm)
        .isEqualTo(limitMps(card.wind(new Wind(some, some, Optional.empty())).build()))
        .isLessThan(
            0.5 * limitMps(card.wind(new Wind(some, some, Optional.of(new Bearing(0)))).build()));
  }
}
