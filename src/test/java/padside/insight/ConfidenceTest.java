package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padside.fact.Facts;
import padside.flight.Flight;

class ConfidenceTest {
  @ParameterizedTest
  @CsvSource({"50, 50 in 100", "90, 90 in 100", "95, 95 in 100", "99, 99 in 100"})
  void is_told_in_whole_flights(int percent, String words) {
    assertThat(new Confidence(percent).words()).isEqualTo(words);
  }

  @ParameterizedTest
  @ValueSource(ints = {50, 68, 90, 99})
  void what_it_leaves_lies_half_below_and_half_above(int percent) {
    Confidence confidence = new Confidence(percent);

    assertThat(confidence.share() + 2 * confidence.tail()).isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 49, 100})
  void even_odds_and_certainty_are_its_ends(int percent) {
    assertThatThrownBy(() -> new Confidence(percent)).hasMessageContaining("" + percent);
  }

  @Test
  void a_flight_counts_against_what_it_was_told_with() {
    Facts flight = Facts.none();

    assertThat(Confidence.told(flight)).isEqualTo(0.9);
    assertThat(Confidence.told(flight.with(Flight.PREDICTED_SHARE, 0.75))).isEqualTo(0.75);
    assertThat(Confidence.told(flight.with(Flight.PREDICTED_SHARE, 75.0))).isEqualTo(0.9);
  }
}
