package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flights of the made-up season looked for on the command line. */
class FlightsCommandTest {
  @TempDir static Path home;

  @BeforeAll
  static void write() throws Exception {
    DemoFolder.write(home.resolve("season"));
  }

  private static Ran run(String... arguments) {
    List<String> line = new ArrayList<>(List.of(arguments));
    line.add(0, "flights");
    line.addAll(1, List.of("--log", home.resolve("season").toString()));
    return Ran.of("", line.toArray(String[]::new));
  }

  private static List<Map<String, Object>> found(String... arguments) throws IOException {
    List<String> line = new ArrayList<>(List.of(arguments));
    line.addAll(List.of("--json", "--limit", "1000"));
    List<Map<String, Object>> found = new ArrayList<>();
    for (Object each : JSON.std.listFrom(run(line.toArray(String[]::new)).out())) {
      Map<String, Object> flight = new java.util.LinkedHashMap<>();
      ((Map<?, ?>) each).forEach((key, value) -> flight.put(String.valueOf(key), value));
      found.add(flight);
    }
    return found;
  }

  @Test
  void a_rocket_is_found_by_its_name_as_word_as_filter_and_as_option() throws IOException {
    List<Map<String, Object>> whistle = found("rocket:whistle");

    assertThat(whistle).isNotEmpty();
    assertThat(whistle).extracting(each -> each.get("rocket_name")).containsOnly("Tin Whistle");
    assertThat(found("--rocket", "tin whistle")).isEqualTo(whistle);
    assertThat(found("--rocket", "WHIST")).isEqualTo(whistle);
    assertThat(found("\"tin whistle\"")).isEqualTo(whistle);
    assertThat(found("tin", "whistle")).isEqualTo(whistle);
    assertThat(found("--text", "whistle")).isEqualTo(whistle);
  }

  @Test
  void options_and_filters_of_the_line_narrow_each_other_down() throws IOException {
    List<Map<String, Object>> all = found();
    List<Map<String, Object>> motor = found("--motor", "c6");
    List<Map<String, Object>> both = found("motor:c6", "--outcome", "late");

    assertThat(motor).hasSizeBetween(1, all.size() - 1);
    assertThat(motor)
        .allSatisfy(each -> assertThat(String.valueOf(each.get("motor"))).contains("C6"));
    assertThat(both).isEqualTo(found("--motor", "c6", "outcome:late"));
    assertThat(both).hasSizeLessThan(motor.size());
  }

  @Test
  void a_date_may_be_a_day_a_month_or_a_year() throws IOException {
    String first = String.valueOf(found().get(0).get("date"));
    String month = first.substring(0, "2026-05".length());

    assertThat(found("--date", first)).extracting(each -> each.get("date")).containsOnly(first);
    assertThat(found("on:" + month)).isEqualTo(found("--from", month, "--to", month)).isNotEmpty();
    assertThat(found("--to", "2019")).isEmpty();
    assertThat(run("--to", "2019").out()).isEqualTo("No flights.\n");
  }

  @Test
  void what_is_more_than_asked_for_is_said() {
    assertThat(run("--limit", "3").out().lines())
        .hasSize(4)
        .last()
        .asString()
        .matches("The newest 3 of \\d+; --limit shows more\\.");
  }

  @Test
  void flights_with_open_fixes_are_found() throws IOException {
    assertThat(found("open")).isEqualTo(found("--open")).isNotEmpty();
    assertThat(found("open").size()).isLessThan(found().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--date tomorrow|on: takes a date, a month or a year such as 2026-05-02",
        "from:2026-02-30|not \"2026-02-30\"",
        "rokcet:lark|There is no filter \"rokcet:\"; there are rocket: motor:",
        "--rocket nobody|There is no rocket called \"nobody\" in this log; leave --rocket out",
        "--field nowhere|There is no field called \"nowhere\" in this log",
      })
  void what_cannot_be_looked_for_is_told_in_a_sentence_with_status_two(String line, String told) {
    Ran ran = run(line.split(" "));

    assertThat(ran.err()).contains(told);
    assertThat(ran.status()).isEqualTo(Exit.USAGE);
  }
}
