package padside.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The World Meteorological Organization's table: knots and miles per hour read at
 * weather.gov/tbw/beaufort, metres per second at a Dutch meteorological page. That page's upper
 * limit of force 11, 73 mph, is a slip (force 12 begins there); 72 mph stands elsewhere.
 */
class BeaufortTest {
  @ParameterizedTest(name = "force {0}")
  @CsvSource({
    "0,  0.0,  0.2,  0,  0,  0,  0",
    "1,  0.3,  1.5,  1,  3,  1,  3",
    "2,  1.6,  3.3,  4,  6,  4,  7",
    "3,  3.4,  5.4,  7, 10,  8, 12",
    "4,  5.5,  7.9, 11, 16, 13, 18",
    "5,  8.0, 10.7, 17, 21, 19, 24",
    "6, 10.8, 13.8, 22, 27, 25, 31",
    "7, 13.9, 17.1, 28, 33, 32, 38",
    "8, 17.2, 20.7, 34, 40, 39, 46",
    "9, 20.8, 24.4, 41, 47, 47, 54",
    "10, 24.5, 28.4, 48, 55, 55, 63",
    "11, 28.5, 32.6, 56, 63, 64, 72",
  })
  void every_row_of_the_table_stands(
      int number, double low, double high, int lowKt, int highKt, int lowMph, int highMph) {
    Beaufort row = Beaufort.find(number).orElseThrow();
    assertThat(row.number()).isEqualTo(number);
    assertThat(row.lowest().metresPerSecond()).isEqualTo(low);
    assertThat(row.highest()).contains(new Speed(high));
    assertThat(Beaufort.of(new Speed(low))).isEqualTo(row);
    assertThat(Beaufort.of(new Speed(high))).isEqualTo(row);
    assertThat(row.signOnLand()).isNotBlank();
    column(row, Speed::ofKnots, lowKt, highKt);
    column(row, Speed::ofMph, lowMph, highMph);
  }

  /** The columns are rounded each for itself: an end of a row may fall to the neighbouring one. */
  private static void column(Beaufort row, DoubleFunction<Speed> unit, int low, int high) {
    for (int number = low; number <= high; number++) {
      int found = Beaufort.of(unit.apply(number)).number();
      boolean end = number == low || number == high;
      assertThat(found).isCloseTo(row.number(), within(end ? 1 : 0));
    }
  }

  @Test
  void force_twelve_begins_at_32_point_7_and_never_ends() {
    assertThat(Beaufort.B12.lowest()).isEqualTo(new Speed(32.7));
    assertThat(Beaufort.B12.highest()).isEmpty();
    assertThat(Beaufort.of(new Speed(32.7))).isEqualTo(Beaufort.B12);
    assertThat(Beaufort.of(new Speed(90))).isEqualTo(Beaufort.B12);
    assertThat(Speed.ofMph(73).metresPerSecond()).isCloseTo(32.7, within(0.1));
  }

  @Test
  void rows_follow_each_other_without_a_gap() {
    for (int number = 1; number <= 12; number++) {
      double below =
          Beaufort.find(number - 1).orElseThrow().highest().orElseThrow().metresPerSecond();
      double lowest = Beaufort.find(number).orElseThrow().lowest().metresPerSecond();
      assertThat(lowest - below).as("below force %d", number).isCloseTo(0.1, within(1e-9));
    }
    assertThat(Beaufort.of(new Speed(5.44))).isEqualTo(Beaufort.B3);
    assertThat(Beaufort.of(new Speed(5.46))).isEqualTo(Beaufort.B4);
  }

  @Test
  void the_twenty_mph_limit_lies_within_force_five() {
    assertThat(Beaufort.of(Speed.ofMph(20))).isEqualTo(Beaufort.B5);
  }

  @Test
  void numbers_off_the_scale_are_not_found() {
    assertThat(Beaufort.find(-1)).isEmpty();
    assertThat(Beaufort.find(13)).isEmpty();
  }

  @Test
  void a_force_stands_for_the_middle_of_its_range_gusting_to_its_top() {
    Optional<Bearing> west = Optional.of(new Bearing(270));
    Wind three = Beaufort.B3.wind(west);
    assertThat(three.mean().metresPerSecond()).isCloseTo(4.4, within(1e-12));
    assertThat(three.tested()).isEqualTo(new Speed(5.4));
    assertThat(three.from()).isEqualTo(west);
    assertThat(Beaufort.B0.wind(Optional.empty())).isEqualTo(Wind.calm());
    assertThat(Beaufort.B12.wind(west).mean()).isEqualTo(new Speed(32.7));
    assertThat(Beaufort.B12.wind(west).tested()).isEqualTo(new Speed(32.7));
  }
}
