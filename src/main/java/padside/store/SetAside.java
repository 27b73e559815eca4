package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Databases that could not be used: where they go, and the lines that can still be had of them. */
final class SetAside {
  private static final String FOLDER = "aside";

  private SetAside() {}

  /** The database and what SQLite keeps beside it. */
  static List<Path> files(Path folder) {
    return Stream.of("", "-wal", "-shm", "-journal")
        .map(end -> folder.resolve(Opening.DATABASE + end))
        .filter(Files::exists)
        .toList();
  }

  /** Moves the database into a new folder of its own, which is answered. */
  static Path move(Path folder, Medium medium) throws IOException {
    Path aside = folder.resolve(FOLDER);
    int count = 1;
    while (Files.exists(aside.resolve(String.valueOf(count)))) {
      count++;
    }
    Path place = aside.resolve(String.valueOf(count));
    medium.folder(place);
    for (Path file : files(folder)) {
      Files.move(file, place.resolve(file.getFileName()));
    }
    medium.forceFolder(place);
    medium.forceFolder(folder);
    return place;
  }

  /**
   * Takes the lines no journal holds out of a database set aside, as far as it can be read. A copy
   * is read: SQLite may write to what it opens.
   */
  static List<String> salvage(Path aside, Database database, LogTables tables, Intake intake)
      throws IOException, SQLException {
    List<String> notices = new ArrayList<>();
    Path copy = Files.createTempDirectory(aside, "reading");
    try {
      for (Path file : files(aside)) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
      int saved = 0;
      database.begin();
      for (String raw : lines(copy.resolve(Opening.DATABASE), notices)) {
        saved += intake.take(raw) ? 1 : 0;
      }
      tables.show();
      database.commit();
      if (saved > 0) {
        notices.add("Recovered from the database set aside: " + saved + " lines no journal holds.");
      }
    } finally {
      for (Path file : files(copy)) {
        Files.deleteIfExists(file);
      }
      Files.deleteIfExists(copy);
    }
    return notices;
  }

  private static List<String> lines(Path file, List<String> notices) {
    List<String> lines = new ArrayList<>();
    try (Database old = Database.open(file)) {
      old.list(row -> lines.add(row.getString(1)), "SELECT raw FROM op ORDER BY rowid");
    } catch (SQLException e) {
      notices.add(
          "Of the database set aside "
              + lines.size()
              + " lines could be read, then: "
              + e.getMessage()
              + ".");
    }
    return lines;
  }
}
