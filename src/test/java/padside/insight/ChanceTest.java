package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ChanceTest {
  private static final Pattern WORDS = Pattern.compile("([0-9]+) in ([0-9]+)");

  @Test
  void few_words_for_a_share() {
    assertThat(new Chance(0.00421).atLeast()).isEqualTo("1 in 238");
    assertThat(new Chance(0.6412).atMost()).isEqualTo("2 in 3");
    assertThat(new Chance(1.0 / 7).atMost()).isEqualTo("1 in 7");
    assertThat(new Chance(1.0 / 7).atLeast()).isEqualTo("1 in 7");
    assertThat(new Chance(0.95).atMost()).isEqualTo("19 in 20");
    assertThat(new Chance(0).atMost()).isEqualTo("none");
    assertThat(new Chance(0).atLeast()).isEqualTo("none");
    assertThat(new Chance(1).atLeast()).isEqualTo("all");
    assertThat(new Chance(1).atMost()).isEqualTo("all");
    assertThat(new Chance(0.833).inHundred()).isEqualTo("83 in 100");
  }

  @Test
  void rounding_is_outward() {
    Random random = new Random(5);
    for (int i = 0; i < 20_000; i++) {
      double share = random.nextBoolean() ? random.nextDouble() : random.nextDouble() / 50;
      assertThat(value(new Chance(share).atMost()))
          .as("seed 5: " + share)
          .isGreaterThanOrEqualTo(share - 1e-8);
      assertThat(value(new Chance(share).atLeast()))
          .as("seed 5: " + share)
          .isLessThanOrEqualTo(share + 1e-8);
    }
  }

  private static double value(String words) {
    Matcher matcher = WORDS.matcher(words);
    if (matcher.matches()) {
      return Double.parseDouble(matcher.group(1)) / Double.parseDouble(matcher.group(2));
    }
    return words.equals("all") ? 1 : 0;
  }

  @Test
  void what_is_no_share_is_refused() {
    assertThatThrownBy(() -> new Chance(1.1)).hasMessage("a chance of 1.1");
    assertThatThrownBy(() -> new Chance(Double.NaN)).hasMessage("a chance of NaN");
  }
}
