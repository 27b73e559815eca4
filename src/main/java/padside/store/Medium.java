package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** What files lie on. Makes files nobody but their owner can read, where owners are known. */
class Medium {
  private static final String UNFINISHED = ".new";
  private static final int BLOCK = 1 << 16;

  private static final boolean OWNERS =
      FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

  /** Makes a folder and those above it that are missing, and their names last. */
  void folder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Path above = folder.toAbsolutePath().getParent();
      if (!Files.exists(above)) {
        folder(above);
      }
      Files.createDirectories(folder, owner("rwx------"));
      nameLasts(above);
    }
  }

  private void nameLasts(Path above) {
    try {
      forceFolder(above);
    } catch (IOException e) {
      return; // a folder of somebody else's that may be entered and not read
    }
  }

  /** Makes an empty file when it is missing. */
  void file(Path file) throws IOException {
    if (!Files.exists(file)) {
      Files.createFile(file, owner("rw-------"));
    }
  }

  /** Makes a new file to write to; fails when it exists. */
  FileChannel fresh(Path file) throws IOException {
    return FileChannel.open(
        file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), owner("rw-------"));
  }

  /** Writes all there is from a place in a file on; answers where that ends. */
  static long write(FileChannel file, ByteBuffer bytes, long from) throws IOException {
    long at = from;
    while (bytes.hasRemaining()) {
      at += file.write(bytes, at);
    }
    return at;
  }

  /** Fills a file that was just made. */
  interface Filling {
    void fill(FileChannel file) throws IOException;
  }

  /** Writes a file under another name, forces it and then gives it its own: all of it or none. */
  void whole(Path file, Filling filling) throws IOException {
    whole(file, file.resolveSibling(file.getFileName() + UNFINISHED), filling);
  }

  /** As {@link #whole(Path, Filling)}, under a name given. */
  void whole(Path file, Path unfinished, Filling filling) throws IOException {
    Files.deleteIfExists(unfinished);
    try {
      try (FileChannel channel = fresh(unfinished)) {
        filling.fill(channel);
        channel.force(true);
      }
      Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      try {
        Files.deleteIfExists(unfinished);
      } catch (IOException left) {
        e.addSuppressed(left);
      }
      throw e;
    }
  }

  /** Copies a file, all of it or none. */
  void copy(Path from, Path to) throws IOException {
    whole(
        to,
        copy -> {
          ByteBuffer block = ByteBuffer.allocate(BLOCK);
          long at = 0;
          try (FileChannel file = FileChannel.open(from, StandardOpenOption.READ)) {
            while (file.read(block) > 0) {
              at = write(copy, block.flip(), at);
              block.clear();
            }
          }
        });
  }

  /** Makes the names in a folder last; where a folder cannot be forced there is no need to. */
  void forceFolder(Path folder) throws IOException {
    if (OWNERS) {
      try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
        names.force(true);
      }
    }
  }

  /**
   * Bytes that can still be written where a folder lies. Java's file stores want a table of mounts,
   * which a bare system may lack.
   */
  long room(Path folder) throws IOException {
    return folder.toFile().getUsableSpace();
  }

  private static FileAttribute<?>[] owner(String permissions) {
    return OWNERS
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        }
        : new FileAttribute<?>[0];
  }
}
