package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;

/**
 * A database in a work folder, built from lines wherever they stand: what a log ought to show. Its
 * lines are in the order they were taken, those of the journals first.
 */
final class Rebuilt implements AutoCloseable {
  private final Database database;
  private final LogTables tables;

  private Rebuilt(Database database) throws SQLException {
    this.database = database;
    Schema.make(database);
    this.tables = new LogTables(database);
  }

  static Rebuilt in(WorkFolder work) throws SQLException {
    return in(work.file("rebuilt.sqlite"));
  }

  /** In a file that is not there yet. */
  static Rebuilt in(Path file) throws SQLException {
    Database database = Database.open(file);
    try {
      database.script("PRAGMA synchronous = OFF");
      return new Rebuilt(database);
    } catch (SQLException e) {
      database.close();
      throw e;
    }
  }

  /**
   * In what the records of a database are not what its own lines say: they are put into empty
   * tables in memory once more, which takes about a millisecond a flight.
   */
  static Differences differences(Database database) throws SQLException {
    try (Rebuilt again = new Rebuilt(Database.inMemory())) {
      again.take(raws(database));
      return Differences.ofContent(database, again.database);
    }
  }

  private static List<String> raws(Database database) throws SQLException {
    return database.list(row -> String.valueOf(row.getString(1)), "SELECT raw FROM op");
  }

  /** Every line taken so far. */
  List<String> raws() throws SQLException {
    return raws(database);
  }

  Database database() {
    return database;
  }

  /** Takes in the journals in a folder; asked first, and once. */
  Intake.Taken journals(Path folder) throws IOException, SQLException {
    return new Intake(folder, database, tables).takeIn();
  }

  /** Takes in one journal that may belong to another log; what cannot be read is told. */
  List<BadLine> journal(Path journal) throws IOException, SQLException {
    return new Intake(Path.of(""), database, tables).takeInOne(journal).bad();
  }

  /** Copies what was taken so far into a new file that can be used as a log's database. */
  void writeTo(Path file) throws SQLException {
    database.begin();
    Schema.noteFilled(database);
    LogTables.setMeta(database, Opening.CLEAN, "1");
    KindViews.refresh(database);
    database.commit();
    database.copyTo(file);
  }

  /** Takes in the sound ones among lines that stand anywhere and answers how many they are. */
  int take(List<String> raws) throws SQLException {
    return new Intake(Path.of(""), database, tables).take(raws);
  }

  /** The lines taken so far. */
  long lines() throws SQLException {
    return database.number("SELECT count(*) FROM op");
  }

  /** Reads the whole lines of a journal that belongs to no log, or to another one. */
  static void read(Path journal, DatabaseLines.Taker taker) throws IOException, SQLException {
    JournalFiles.read(
        journal,
        0,
        new JournalFiles.Reader<SQLException>() {
          @Override
          public void line(long at, long next, ByteBuffer bytes) throws SQLException {
            taker.take(List.of(StandardCharsets.UTF_8.decode(bytes).toString()));
          }

          @Override
          public void torn(long at, ByteBuffer bytes) {
            // Half a line is no line.
          }
        });
  }

  /**
   * How a database differs from this one, once it has read the journals; nobody else may use it.
   *
   * @return in plain words; nothing when every line, record and cell is the same
   */
  Differences against(Path copy, Path journals) throws IOException, SQLException {
    try (Database other = Database.open(copy)) {
      other.script("PRAGMA synchronous = OFF");
      new Intake(journals, other, new LogTables(other)).takeIn();
      other.begin();
      KindViews.refresh(other);
      other.commit();
    }
    return Differences.between(database, copy);
  }

  @Override
  public void close() throws SQLException {
    database.close();
  }
}
