package padside.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padside.units.Notation;
import padside.units.Reading;

/** The notations that only forms need. */
class NotationsTest {
  private static <T> void survives(Notation<T> notation, T value) {
    assertThat(notation.read(notation.show(value)).value()).contains(value);
    assertThat(notation.read(notation.example()).value()).isPresent();
  }

  @Test
  void counts_are_whole_numbers() {
    Counts counts = new Counts(false);
    Counts corrections = new Counts(true);

    assertThat(counts.read(" 12 ").value()).contains(12);
    assertThat(corrections.read("-2").value()).contains(-2);
    assertThat(corrections.read("\u22122").value()).contains(-2);
    assertThat(corrections.read("+3").value()).contains(3);
    assertThat(counts.read("-2").objection())
        .contains("\"-2\" is below zero; type a count like 3.");
    assertThat(counts.read("two").objection())
        .contains("\"two\" is not a whole number; type it like 3.");
    assertThat(counts.read("12345678").value()).isEmpty();
    survives(counts, 7);
    survives(corrections, -7);
  }

  /** Calendar dates as ISO 8601-1:2019, 5.2.2 writes them, complete or of reduced precision. */
  @Test
  void dates_are_known_to_the_day_the_month_or_the_year() {
    DateText dates = new DateText();

    for (String date : List.of("2026-05-02", "2024-02-29", "2026-05", "2026")) {
      survives(dates, date);
    }
    for (String wrong :
        List.of("2026-13-01", "2025-02-29", "5/2/26", "May", "26-05-02", "2026-13")) {
      assertThat(dates.read(wrong).objection())
          .contains("\"" + wrong + "\" is not a date; type it like 2026-05-02, 2026-05 or 2026.");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0;3;5;P", "0, 3, 5, p", " 0 3  5 P "})
  void delays_are_seconds_or_plugged(String typed) {
    assertThat(new Delays().read(typed).value()).contains(List.of("0", "3", "5", "P"));
    survives(new Delays(), List.of("0", "3", "5", "P"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3;x", "3.5", "300", "3;;5"})
  void other_delays_are_refused_with_an_example(String typed) {
    assertThat(new Delays().read(typed).objection().orElseThrow()).contains("type them like 3;5;7");
  }

  @ParameterizedTest
  @CsvSource({
    "43.652,43.652",
    "43.652 N,43.652",
    "43.652s,-43.652",
    "-43.652,-43.652",
    "'43,652°',43.652",
    "90,90",
    "+0,0"
  })
  void latitudes_are_decimal_degrees(String typed, double degrees) {
    assertThat(Coordinate.LATITUDE.read(typed).value()).contains(degrees);
  }

  @Test
  void wrong_coordinates_are_told_apart() {
    assertThat(Coordinate.LATITUDE.read("91").objection())
        .contains("\"91\" is beyond 90 degrees; type a latitude like 43.652 or -43.652.");
    assertThat(Coordinate.LATITUDE.read("43 W").objection().orElseThrow())
        .startsWith("\"43 W\" is no latitude");
    assertThat(Coordinate.LONGITUDE.read("-79 W").objection().orElseThrow())
        .contains("has both a sign and a letter");
    assertThat(Coordinate.LONGITUDE.read("here").objection().orElseThrow())
        .contains("is not a number of degrees");
    assertThat(Coordinate.LONGITUDE.read("79.383W").value()).contains(-79.383);
    survives(Coordinate.LATITUDE, -43.65212);
    survives(Coordinate.LONGITUDE, 179.99999);
  }

  @Test
  void a_list_may_be_backed_by_a_notation_for_what_is_not_in_it() {
    Choices<Integer> choices =
        new Choices<>("count", List.of(new Choices.Option<>(3, "a pack of three", "")))
            .orElse(new Counts(false));

    assertThat(choices.read("a pack").value()).contains(3);
    assertThat(choices.read("12").value()).contains(12);
    assertThat(choices.read("box").objection().orElseThrow()).contains("not a whole number");
    assertThat(choices.show(3)).isEqualTo("a pack of three");
    assertThat(choices.show(12)).isEqualTo("12");
    assertThat(Reading.echo("x".repeat(99))).hasSizeLessThan(30);
  }
}
