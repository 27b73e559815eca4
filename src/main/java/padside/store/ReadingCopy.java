package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;

/**
 * A copy of a log's database in a folder of its own: for a log another program writes, or whose
 * medium cannot be written. The copy is of one moment: taken again until nothing changed meanwhile.
 * Only journals are read where the log lies itself.
 */
final class ReadingCopy {
  private static final int TRIES = 40;
  private static final long PAUSE_MS = 25;

  private final Path place;

  private record Seen(Path file, long bytes, FileTime changed) {}

  private ReadingCopy(Path place) {
    this.place = place;
  }

  /** Copies the database of a log; without one the copy is empty. */
  static ReadingCopy of(Path folder, Path temporary) throws IOException {
    ReadingCopy copy = new ReadingCopy(Files.createTempDirectory(temporary, "padside-reading-"));
    try {
      copy.take(folder);
      return copy;
    } catch (IOException | RuntimeException e) {
      copy.delete();
      throw e;
    }
  }

  /** The folder that holds the copy, and nothing else of the log. */
  Path place() {
    return place;
  }

  private void take(Path folder) throws IOException {
    for (int attempt = 1; attempt <= TRIES; attempt++) {
      List<Seen> before = seen(folder);
      for (Seen each : before) {
        Files.copy(
            each.file(),
            place.resolve(each.file().getFileName()),
            StandardCopyOption.REPLACE_EXISTING);
      }
      if (before.equals(seen(folder))) {
        return;
      }
      clear();
      pause();
    }
    // It never stood still: what the journals hold is read from them.
  }

  private static List<Seen> seen(Path folder) throws IOException {
    List<Seen> seen = new ArrayList<>();
    for (Path file : SetAside.files(folder)) {
      try {
        seen.add(new Seen(file, Files.size(file), Files.getLastModifiedTime(file)));
      } catch (NoSuchFileException e) {
        // Gone between the two looks.
      }
    }
    return seen;
  }

  private static void pause() {
    try {
      Thread.sleep(PAUSE_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void clear() throws IOException {
    for (Path file : SetAside.files(place)) {
      Files.delete(file);
    }
  }

  /** Deletes the copy, as far as it can be. */
  void delete() {
    try {
      WorkFolder.delete(place);
    } catch (IOException e) {
      // A temporary file that stays behind harms nobody; only its owner can read it.
    }
  }
}
