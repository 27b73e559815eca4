package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two logs brought together on the command line. */
class SyncCommandTest {
  @TempDir Path folder;
  private Path stick;

  @BeforeEach
  void two_logs_and_a_stick() throws IOException {
    stick = Files.createDirectory(folder.resolve("stick"));
    add("pad", "Heron");
    add("desktop", "Wren");
  }

  @Test
  void over_a_stick_and_back_by_naming_it_once() throws IOException {
    assertThat(sync("pad", stick.toString()).out())
        .isEqualTo("Synchronised with " + stick + ": 2 lines went there, 0 lines came.\n");
    Ran ran = sync("desktop", "--yes", "--json", stick.toString());
    assertThat(ran.status()).isZero();
    assertThat(ran.json())
        .containsEntry("place", stick.toString())
        .containsEntry("out", 2)
        .containsEntry("in", 2)
        .containsEntry("later", 0)
        .containsEntry("told", List.of());
    assertThat(ran.err()).matches("padside: New to this log: .+ \\([0-9a-f]{20}\\), 2 lines\n");
    assertThat(sync("pad", "--yes").out())
        .isEqualTo("Synchronised with " + stick + ": 0 lines went there, 2 lines came.\n");
    assertThat(sync("pad").out())
        .isEqualTo("Synchronised with " + stick + ": 0 lines went there, 0 lines came.\n");
  }

  @Test
  void where_nobody_can_be_asked_strangers_are_named_and_nothing_moves() throws IOException {
    sync("pad", stick.toString());
    Ran ran = sync("desktop", stick.toString());
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .contains("padside: New to this log: ")
        .contains("padside: Lines of machines new to this log would come, and nobody can be asked;")
        .contains("say --yes");
    assertThat(sync("desktop", "--dry-run", stick.toString()).out())
        .isEqualTo("To " + stick + " would go 2 lines, and 2 lines would come.\n");
  }

  @Test
  void everything_in_one_file_and_out_of_it_again() {
    Path bundle = folder.resolve("all.parcel");
    assertThat(sync("pad", "--bundle", bundle.toString()).out())
        .isEqualTo("2 lines are in " + bundle + ".\n");
    assertThat(sync("desktop", "--yes", bundle.toString()).out())
        .isEqualTo("Synchronised with " + bundle + ": 0 lines went there, 2 lines came.\n");
    Ran again = sync("pad", "--bundle", bundle.toString());
    assertThat(again.status()).isEqualTo(1);
    assertThat(again.err()).startsWith("padside: " + bundle + " is there already.\n");
  }

  @Test
  void what_cannot_be_done_is_told_in_a_sentence() throws IOException {
    assertThat(sync("pad").status()).isEqualTo(2);
    assertThat(sync("pad").err()).startsWith("padside: This log was never synchronised;");
    Ran missing = sync("pad", folder.resolve("none").toString());
    assertThat(missing.status()).isEqualTo(1);
    assertThat(missing.err()).startsWith("padside: There is no folder " + folder.resolve("none"));
    Path text = Files.writeString(folder.resolve("letter.txt"), "Dear all\n");
    Ran none = sync("pad", text.toString());
    assertThat(none.status()).isEqualTo(1);
    assertThat(none.err())
        .startsWith("padside: " + text + " is no bundle of Padside: its head is damaged.\n");
    assertThat(sync("pad", "--bundle", "x", stick.toString()).status()).isEqualTo(2);
  }

  @Test
  void what_two_machines_say_differently_is_counted() throws IOException {
    sync("pad", stick.toString());
    sync("desktop", "--yes", stick.toString());
    sync("pad", "--yes");
    String heron = Ran.of("{\"name\":\"Heron\"}", rocket("pad")).out().strip();
    sync("pad");
    sync("desktop");
    Ran.of("{\"id\":\"" + heron + "\",\"note\":\"fin loose\"}", rocket("pad"));
    Ran.of("{\"id\":\"" + heron + "\",\"note\":\"fin glued\"}", rocket("desktop"));
    assertThat(sync("pad", "--json").json()).containsEntry("conflicts", 0);

    assertThat(sync("desktop").err())
        .isEqualTo(
            "padside: Machines say different things of 1 record; r on the Day screen chooses.\n");
    assertThat(sync("desktop", "--json").json()).containsEntry("conflicts", 1);
  }

  private String[] rocket(String log) {
    return new String[] {"add", "rocket", "--log", folder.resolve(log).toString()};
  }

  private void add(String log, String rocket) {
    Ran ran = Ran.of("{\"name\":\"" + rocket + "\"}", rocket(log));
    assertThat(ran.status()).as(ran.err()).isZero();
  }

  private Ran sync(String log, String... more) {
    List<String> arguments = new ArrayList<>(List.of("sync", "--log"));
    arguments.add(folder.resolve(log).toString());
    arguments.addAll(List.of(more));
    return Ran.of("", arguments.toArray(String[]::new));
  }
}
