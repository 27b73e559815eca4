package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Databases that could not be used: where they go, and the lines that can still be had of them. */
final class SetAside {
  static final String FOLDER = "aside";

  private final Path place;

  private SetAside(Path place) {
    this.place = place;
  }

  /** The database and what SQLite keeps beside it. */
  static List<Path> files(Path folder) {
    Path database = folder.resolve(Opening.DATABASE);
    return Stream.concat(Database.files(database).stream(), Stream.of(new Seal(database).file()))
        .filter(Files::exists)
        .toList();
  }

  /** Moves the database into a new folder of its own. */
  static SetAside move(Path folder, Medium medium) throws IOException {
    Path place = free(folder);
    medium.folder(place);
    move(folder, place, medium);
    return new SetAside(place);
  }

  /**
   * As {@link #move}, with a copy of the journals before: a log of its own, as it was, for the
   * program that made it.
   */
  static SetAside moveWithJournals(Path folder, Medium medium) throws IOException {
    Path place = free(folder);
    Path copies = place.resolve(Opening.JOURNALS);
    try {
      new Mirror(folder.resolve(Opening.JOURNALS), copies, medium).copy();
    } catch (IOException e) {
      for (Path copy : JournalFiles.in(copies)) {
        Files.delete(copy);
      }
      Files.deleteIfExists(copies);
      Files.deleteIfExists(place);
      throw e;
    }
    move(folder, place, medium);
    return new SetAside(place);
  }

  private static Path free(Path folder) {
    Path aside = folder.resolve(FOLDER);
    int count = 1;
    while (Files.exists(aside.resolve(String.valueOf(count)))) {
      count++;
    }
    return aside.resolve(String.valueOf(count));
  }

  private static void move(Path folder, Path place, Medium medium) throws IOException {
    for (Path file : files(folder)) {
      Files.move(file, place.resolve(file.getFileName()));
    }
    medium.forceFolder(place);
    medium.forceFolder(folder);
  }

  Path place() {
    return place;
  }

  /** All that were ever set aside in a log's folder, the newest last. */
  static List<SetAside> in(Path folder) throws IOException {
    Path aside = folder.resolve(FOLDER);
    if (!Files.isDirectory(aside)) {
      return List.of();
    }
    try (Stream<Path> places = Files.list(aside)) {
      return places
          .filter(place -> place.getFileName().toString().matches("[0-9]{1,9}"))
          .filter(place -> Files.exists(place.resolve(Opening.DATABASE)))
          .sorted(Comparator.comparingInt(SetAside::number))
          .map(SetAside::new)
          .toList();
    }
  }

  private static int number(Path place) {
    return Integer.parseInt(place.getFileName().toString());
  }

  /** Reads its lines, as far as it can be read: from a copy, SQLite may write to what it opens. */
  DatabaseLines.Read lines(DatabaseLines.Taker taker) throws IOException, SQLException {
    try (WorkFolder work = WorkFolder.make()) {
      return DatabaseLines.read(work.copyOfDatabase(place.resolve(Opening.DATABASE)), taker);
    }
  }
}
