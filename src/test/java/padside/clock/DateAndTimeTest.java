package padside.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateAndTimeTest {
  /** Five hours behind UTC while daylight saving time runs, until 1 November 2026 (IANA tz). */
  private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

  private static DateAndTime shown(String time) {
    Instant now = Instant.parse(time);
    return new DateAndTime(now, now, CHICAGO);
  }

  @ParameterizedTest
  @CsvSource({
    "14:32, 2026-10-17T19:32:00Z",
    "1432, 2026-10-17T19:32:00Z",
    "14.32, 2026-10-17T19:32:00Z",
    "932, 2026-10-17T14:32:00Z",
    "2:32 pm, 2026-10-17T19:32:00Z",
    "232pm, 2026-10-17T19:32:00Z",
    "12:05 am, 2026-10-17T05:05:00Z",
    "14:32:10, 2026-10-17T19:32:10Z",
    "18 Oct, 2026-10-18T15:07:30Z",
    "18 Oct 14:32, 2026-10-18T19:32:00Z",
    "October 18 14.32, 2026-10-18T19:32:00Z",
    "'Oct 18, 2027 14:32', 2027-10-18T19:32:00Z",
    "2026-11-02 14:32, 2026-11-02T20:32:00Z",
    "2026-11-02T14:32, 2026-11-02T20:32:00Z",
    "2 Jan, 2027-01-02T16:07:30Z",
    "29 Feb, 2028-02-29T16:07:30Z",
  })
  void what_is_left_out_is_as_the_clock_shows_it_or_comes_nearest(String typed, String meant) {
    assertThat(shown("2026-10-17T15:07:30Z").read(typed).value()).contains(Instant.parse(meant));
  }

  @Test
  void the_minute_that_shows_keeps_its_seconds() {
    assertThat(shown("2026-10-17T15:07:30Z").read("10:07").value())
        .contains(Instant.parse("2026-10-17T15:07:30Z"));
  }

  @Test
  void a_date_without_a_year_comes_nearest_to_the_newest_entry_where_the_clock_lies_behind() {
    Instant newest = Instant.parse("2026-10-10T15:00:00Z");
    DateAndTime notation = new DateAndTime(Instant.parse("1976-10-29T15:00:00Z"), newest, CHICAGO);
    assertThat(notation.read("17 Oct 14:32").value())
        .contains(Instant.parse("2026-10-17T19:32:00Z"));
  }

  @Test
  void a_time_alone_is_refused_where_the_clock_shows_a_year_that_cannot_be() {
    assertThat(shown("1970-01-01T15:07:30Z").read("14:32").objection().orElseThrow())
        .contains("1970", "2000 to 2099", "2026-10-17 14:32");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "noon",
        "25:00",
        "14:60",
        "13 pm",
        "31 Feb",
        "17 Okt 14:32",
        "1899-01-01",
        "7"
      })
  void what_is_no_date_or_time_is_refused_with_an_example(String typed) {
    assertThat(shown("2026-10-17T15:07:30Z").read(typed).objection().orElseThrow())
        .contains("2026-10-17 14:32");
  }

  @Test
  void what_is_shown_reads_back() {
    DateAndTime notation = shown("2026-10-17T15:07:30Z");
    Instant time = Instant.parse("2027-03-01T04:59:00Z");
    assertThat(notation.read(notation.show(time)).value()).contains(time);
  }
}
