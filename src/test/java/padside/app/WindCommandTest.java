package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The wind meter's lines on the command line. */
class WindCommandTest {
  @TempDir Path folder;

  @Test
  void each_reading_tells_what_they_come_to_and_others_are_counted() {
    Ran ran = Ran.of("hello\nwind 4 m/s 270\n\u001b[2J\nwind 6 m/s 270\n", "wind");

    assertThat(ran.status()).isEqualTo(Exit.DONE);
    assertThat(ran.out().lines())
        .hasSize(2)
        .last()
        .asString()
        .contains("from W", "too few readings yet to tell a gust");
    assertThat(ran.err()).contains("2 lines").doesNotContain("\u001b");
  }

  @Test
  void no_reading_at_all_is_one_sentence() {
    Ran ran = Ran.of("x".repeat(100_000) + "\n", "wind");

    assertThat(ran.status()).isEqualTo(Exit.FAULT);
    assertThat(ran.err()).contains("only 1 other line.").doesNotContain("Exception");
  }

  @Test
  void a_source_that_is_not_there_is_one_sentence() {
    Ran ran = Ran.of("", "wind", folder.resolve("gone").toString());

    assertThat(ran.status()).isEqualTo(Exit.FAULT);
    assertThat(ran.err()).contains("gone", "plugged in");
  }

  @Test
  void a_file_is_read_as_well() throws IOException {
    Path lines = Files.writeString(folder.resolve("lines"), "wind 3 m/s 090\n");

    assertThat(Ran.of("", "wind", lines.toString()).out()).contains("from E");
  }

  @Test
  void made_up_lines_can_be_read_back() {
    Ran made = Ran.of("", "wind", "--simulate", "--lines", "2", "--seed", "3");

    assertThat(made.out().lines()).hasSize(2);
    assertThat(Ran.of(made.out(), "wind").status()).isEqualTo(Exit.DONE);
  }

  @Test
  void minutes_out_of_range_are_refused() {
    assertThat(Ran.of("", "wind", "--minutes", "0").status()).isEqualTo(Exit.USAGE);
  }
}
