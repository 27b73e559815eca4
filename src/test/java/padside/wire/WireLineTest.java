package padside.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padside.units.Bearing;
import padside.units.Wind;

/** What a line of a wind meter says. */
class WireLineTest {
  private static Wind read(String line) {
    return WireLine.read(line).orElseThrow();
  }

  @Test
  void words_tell_speed_and_bearing() {
    Wind wind = read("wind 4.2 m/s 270\r");

    assertThat(wind.mean().metresPerSecond()).isEqualTo(4.2);
    assertThat(wind.from()).contains(new Bearing(270));
    assertThat(read("wind 9 mph W").mean().metresPerSecond()).isCloseTo(4.02336, within(1e-9));
    assertThat(read("wind 3 m/s").from()).isEmpty();
    assertThat(read("wind calm")).isEqualTo(Wind.calm());
    assertThat(read("wind 8g11 kt SW").gust().inKnots()).isCloseTo(11, within(1e-9));
  }

  /**
   * Sentences with their checksums as manuals of two ultrasonic wind sensors print them for NMEA
   * 0183 version 2.20.
   */
  @Test
  void published_sentences_are_read() {
    Wind slow = read("$WIMWV,39,R,1.3,M,A*06\r");
    Wind knots = read("$WIMWV,045,R,011.63,N,A*09");

    assertThat(slow.mean().metresPerSecond()).isEqualTo(1.3);
    assertThat(slow.from()).contains(new Bearing(39));
    assertThat(read("$WIMWV,61,R,1.0,M,A*08").from()).contains(new Bearing(61));
    // 1 kt is 1852 m an hour
    assertThat(knots.mean().metresPerSecond()).isCloseTo(11.63 * 1852 / 3600, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "wind",
        "wind 4.2",
        "wind -3 m/s",
        "wind 400 m/s",
        "wind 4 m/s 27",
        "hello",
        "$WIMWV,39,R,1.3,M,A*07",
        "$WIMWV,39,R,1.3,M,A",
        "$WIMWV,,R,,M,V*34",
        "$WIMWV,39,R,1.3,M,V*11"
      })
  void any_other_line_is_no_reading(String line) {
    assertThat(WireLine.read(line)).isEmpty();
  }

  @Test
  void random_bytes_never_break() {
    long seed = Long.getLong("padside.seed", 20261126L);
    System.out.println("[trials] 20000 lines of random bytes, seed " + seed);
    Random random = new Random(seed);
    for (int trial = 0; trial < 20_000; trial++) {
      byte[] bytes = new byte[random.nextInt(300)];
      random.nextBytes(bytes);
      String noise = new String(bytes, StandardCharsets.ISO_8859_1);
      String line = (trial % 2 == 0 ? "wind " : "$WIMWV,") + noise;

      Optional<Wind> wind = WireLine.read(line);

      wind.ifPresent(each -> assertThat(each.gust().metresPerSecond()).isBetween(0.0, 113.0));
    }
  }

  @Test
  void made_up_lines_are_readings_and_the_same_for_the_same_seed() {
    MadeWind first = new MadeWind(7);
    MadeWind again = new MadeWind(7);
    double sum = 0;
    for (int second = 0; second < 3_600; second++) {
      String line = first.next();
      assertThat(again.next()).isEqualTo(line);
      assertThat(read(line).from()).isPresent();
      sum += read(line).mean().metresPerSecond();
    }
    // 0.8 m/s with 0.85 kept a second: standard error of an hour's mean is 0.047 m/s
    assertThat(sum / 3_600).isCloseTo(3.5, within(0.2));
  }
}
