package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  @TempDir Path folder;

  private WholeFile file() {
    return new WholeFile(folder, "place");
  }

  @Test
  void the_last_text_written_is_read_until_it_is_removed() throws IOException {
    assertThat(file().read()).isEmpty();
    file().write("fleet");
    file().write("log · é");
    assertThat(file().read()).contains("log · é");
    assertThat(folder)
        .isDirectoryContaining("glob:**/place")
        .isDirectoryNotContaining("glob:**.new");

    file().remove();
    file().remove();
    assertThat(file().read()).isEmpty();
  }

  @Test
  void nobody_but_its_owner_can_read_it() throws IOException {
    file().write("fleet");

    assertThat(Files.getPosixFilePermissions(folder.resolve("place")))
        .isEqualTo(PosixFilePermissions.fromString("rw-------"));
  }

  @Test
  void a_write_broken_off_leaves_the_text_before_and_does_not_hinder_the_next() throws IOException {
    file().write("fleet");
    Files.writeString(folder.resolve("place.new"), "lo");

    assertThat(file().read()).contains("fleet");
    file().write("log");
    assertThat(file().read()).contains("log");
  }

  @Test
  void what_was_not_written_here_is_as_if_it_were_missing() throws IOException {
    Files.write(folder.resolve("place"), new byte[] {(byte) 0xc3, 0x28});
    assertThat(file().read()).isEmpty();
    Files.write(folder.resolve("place"), new byte[WholeFile.MOST_BYTES + 1]);
    assertThat(file().read()).isEmpty();
    Files.delete(folder.resolve("place"));
    Files.createDirectory(folder.resolve("place"));
    assertThat(file().read()).isEmpty();
  }
}
