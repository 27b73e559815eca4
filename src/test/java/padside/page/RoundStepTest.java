package padside.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

class RoundStepTest {
  private static final Map<Double, Double> AT_MOST =
      Map.of(1.0, 1.0, 1.9, 1.0, 2.0, 2.0, 4.99, 2.0, 7.0, 5.0, 99.0, 50.0, 263.0, 200.0, 0.3, 0.2);
  private static final Map<Double, Double> AT_LEAST =
      Map.of(1.0, 1.0, 1.1, 2.0, 2.1, 5.0, 5.1, 10.0, 99.0, 100.0, 150.0, 200.0, 0.3, 0.5);

  @Test
  void round_numbers_are_one_two_and_five_times_a_power_of_ten() {
    AT_MOST.forEach(
        (value, round) -> assertThat(RoundStep.atMost(value)).isCloseTo(round, within(1e-9)));
    AT_LEAST.forEach(
        (value, round) -> assertThat(RoundStep.atLeast(value)).isCloseTo(round, within(1e-9)));
  }
}
