package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.store.FolderCopy;

/** A rocket typed in, backed up on leaving, lost with the log and brought back from the stick. */
class BackupIT {
  @TempDir Path folder;

  private PadTable pad;
  private Path stick;

  @BeforeEach
  void a_stick_in_the_settings() throws IOException {
    pad = new PadTable(folder, 80, 24);
    stick = Files.createDirectories(folder.resolve("stick"));
    pad.setting("clock = trusted", "backup.second = ~/stick");
  }

  @AfterEach
  void clearTable() {
    pad.close();
  }

  @Test
  void what_was_typed_comes_back_from_the_stick() throws IOException {
    pad.launch("");
    pad.sees("No day is open yet.");
    pad.quit();
    assertThat(stick).as("nothing was saved").isEmptyDirectory();

    addRocketAndLeave();
    assertThat(pad.tmux().lines()).anyMatch(line -> line.startsWith("Backing up ... kept in "));
    assertThat(names(stick.resolve("padside-backup"))).hasSize(2).contains("journal");
    assertThat(names(folder.resolve("data/padside/backups/padside-backup"))).hasSize(2);
    List<String> before = pad.sqlite("SELECT name, mass_kg FROM rocket");
    FolderCopy.delete(pad.log());

    assertThat(pad.padside("restore", stick.toString(), "--dry-run").out())
        .contains("To be brought: ");
    assertThat(pad.log()).doesNotExist();
    PadTable.Ran restored = pad.padside("restore", stick.toString());
    assertThat(restored.status()).as(restored.err()).isZero();
    assertThat(pad.sqlite("SELECT name, mass_kg FROM rocket")).isEqualTo(before);
    assertThat(pad.padside("backup", "--json").out())
        .contains("\"well\" : true", "\"fault\" : null");
  }

  @Test
  void without_the_stick_the_first_backup_stands_and_one_sentence_says_so() throws IOException {
    Files.delete(stick);
    addRocketAndLeave();

    assertThat(String.join("", pad.tmux().lines()))
        .contains(
            "Backing up ... kept in ", "stick for a backup is not there.", "Put the medium in");
    PadTable.Ran again = pad.padside("backup");
    assertThat(again.status()).isEqualTo(Exit.FAULT);
    assertThat(again.out()).contains("Nothing new; read back: ");
    assertThat(again.err()).contains("is not there");
    assertThat(stick).doesNotExist();
  }

  private void addRocketAndLeave() {
    pad.launch("");
    pad.sees("No day is open yet.");
    pad.press("f");
    pad.sees("No rockets yet.");
    pad.press("n");
    pad.sees("Body diameter");
    pad.fields("Sparrow", "1.3oz");
    pad.press("F2");
    pad.seesLine("Sparrow", "1.3 oz");
    pad.quit();
  }

  private static List<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
