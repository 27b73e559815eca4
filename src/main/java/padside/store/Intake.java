package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Takes the journal lines the tables lack into them. A journal whose size is the one last seen is
 * not read again.
 */
final class Intake {
  /** Lines put in before a commit. */
  private static final int BATCH = 2000;

  /** What came of it. */
  record Taken(int lines, int files, List<BadLine> bad, List<String> notices) {
    Taken {
      bad = List.copyOf(bad);
      notices = List.copyOf(notices);
    }
  }

  private final Path folder;
  private final Database database;
  private final LogTables tables;
  private final List<String> notices = new ArrayList<>();
  private final List<BadLine> bad = new ArrayList<>();

  /** Bad lines after the last sound one of the journal being read. */
  private final List<BadLine> since = new ArrayList<>();

  private Optional<OpId> before = Optional.empty();
  private int lines;
  private int files;
  private int future;
  private int inBatch;
  private String file = "";
  private long end;
  private boolean again;

  Intake(Path folder, Database database, LogTables tables) {
    this.folder = folder;
    this.database = database;
    this.tables = tables;
  }

  /** As {@link #takeIn()}, without trust in what the tables say was read already. */
  Taken takeInAgain() throws IOException, SQLException {
    again = true;
    return takeIn();
  }

  Taken takeIn() throws IOException, SQLException {
    for (Path journal : JournalFiles.in(folder)) {
      takeIn(journal);
    }
    if (future > 0) {
      notices.add(
          "Kept but not shown: "
              + future
              + " journal lines of a newer version; update Padside to see them.");
    }
    return new Taken(lines, files, bad, notices);
  }

  /** Takes in one journal, wherever it lies. */
  Taken takeInOne(Path journal) throws IOException, SQLException {
    again = true;
    takeIn(journal);
    return new Taken(lines, files, bad, notices);
  }

  private void takeIn(Path journal) throws IOException, SQLException {
    file = journal.getFileName().toString();
    long size = Files.size(journal);
    if (!again && seen().equals(Optional.of(size))) {
      return;
    }
    end = database.number("SELECT bytes FROM journal_file WHERE name = ?1", file);
    if (size < end) {
      notices.add(
          "Journal "
              + file
              + " is shorter than when it was last read; the log still holds its lines,"
              + " and padside doctor writes them to a new journal.");
      if (!again) {
        return;
      }
    }
    end = again ? 0 : end;
    int sofar = lines;
    before = Optional.empty();
    database.begin();
    try {
      new LinesAhead(this::take).read(journal, end);
    } catch (IOException e) {
      finish(end);
      throw e;
    }
    settle(Optional.empty());
    finish(size);
    files += lines > sofar ? 1 : 0;
  }

  /** Takes in lines that were kept elsewhere and answers how many of them are sound. */
  int take(List<String> raws) throws SQLException {
    database.begin();
    List<ReadyLine> lines =
        raws.parallelStream().flatMap(raw -> ReadyLine.read(raw).value().stream()).toList();
    for (ReadyLine line : lines) {
      tables.take(line);
    }
    tables.show();
    database.commit();
    return lines.size();
  }

  private void take(LinesAhead.Line read) throws SQLException {
    end = read.next();
    if (read.reading().value().isPresent()) {
      ReadyLine ready = read.reading().value().get();
      settle(Optional.of(ready.op()));
      if (tables.take(ready)) {
        lines++;
        future += ready.later() ? 1 : 0;
      }
    } else {
      bad(read.at(), read.reading().objection().orElseThrow(), read.bytes());
    }
    if (++inBatch >= BATCH) {
      finish(end);
      database.begin();
    }
  }

  private void bad(long at, String why, ByteBuffer bytes) throws SQLException {
    BadLine line = BadLine.of(file, at, why, bytes);
    boolean unknown = line.note(database);
    if (at == 0 && !file.contains(LogExchange.RECEIVED)) { // those there are of many runs
      before = Optional.of(new OpId("", -1));
    }
    if (unknown) {
      since.add(line);
    }
  }

  /** The bad lines before a sound one, or before the end of the journal. */
  private void settle(Optional<OpId> after) {
    since.forEach(line -> bad.add(line.between(before, after)));
    since.clear();
    before = after;
  }

  private void finish(long seen) throws SQLException {
    tables.show();
    note(database, new OwnJournal.End(file, end), seen);
    database.commit();
    inBatch = 0;
  }

  /** Notes how far a journal is in the tables; within the caller's transaction. */
  static void note(Database database, OwnJournal.End end, long seen) throws SQLException {
    database.run(
        "INSERT OR REPLACE INTO journal_file (name, bytes, seen) VALUES (?1, ?2, ?3)",
        end.file(),
        end.bytes(),
        seen);
  }

  private Optional<Long> seen() throws SQLException {
    return database.first(
        row -> row.getLong(1), "SELECT seen FROM journal_file WHERE name = ?1", file);
  }
}
