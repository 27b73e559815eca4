package padside.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padside.search.Search.Filter;
import padside.search.Search.Part;

class SearchTest {
  @Test
  void a_line_is_words_filters_and_open() {
    assertThat(read("  Tree \"tied  Down\" ROCKET:lark on:2026-05 open LOT:\"a 3\" 9:30"))
        .isEqualTo(
            new Search(
                List.of("tree", "tied  down", "9:30"),
                List.of(
                    new Filter(Part.ROCKET, "lark"),
                    new Filter(Part.ON, "2026-05"),
                    new Filter(Part.LOT, "a 3")),
                true));
  }

  @Test
  void nothing_typed_asks_for_everything() {
    assertThat(read(" ")).isEqualTo(Search.ALL);
    assertThat(read("rocket:").isAll()).as("its value is being typed").isTrue();
    assertThat(read("\"").isAll()).isTrue();
  }

  @Test
  void quotes_make_words_of_what_would_ask_for_something_else() {
    assertThat(read("\"open\" \"note:this\" tied\"up and\"").words())
        .containsExactly("open", "note:this", "tiedup and");
  }

  /** Unicode Standard Annex 15: NFKD takes é apart; SpecialCasing.txt: ß is SS in capitals. */
  @ParameterizedTest
  @CsvSource({"Äpfel,apfel", "STRASSE,strasse", "Straße,strasse", "Éclair,eclair", "ﬁn,fin", "Å,a"})
  void letter_case_and_accents_make_no_difference(String typed, String folded) {
    assertThat(Folding.of(typed)).isEqualTo(folded);
    assertThat(Folding.of(folded)).as("twice is as once").isEqualTo(folded);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2",
        "20",
        "2026",
        "2026-",
        "2026-0",
        "2026-1",
        "2026-05",
        "2026-05-",
        "2026-05-3",
        "2026-05-31",
        "2024-02-29"
      })
  void a_date_may_be_typed_in_part(String typed) {
    assertThat(Search.read("on:" + typed).objection()).isEmpty();
  }

  /** ISO 8601: months 01 to 12, days as the month has them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "yesterday",
        "2026-13",
        "2026-00",
        "2026-04-31",
        "2026-02-30",
        "02.05.2026",
        "26-1"
      })
  void what_is_no_date_is_refused_with_what_is_one(String typed) {
    assertThat(Search.read("from:" + typed).objection())
        .contains(
            "from: takes a date, a month or a year such as 2026-05-02, 2026-05 or 2026, not \""
                + typed
                + "\".");
  }

  @Test
  void a_filter_there_is_not_is_refused_with_those_there_are() {
    assertThat(Search.read("rokcet:lark").objection())
        .contains(
            "There is no filter \"rokcet:\"; there are rocket: motor: lot: field: outcome: on: from:"
                + " to: and open. Quotes around it look for it as a word.");
  }

  @Test
  void more_than_anybody_types_is_refused() {
    assertThat(Search.read("a ".repeat(Search.MOST)).value()).isPresent();
    assertThat(Search.read("a ".repeat(Search.MOST + 1)).objection())
        .contains("That is 21 words and filters; 20 are the most.");
  }

  @Test
  void filters_are_told_in_words() {
    assertThat(read("tree rocket:Lark from:2026 open").filtersTold())
        .isEqualTo("rocket \"lark\", from 2026, open fixes");
    assertThat(read("tree").filtersTold()).isEmpty();
  }

  private static Search read(String line) {
    return Search.read(line).value().orElseThrow();
  }
}
