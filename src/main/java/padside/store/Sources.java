package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import padside.fact.Fault;

/**
 * Where lines of a log may stand outside it: journals and databases in a log's folder, a backup or
 * a stick.
 */
record Sources(List<Path> journals, List<Path> databases) {
  private static final String DATABASE_END = ".sqlite";

  Sources {
    journals = List.copyOf(journals);
    databases = List.copyOf(databases);
  }

  /**
   * Those in a folder, its backup and the journals below either; or the one file named.
   *
   * @throws Fault {@code no-source} when there is nothing to read
   */
  static Sources in(Path place) throws Fault {
    Sources found = anyIn(place);
    if (found.journals.isEmpty() && found.databases.isEmpty()) {
      throw unreadable(
          place, Files.exists(place) ? "there is neither journal nor database" : "it is not there");
    }
    return found;
  }

  /** As {@link #in}, where there may be none. */
  static Sources anyIn(Path place) throws Fault {
    List<Path> journals = new ArrayList<>();
    List<Path> databases = new ArrayList<>();
    try {
      if (Files.isRegularFile(place)) {
        (place.toString().endsWith(JournalFiles.SUFFIX) ? journals : databases).add(place);
      }
      for (Path folder : List.of(place, place.resolve(Mirror.FOLDER))) {
        journals.addAll(JournalFiles.in(folder));
        journals.addAll(JournalFiles.in(folder.resolve(Opening.JOURNALS)));
        databases.addAll(databases(folder));
      }
    } catch (IOException e) {
      throw unreadable(place, LogFaults.reason(e));
    }
    return new Sources(journals, databases);
  }

  private static Fault unreadable(Path place, String why) {
    return new Fault(
        "no-source",
        "Nothing can be read from " + place + ": " + why + ".",
        "Name a log's folder, a backup's folder or one of its files.");
  }

  /** By name, so that of snapshots the newest comes first. */
  private static List<Path> databases(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(DATABASE_END))
          .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .sorted(Comparator.comparingLong(Snapshot::numberOf).reversed())
          .toList();
    }
  }

  /** Reads one journal. */
  interface JournalReader {
    void read(Path journal) throws IOException, SQLException;
  }

  /** As below, of journals only the lines that end. */
  List<String> read(WorkFolder work, DatabaseLines.Taker taker) throws SQLException {
    return read(work, journal -> Rebuilt.read(journal, taker), taker);
  }

  /**
   * Reads all lines of the journals, and of the databases up to the first that is sound: older
   * snapshots hold nothing a sound newer one lacks, unless that one is called partial.
   *
   * @return what could not be read, in plain words
   */
  List<String> read(WorkFolder work, JournalReader reader, DatabaseLines.Taker taker)
      throws SQLException {
    List<String> unread = new ArrayList<>();
    for (Path journal : journals) {
      try {
        reader.read(journal);
      } catch (IOException e) {
        unread.add(journal + " cannot be read: " + LogFaults.reason(e) + ".");
      }
    }
    for (Path database : databases) {
      try {
        DatabaseLines.Read read = DatabaseLines.read(work.copyOfDatabase(database), taker);
        if (!read.whole()) {
          unread.add(database + " can be read in part only: " + read.words() + ".");
        } else if (!Snapshot.of(database).map(Snapshot::partial).orElse(false)) {
          break;
        }
      } catch (IOException e) {
        unread.add(database + " cannot be read: " + LogFaults.reason(e) + ".");
      }
    }
    return unread;
  }
}
