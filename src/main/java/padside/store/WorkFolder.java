package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder outside every log, gone when closed: for copies of databases and for what is only made
 * to be looked at.
 */
final class WorkFolder implements AutoCloseable {
  private final Path folder;
  private int copies;

  private WorkFolder(Path folder) {
    this.folder = folder;
  }

  static WorkFolder make() throws IOException {
    return new WorkFolder(Files.createTempDirectory("padside-"));
  }

  Path file(String name) {
    return folder.resolve(name);
  }

  /**
   * Copies a database with what SQLite keeps beside it. No connection of this program may be open
   * on it: reading its file would drop the connection's locks.
   */
  Path copyOfDatabase(Path database) throws IOException {
    copies++;
    Path copy = folder.resolve("copy-" + copies + ".sqlite");
    for (Path file : Database.files(database)) {
      String end =
          file.getFileName().toString().substring(database.getFileName().toString().length());
      if (!end.equals("-shm")) { // an index of the WAL, made anew from it
        Files.copy(file, copy.resolveSibling(copy.getFileName() + end));
      }
    }
    return copy;
  }

  @Override
  public void close() throws IOException {
    delete(folder);
  }

  /** Deletes a folder and all in it. */
  static void delete(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      List<Path> deepestFirst = walk.sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.deleteIfExists(path);
      }
    }
  }
}
