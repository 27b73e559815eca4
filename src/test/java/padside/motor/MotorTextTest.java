package padside.motor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.fact.RecordId;

/** How many motors a flight takes from its lots, by what its line of motors says. */
class MotorTextTest {
  private static final RecordId LOT = new RecordId("t.1");
  private static final RecordId BOOSTER = new RecordId("t.2");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          C6-5              | 1 | 0
          3xC6-5            | 3 | 0
          12 × 1/2A6-2      | 12 | 0
          C6-0 then C6-7    | 1 | 1
          C6-0, C6-7        | 1 | 1
          3xD12-0 Then C6-7 | 1 | 3
          D12-0,2X C6-7     | 2 | 1
          2xC6-0,C6-0,C6-7  | 1 | 2
          0xC6-5            | 1 | 0
          a saucer motor    | 1 | 0
          123xC6-5          | 1 | 0
          Xx                | 1 | 0
          """)
  void a_flight_takes_the_motors_of_a_stage_from_its_lot(String line, int top, int booster) {
    Map<RecordId, Integer> fired =
        MotorText.fired(Optional.of(line), Optional.of(LOT), Optional.of(BOOSTER));

    assertThat(fired.get(LOT)).isEqualTo(top);
    assertThat(fired.getOrDefault(BOOSTER, 0)).isEqualTo(booster);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          C6-5             | C6-5
          3 x C6-5         | 3xC6-5
          2xC6-0 then C6-7 | 2xC6-0,C6-7
          """)
  void few_letters_say_the_same(String line, String brief) {
    assertThat(MotorText.of(line).brief()).isEqualTo(brief);
    assertThat(MotorText.of(brief)).isEqualTo(MotorText.of(line));
  }

  @Test
  void a_lot_is_counted_where_it_is_named_alone() {
    assertThat(MotorText.fired(Optional.empty(), Optional.of(LOT), Optional.empty()))
        .isEqualTo(Map.of(LOT, 1));
    assertThat(
            MotorText.fired(
                Optional.of("2xC6-0 then C6-7"), Optional.empty(), Optional.of(BOOSTER)))
        .isEqualTo(Map.of(BOOSTER, 2));
    assertThat(MotorText.fired(Optional.of("2xC6-0 then C6-0"), Optional.of(LOT), Optional.of(LOT)))
        .as("both stages from one lot")
        .isEqualTo(Map.of(LOT, 3));
  }
}
