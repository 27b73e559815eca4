package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file that holds room on the log's medium: given up when the medium is full, so that some
 * thousand more entries find their place in the journal.
 */
final class Ballast {
  /** An entry takes some 300 bytes. */
  static final int BYTES = 1 << 20;

  /** Room that must be left beside it. */
  private static final long BESIDE_BYTES = 16L << 20;

  private static final String NAME = "ballast";
  private static final String LINE = "Padside: room kept for the log.\n";

  private final Path file;
  private final Medium medium;

  Ballast(Path folder, Medium medium) {
    this.file = folder.resolve(NAME);
    this.medium = medium;
  }

  /** Lays it down where it is missing and there is room; what hinders that is of no account. */
  void lay() {
    if (Files.exists(file)) {
      return;
    }
    try {
      if (medium.room(file.getParent()) >= BYTES + BESIDE_BYTES) {
        write();
      }
    } catch (IOException e) {
      release();
    }
  }

  private void write() throws IOException {
    try (FileChannel channel = medium.fresh(file)) {
      // Not zeros: some file systems take no room for those.
      ByteBuffer bytes = StandardCharsets.US_ASCII.encode(LINE.repeat(2048));
      while (channel.size() < BYTES) {
        channel.write(bytes.rewind(), channel.size());
      }
    }
  }

  /** Gives the room back; false when there was none to give. */
  boolean release() {
    try {
      return Files.deleteIfExists(file);
    } catch (IOException e) {
      return false;
    }
  }
}
