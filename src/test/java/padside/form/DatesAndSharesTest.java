package padside.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DatesAndSharesTest {
  /** Complete calendar dates as ISO 8601-1:2019, 5.2.2.1 writes them. */
  @Test
  void dates_are_read_as_the_standard_writes_them() {
    Dates dates = new Dates();

    assertThat(dates.read(" 2026-05-02 ").value()).contains(LocalDate.of(2026, 5, 2));
    assertThat(dates.read(dates.show(LocalDate.of(2024, 2, 29))).value())
        .contains(LocalDate.of(2024, 2, 29));
    assertThat(dates.read("2 May").objection())
        .contains("\"2 May\" is not a date; type it like 2026-05-02.");
    assertThat(dates.read("2025-02-29").value()).as("no leap year").isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"55%,0.55", "55,0.55", "0.55,0.55", "'0,55',0.55", "100 %,1", "0,0", "1%,0.01"})
  void shares_are_read_in_percent_or_as_fractions(String typed, double share) {
    assertThat(new Share().read(typed).value().orElseThrow()).isEqualTo(share);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "1.0", "101", "120%", "wet", "-5"})
  void other_shares_are_refused_with_an_example(String typed) {
    assertThat(new Share().read(typed).objection().orElseThrow())
        .endsWith("type it like 55% or 0.55.");
  }

  @Test
  void shares_survive_show_then_read() {
    Share notation = new Share();

    assertThat(notation.show(0.555)).isEqualTo("55.5%");
    for (double share : new double[] {0, 0.01, 0.5, 0.555, 1}) {
      assertThat(notation.read(notation.show(share)).value()).contains(share);
    }
  }
}
