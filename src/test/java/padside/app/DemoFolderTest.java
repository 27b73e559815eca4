package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Fault;
import padside.flight.Kind;
import padside.store.LogFolder;

class DemoFolderTest {
  @TempDir private Path folder;

  @Test
  void what_an_interrupted_writing_left_is_written_anew() throws Fault, IOException {
    Path season = folder.resolve("demo");
    Path leftover = folder.resolve("demo.unfinished");
    Files.createDirectories(leftover.resolve("journal"));
    Files.writeString(leftover.resolve("journal").resolve("half"), "{");

    assertThat(DemoFolder.isToBeWritten(season)).isTrue();
    DemoFolder.write(season);

    assertThat(leftover).doesNotExist();
    assertThat(DemoFolder.isToBeWritten(season)).isFalse();
    try (LogFolder log = LogFolder.open(season, new ThisMachine())) {
      assertThat(log.list(Kind.DAY)).hasSize(7);
      assertThat(log.notices()).isEmpty();
    }
  }

  @Test
  void an_empty_folder_is_filled_and_one_that_holds_anything_left_alone()
      throws Fault, IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Path own = Files.createDirectory(folder.resolve("own"));
    Files.writeString(own.resolve("notes.txt"), "mine");

    assertThat(DemoFolder.isToBeWritten(own)).isFalse();
    assertThat(DemoFolder.isToBeWritten(empty)).isTrue();
    DemoFolder.write(empty);
    assertThat(DemoFolder.isToBeWritten(empty)).isFalse();
  }

  @Test
  void a_folder_that_cannot_be_made_gets_a_sentence() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");

    assertThatThrownBy(() -> DemoFolder.write(file.resolve("demo")))
        .isInstanceOfSatisfying(
            Fault.class,
            fault -> {
              assertThat(fault.sentence()).contains(file.toString());
              assertThat(fault.nextStep()).isNotBlank();
            });
  }
}
