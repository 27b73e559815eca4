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

  /** Lines read from an old database at a time. */
  private static final int BATCH = 500;

  private record OldLine(long row, String raw) {}

  private final Path place;
  private final List<String> notices = new ArrayList<>();

  private SetAside(Path place) {
    this.place = place;
  }

  /** The database and what SQLite keeps beside it. */
  static List<Path> files(Path folder) {
    return Stream.of("", "-wal", "-shm", "-journal", Seal.SUFFIX)
        .map(end -> folder.resolve(Opening.DATABASE + end))
        .filter(Files::exists)
        .toList();
  }

  /** Moves the database into a new folder of its own. */
  static SetAside move(Path folder, Medium medium) throws IOException {
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
    return new SetAside(place);
  }

  Path place() {
    return place;
  }

  /**
   * Takes the lines no journal holds out of the database set aside, as far as it can be read, and
   * tells what came of it. A copy is read: SQLite may write to what it opens.
   */
  List<String> salvage(Intake intake) throws IOException, SQLException {
    Path copy = Files.createTempDirectory(place, "reading");
    try {
      for (Path file : files(place)) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
      int saved = takeIn(copy.resolve(Opening.DATABASE), intake);
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

  private int takeIn(Path file, Intake intake) throws SQLException {
    int saved = 0;
    int read = 0;
    List<OldLine> some = List.of();
    do {
      long after = some.isEmpty() ? Long.MIN_VALUE : some.get(some.size() - 1).row();
      some = linesAfter(after, file, read);
      read += some.size();
      saved += intake.take(some.stream().map(OldLine::raw).toList());
    } while (!some.isEmpty());
    return saved;
  }

  private List<OldLine> linesAfter(long row, Path file, int read) {
    try (Database old = Database.open(file)) {
      return old.list(
          line -> new OldLine(line.getLong(1), line.getString(2)),
          "SELECT rowid, coalesce(raw, '') FROM op WHERE rowid > ?1 ORDER BY rowid LIMIT ?2",
          row,
          BATCH);
    } catch (SQLException e) {
      notices.add(
          "The database set aside could be read as far as line " + read + ": " + e.getMessage());
      return List.of();
    }
  }
}
