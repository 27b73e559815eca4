package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of the made-up season on the command line. */
class ReportCommandTest {
  @TempDir static Path home;

  @BeforeAll
  static void write() throws Exception {
    DemoFolder.write(home.resolve("season"));
  }

  private static Ran run(String... arguments) {
    List<String> line = new ArrayList<>(List.of(arguments));
    line.add(0, "report");
    line.addAll(1, List.of("--log", home.resolve("season").toString()));
    return Ran.of("", line.toArray(String[]::new));
  }

  @Test
  void text_comes_out_unless_something_else_is_asked() {
    Ran ran = run("season", "2026");

    assertThat(ran.status()).isZero();
    assertThat(ran.out()).startsWith("Season · 2026").contains("Flights: 47");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
    assertThat(run("season", "2026", "--html", "-").out()).startsWith("<!DOCTYPE html>");
  }

  /** The same flights as the log lists itself. */
  @Test
  void the_log_s_own_list_has_as_many_flights() {
    Ran listed =
        Ran.of("", "flights", "--log", home.resolve("season").toString(), "--limit", "1000");
    long flown = listed.out().lines().filter(line -> line.contains(" flown ")).count();

    assertThat(run("season", "2026").out()).contains("Flights: " + flown + "\n");
  }

  @Test
  void a_name_may_be_of_several_words() {
    assertThat(run("rocket", "tin", "whistle").out()).startsWith("Rocket history · Tin Whistle");
  }

  @Test
  void one_table_alone_is_plain_csv() {
    Ran all = run("season", "2026", "--csv", "-");
    Ran third = run("season", "2026", "--csv", "-", "--table", "1");

    assertThat(all.out()).startsWith("\"In figures\"\r\n\"What\",\"Told\"\r\n");
    assertThat(third.out()).startsWith("\"What\",\"Told\"\r\n");
    assertThat(run("season", "2026", "--csv", "-", "--table", "99").err())
        .contains("--table is 99", "tables");
  }

  @Test
  void a_file_that_is_there_is_replaced_only_when_asked() throws Exception {
    Path file = home.resolve("day.html");
    Files.writeString(file, "mine");

    Ran refused = run("day", "2026-05-30", "--html", file.toString());

    assertThat(refused.status()).isEqualTo(Exit.USAGE);
    assertThat(refused.err()).contains("already", "--replace");
    assertThat(file).hasContent("mine");
    assertThat(run("day", "2026-05-30", "--html", file.toString(), "--replace").status()).isZero();
    assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
  }

  @Test
  void wrong_input_is_one_sentence() {
    for (Ran ran :
        List.of(
            run("weekly"),
            run("rocket"),
            run("day", "tomorrow"),
            run("season", "2026-13-01"),
            run("day", "--table", "1"))) {
      assertThat(ran.status()).isEqualTo(Exit.USAGE);
      assertThat(ran.out()).isEmpty();
      assertThat(ran.err().lines().findFirst().orElse("")).endsWith(".");
    }
  }

  @Test
  void a_folder_that_is_not_there_is_a_fault() {
    Ran ran = run("cards", "--html", home.resolve("nowhere/cards.html").toString());

    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.err()).contains("cannot be written").doesNotContain("Exception");
  }
}
