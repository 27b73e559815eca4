package padside.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The scatter sizes that come with the program, against what they cite. */
class ScatterSizesTest {
  private final ScatterSizes sizes = RuleSets.scatter();

  /** MIT Press 1973, chapter 4.2.5: impulse of one type up to 10 % from nominal; seen. */
  @Test
  void two_deviations_of_impulse_are_what_the_textbook_has() {
    assertThat(2 * sizes.impulseShare().value()).isCloseTo(0.10, within(1e-12));
    assertThat(sizes.impulseShare().cited())
        .isEqualTo(
            "flight mechanics textbook, MIT Press 1973, seen; up to 10 % from nominal, read here as"
                + " two standard deviations");
  }

  /** NFPA 1125: within 20 % or 1.5 s of the label, whichever is greater; from memory. */
  @Test
  void two_deviations_of_delay_are_the_certification_tolerance() {
    assertThat(2 * sizes.delayShare().value()).isCloseTo(0.20, within(1e-12));
    assertThat(2 * sizes.leastDelay().value().seconds()).isCloseTo(1.5, within(1e-12));
    assertThat(List.of(sizes.delayShare(), sizes.leastDelay()))
        .allSatisfy(
            size -> assertThat(size.cited()).startsWith("NFPA 1125, from memory: unconfirmed"));
  }

  /** MIT Press 1973, chapters 1 and 4: 0.35 to about 1.0; seen. */
  @Test
  void four_deviations_of_drag_are_what_the_textbook_has() {
    assertThat(4 * sizes.dragCoefficientShare().value())
        .isCloseTo(Math.log(1.0 / 0.35), within(0.02));
  }

  /** Contest rules ch. 14: two stations within 10 % of their mean; from memory. */
  @Test
  void two_deviations_of_a_sighted_altitude_are_what_contests_allow() {
    assertThat(2 * sizes.sightedShare().value()).isCloseTo(0.10, within(1e-12));
  }

  /** Common practice, no source. */
  @Test
  void what_has_no_source_says_so() {
    assertThat(sizes.dragShare().value()).isEqualTo(0.1);
    assertThat(sizes.canopyDragShare().value()).isEqualTo(0.1);
    assertThat(sizes.windShare().value()).isEqualTo(0.1);
    assertThat(sizes.windDirection().value().inDegrees()).isCloseTo(10, within(1e-12));
    assertThat(sizes.gustDeviations().value()).isEqualTo(2);
    assertThat(sizes.rodTilt().value().inDegrees()).isCloseTo(1, within(1e-12));
    assertThat(sizes.told())
        .filteredOn(size -> size.source().isEmpty())
        .hasSize(8)
        .allSatisfy(size -> assertThat(size.cited()).startsWith("common practice, no source"));
  }

  @Test
  void each_size_is_told_in_words() {
    assertThat(sizes.title()).isEqualTo("scatter sizes");
    assertThat(sizes.told())
        .extracting(Sourced::value)
        .containsExactly(
            "total impulse 5 %",
            "drag of the rocket 10 %",
            "drag before an altitude 26 %",
            "altimeter 2 %, at least 1 m",
            "altitude without altimeter 5 %",
            "altitudes noted wrong 2 %",
            "drag of the recovery 10 %",
            "delay 10 %, at least 0.75 s",
            "wind 10 %",
            "wind direction 10°",
            "gust 2 standard deviations above the mean wind",
            "rod 1°");
  }
}
