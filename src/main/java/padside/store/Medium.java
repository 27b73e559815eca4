package padside.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** What files lie on. Makes files nobody but their owner can read, where owners are known. */
class Medium {
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

  /** Makes the names in a folder last; where a folder cannot be forced there is no need to. */
  void forceFolder(Path folder) throws IOException {
    if (OWNERS) {
      try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
        names.force(true);
      }
    }
  }

  /** Bytes that can still be written where a folder lies. */
  long room(Path folder) throws IOException {
    return Files.getFileStore(folder).getUsableSpace();
  }

  private static FileAttribute<?>[] owner(String permissions) {
    return OWNERS
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        }
        : new FileAttribute<?>[0];
  }
}
