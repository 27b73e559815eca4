package padside.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import padside.fact.Fault;
import padside.store.LogFolder;

/** Where the made-up season is kept. */
final class DemoFolder {
  private DemoFolder() {}

  /**
   * Whether the season would still have to be written: a folder that holds anything is left alone.
   */
  static boolean isToBeWritten(Path season) throws Fault {
    if (!Files.isDirectory(season)) {
      return true;
    }
    try (Stream<Path> inside = Files.list(season)) {
      return inside.findAny().isEmpty();
    } catch (IOException e) {
      throw fault(season, e);
    }
  }

  /**
   * Writes the season aside and renames it, so that an interrupted writing leaves no half of it.
   */
  static void write(Path season) throws Fault {
    Path whole = season.toAbsolutePath().normalize();
    Path unfinished = whole.resolveSibling(whole.getFileName() + ".unfinished");
    try {
      clear(unfinished);
      try (LogFolder log = LogFolder.openToFill(unfinished, new ThisMachine())) {
        DemoSeason.write(log);
      }
      Files.move(unfinished, whole, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw fault(season, e);
    }
  }

  private static void clear(Path leftover) throws IOException {
    if (!Files.exists(leftover)) {
      return;
    }
    try (Stream<Path> walk = Files.walk(leftover)) {
      List<Path> deepestFirst = walk.sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.delete(path);
      }
    }
  }

  private static Fault fault(Path season, IOException e) {
    return new Fault(
        "demo-folder",
        "The made-up season cannot be kept in " + season + ": " + e.getMessage() + ".",
        "Make the folder writable, or name another with --log.",
        e);
  }
}
