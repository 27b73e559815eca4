package padside.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FlightWordsTest {
  /** The JDK's English names (Unicode CLDR), for every day of a leap year and some of others. */
  @Test
  void a_date_reads_as_the_jdk_writes_it_in_english() {
    DateTimeFormatter reference = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    assertThat(LocalDate.of(2028, 1, 1).datesUntil(LocalDate.of(2029, 1, 8)))
        .allSatisfy(date -> assertThat(FlightWords.date(date)).isEqualTo(reference.format(date)));
  }
}
