package padside.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.units.Bearing;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/** The mean, the gust and the silence of a meter, against numbers worked by hand. */
class WireWindowTest {
  private final WireWindow window = new WireWindow(TimeSpan.ofMinutes(2));

  private static Wind wind(double speed, double from) {
    return new Wind(new Speed(speed), new Speed(speed), Optional.of(new Bearing(from)));
  }

  private Wind told() {
    return window.wind().orElseThrow();
  }

  @Test
  void the_gust_is_the_highest_mean_over_three_seconds() {
    double[] speeds = {2, 2, 8, 5, 2, 2};
    for (int second = 0; second < speeds.length; second++) {
      window.add(second, wind(speeds[second], 90));
    }

    // WMO-No. 8, volume I, chapter 5: highest 3 s mean. By hand: 2 2 8, 2 8 5, 8 5 2, 5 2 2:
    // 4, 5, 5, 3; and the mean of all is 21 / 6
    assertThat(told().gust().metresPerSecond()).isCloseTo(5, within(1e-9));
    assertThat(told().mean().metresPerSecond()).isCloseTo(3.5, within(1e-9));
    assertThat(window.tellsGusts()).isTrue();
    assertThat(window.missesGusts()).isFalse();
  }

  /** The mean vector of two equal ones either side of north points north. */
  @Test
  void the_mean_of_350_and_10_degrees_is_north() {
    window.add(0, wind(3, 350));
    window.add(1, wind(3, 10));

    assertThat(Math.abs(new Bearing(0).degreesTo(told().from().orElseThrow())))
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void opposite_winds_tell_no_direction() {
    window.add(0, wind(3, 0));
    window.add(1, wind(3, 180));

    assertThat(told().from()).isEmpty();
  }

  @Test
  void readings_older_than_the_window_no_longer_count() {
    window.add(0, wind(9, 0));
    window.add(60, wind(3, 90));
    window.add(121, wind(5, 90));

    assertThat(told().mean().metresPerSecond()).isCloseTo(4, within(1e-9));
    assertThat(told().gust().metresPerSecond()).isCloseTo(5, within(1e-9));
  }

  @Test
  void a_slow_meter_says_that_it_misses_gusts() {
    window.add(0, wind(3, 0));
    window.add(5, wind(6, 0));

    assertThat(window.missesGusts()).isTrue();
    assertThat(told().gust().metresPerSecond()).isCloseTo(6, within(1e-9));
  }

  @Test
  void a_gust_the_meter_told_itself_counts() {
    window.add(0, wind(3, 0));
    window.add(4, new Wind(new Speed(3), new Speed(7), Optional.empty()));

    assertThat(told().gust().metresPerSecond()).isCloseTo(7, within(1e-9));
  }

  @Test
  void silence_is_the_time_since_the_last_reading() {
    assertThat(window.silence(4)).isEmpty();
    assertThat(window.wind()).isEmpty();
    window.add(10, wind(3, 0));

    assertThat(window.silence(50)).contains(new TimeSpan(40));
    assertThat(window.tellsGusts()).isFalse();
  }
}
