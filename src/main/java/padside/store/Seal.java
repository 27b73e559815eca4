package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HexFormat;
import java.util.zip.CRC32C;

/**
 * The size of the database and a sum over all its bytes as they were when it was closed, kept
 * beside it. While it fits, no bit has turned over since: what was written after is in the WAL,
 * which has sums of its own. It is looked at only while nobody has the database open, as closing a
 * second look at the file would drop SQLite's locks.
 */
final class Seal {
  private static final String SUFFIX = "-sum";

  /** A larger database is neither sealed nor looked at: that would take time on a slow card. */
  static final long LARGEST_BYTES = 32L << 20;

  private static final int BLOCK = 1 << 16;

  private final Path database;
  private final Path seal;

  Seal(Path database) {
    this.database = database;
    this.seal = database.resolveSibling(database.getFileName() + SUFFIX);
  }

  /** What the sum is kept in. */
  Path file() {
    return seal;
  }

  /** True when the database is, byte for byte, as it was closed. */
  boolean fits() {
    try {
      return Files.exists(seal) && Files.size(seal) < BLOCK && Files.readString(seal).equals(sum());
    } catch (IOException e) {
      return false; // what cannot be read says nothing; the database is looked through
    }
  }

  /** Seals the database, which was just closed; one that cannot be is looked through next time. */
  void set(Medium medium) {
    try {
      if (Files.size(database) <= LARGEST_BYTES) {
        medium.file(seal);
        Files.writeString(seal, sum());
      } else {
        lift();
      }
    } catch (IOException e) {
      lift();
    }
  }

  /** Takes the seal away. */
  void lift() {
    try {
      Files.deleteIfExists(seal);
    } catch (IOException e) {
      return; // it does not fit any other database
    }
  }

  private String sum() throws IOException {
    CRC32C sum = new CRC32C();
    ByteBuffer block = ByteBuffer.allocate(BLOCK);
    long bytes = 0;
    try (FileChannel file = FileChannel.open(database, StandardOpenOption.READ)) {
      if (file.size() > LARGEST_BYTES) {
        return "";
      }
      while (file.read(block) > 0) {
        bytes += block.flip().remaining();
        sum.update(block);
        block.clear();
      }
    }
    return bytes + " " + HexFormat.of().toHexDigits((int) sum.getValue()) + "\n";
  }
}
