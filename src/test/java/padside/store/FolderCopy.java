package padside.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A log's folder as it stands, copied whole to be damaged or looked into. */
public final class FolderCopy {
  private FolderCopy() {}

  /** Copies everything in a folder, a log that is open included, as a kill would leave it. */
  public static Path of(Path folder, Path to) throws IOException {
    for (Path from : within(folder)) {
      Path place = to.resolve(folder.relativize(from));
      if (Files.isDirectory(from)) {
        Files.createDirectories(place);
      } else {
        Files.copy(from, place);
      }
    }
    return to;
  }

  /** Deletes a folder and all in it. */
  public static void delete(Path folder) {
    try {
      for (Path each : within(folder).stream().sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> within(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.sorted().toList();
    }
  }
}
