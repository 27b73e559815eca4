package padside.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes lines no journal holds into new journals: {@code RUN-K.jsonl} with the next K that is
 * free. Journals that are there are never changed.
 */
final class Mending {
  private final Path journals;
  private final Medium medium;
  private final int first;

  Mending(Path journals, Medium medium) {
    this(journals, medium, 1);
  }

  private Mending(Path journals, Medium medium, int first) {
    this.journals = journals;
    this.medium = medium;
    this.first = first;
  }

  /** One that also gives a run the name of its first journal back, where that is free. */
  static Mending restoring(Path journals, Medium medium) {
    return new Mending(journals, medium, 0);
  }

  /** Where the lines of a database end that stand in journals; what comes later does not. */
  static long mark(Database database) throws SQLException {
    return database.number("SELECT max(rowid) FROM op");
  }

  /** How many lines came after the mark. */
  static int count(Database database, long mark) throws SQLException {
    return (int) database.number("SELECT count(*) FROM op WHERE rowid > ?1", mark);
  }

  /** Writes the lines after the mark; when this returns they are on the medium. */
  List<OwnJournal.End> write(Database database, long mark) throws IOException, SQLException {
    List<OwnJournal.End> written = new ArrayList<>();
    for (String run :
        database.list(
            row -> row.getString(1),
            "SELECT DISTINCT run.name FROM op JOIN run ON run.id = op.run"
                + " WHERE op.rowid > ?1 ORDER BY run.name",
            mark)) {
      written.add(write(run, lines(database, mark, run)));
    }
    if (!written.isEmpty()) {
      medium.forceFolder(journals);
    }
    return written;
  }

  private static List<String> lines(Database database, long mark, String run) throws SQLException {
    return database.list(
        row -> row.getString(1) + "\n",
        "SELECT raw FROM op JOIN run ON run.id = op.run"
            + " WHERE op.rowid > ?1 AND run.name = ?2 ORDER BY n",
        mark,
        run);
  }

  private OwnJournal.End write(String run, List<String> lines) throws IOException {
    Path journal = free(run);
    medium.whole(
        journal,
        file -> {
          long at = 0;
          for (String line : lines) {
            at = Medium.write(file, StandardCharsets.UTF_8.encode(line), at);
          }
        });
    return new OwnJournal.End(journal.getFileName().toString(), Files.size(journal));
  }

  private Path free(String run) {
    int count = first;
    while (Files.exists(journal(run, count))) {
      count++;
    }
    return journal(run, count);
  }

  private Path journal(String run, int count) {
    return journals.resolve(run + (count == 0 ? "" : "-" + count) + JournalFiles.SUFFIX);
  }
}
