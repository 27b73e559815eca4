package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.units.TimeSpan;

/** Waits as the safety codes print them. */
class PadTimesTest {
  private static PadTimes under(String code) {
    return PadTimes.of(Settings.standard().withRuleSet(code));
  }

  /** US model code: remove the interlock, wait 60 s after the last attempt (seen). */
  @Test
  void the_us_model_code_waits_sixty_seconds() {
    assertThat(under("us-model").misfire()).isEqualTo(new TimeSpan(60));
    assertThat(under("us-model").source()).startsWith("US model code, seen");
  }

  /** US high-power code: 60 s after a misfire, a count of five (seen). */
  @Test
  void the_us_high_power_code_names_both() {
    assertThat(under("us-high-power").misfire()).isEqualTo(new TimeSpan(60));
    assertThat(under("us-high-power").count()).isEqualTo(new TimeSpan(5));
    assertThat(under("us-high-power").source()).startsWith("US high-power code, seen");
  }

  @Test
  void a_code_that_is_silent_here_gets_the_us_wait_and_says_so() {
    for (String code : new String[] {"canada-model", "uk-club", "no such code"}) {
      assertThat(under(code).misfire()).isEqualTo(new TimeSpan(60));
      assertThat(under(code).source())
          .startsWith("US model code, seen")
          .endsWith("your own code's wait is not known here");
      assertThat(under(code).count()).isEqualTo(new TimeSpan(5));
    }
  }
}
