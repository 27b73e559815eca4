package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import padside.fact.Fault;

/**
 * Opens the database of a log and brings it up to the journals. One that cannot be used is set
 * aside and built anew.
 */
final class Opening {
  static final String DATABASE = "padside.sqlite";
  static final String JOURNALS = "journal";

  /** Meta key: {@code 1} while nothing was written since the log was last closed in order. */
  static final String CLEAN = "clean";

  /** A database closed in order is checked through, where its seal is broken, up to this size. */
  private static final long ALWAYS_CHECKED_BYTES = Seal.LARGEST_BYTES;

  /** Up to this size, some 300 flights with every field filled, a check takes in the content. */
  private static final long CONTENT_CHECKED_BYTES = 4L << 20;

  /** Journals as long as this are worth a way of writing of its own where the tables are empty. */
  private static final long MUCH_BYTES = 4L << 20;

  private static final long SMALLEST_DATABASE_BYTES = 512;

  private final Path folder;
  private final Path file;
  private final Path journals;
  private final Medium medium;
  private final Seal seal;
  private final List<String> notices = new ArrayList<>();
  private boolean sealed;
  private boolean checkedThrough;

  /** An open database with every journal line in it. */
  record Opened(Database database, LogTables tables, FlightSearch search, List<String> notices) {
    Opened {
      notices = List.copyOf(notices);
    }
  }

  /**
   * Of a log.
   *
   * @param place the folder the database lies in: the log's own, or that of a copy
   * @param folder the log's, with the journals
   */
  Opening(Path place, Path folder, Medium medium) {
    this.folder = place;
    this.file = place.resolve(DATABASE);
    this.journals = folder.resolve(JOURNALS);
    this.medium = medium;
    this.seal = new Seal(file);
  }

  /**
   * Opens the database.
   *
   * @param doubted true to check it through whatever its size
   */
  Opened open(boolean doubted) throws IOException, SQLException, Fault {
    if (!Files.exists(file)) {
      seal.lift();
      if (!SetAside.files(folder).isEmpty()) {
        SetAside.move(folder, medium); // a WAL without its database
      }
    }
    sealed = !doubted && seal.fits();
    medium.file(file);
    long bytes = Files.size(file);
    if (bytes > 0 && bytes < SMALLEST_DATABASE_BYTES) {
      return anew(noDatabase("it is " + bytes + " bytes long"));
    }
    String unusable;
    try {
      Database database = Database.open(file);
      try {
        Optional<String> found = unusable(database, doubted);
        if (found.isEmpty()) {
          return fill(database);
        }
        unusable = found.get();
        database.close();
      } catch (SQLException | IOException | Fault | RuntimeException e) {
        closeQuietly(database);
        throw e;
      }
    } catch (SQLException e) {
      unusable = damage(e);
    }
    return anew(unusable);
  }

  private Optional<String> unusable(Database database, boolean doubted) throws SQLException, Fault {
    Schema.Found found = Schema.look(database, file);
    database.toWrite();
    if (found == Schema.Found.EMPTY) {
      Schema.make(database);
    }
    if (found == Schema.Found.CURRENT && !sealed) {
      boolean inOrder = LogTables.meta(database, CLEAN).equals(Optional.of("1"));
      if (doubted || !inOrder || isUpTo(ALWAYS_CHECKED_BYTES)) {
        return damage(database).map(damage -> "it is damaged (" + damage + ")");
      }
    }
    return found.unusable();
  }

  private Optional<String> damage(Database database) throws SQLException {
    Optional<String> damage = Schema.damage(database);
    if (damage.isPresent() || !isUpTo(CONTENT_CHECKED_BYTES) || Schema.isUnfilled(database)) {
      return damage;
    }
    checkedThrough = true;
    Differences found = Rebuilt.differences(database);
    return found.none() ? Optional.empty() : Optional.of(found.words());
  }

  private boolean isUpTo(long bytes) {
    return file.toFile().length() <= bytes;
  }

  /** What SQLite says of a file that is no sound log; any other failure is passed on. */
  private String damage(SQLException e) throws IOException, SQLException, Fault {
    if (isNoDatabase(e)) {
      return noDatabase(e.getMessage());
    }
    int code = e.getErrorCode() & 0xff;
    if (code == SQLiteErrorCode.SQLITE_CORRUPT.code || code == SQLiteErrorCode.SQLITE_ERROR.code) {
      return "it is damaged (" + e.getMessage() + ")";
    }
    throw e;
  }

  static boolean isNoDatabase(SQLException e) {
    return (e.getErrorCode() & 0xff) == SQLiteErrorCode.SQLITE_NOTADB.code;
  }

  /** Where there are journals it was the log's once; where there are none it is somebody's. */
  private String noDatabase(String seen) throws IOException, Fault {
    if (JournalFiles.in(journals).isEmpty()) {
      throw Schema.foreign(file);
    }
    return "it is damaged (" + seen + ")";
  }

  /** Sets the database aside and builds it anew. */
  Opened anew(String why) throws IOException, SQLException {
    setAside(why);
    medium.file(file);
    Database database = Database.open(file);
    try {
      database.toWrite();
      Schema.make(database);
      return fill(database);
    } catch (SQLException | IOException | RuntimeException e) {
      closeQuietly(database);
      throw e;
    }
  }

  /** What an older version made is kept whole before it is built anew for this one. */
  private void setAside(String why) throws IOException {
    boolean whole =
        Schema.Found.OLDER.unusable().equals(Optional.of(why)) && journals.startsWith(folder);
    SetAside aside =
        whole ? SetAside.moveWithJournals(folder, medium) : SetAside.move(folder, medium);
    notices.add(
        "The database was set aside in "
            + aside.place()
            + ": "
            + why
            + (whole ? "; the journals as they were are kept with it." : "."));
  }

  /** Journals first; into tables made just now also what only databases set aside still hold. */
  private Opened fill(Database database) throws IOException, SQLException {
    boolean unfilled = Schema.isUnfilled(database);
    if (unfilled) {
      Schema.empty(database); // an earlier filling may have been cut off
    }
    boolean much = unfilled && JournalFiles.bytes(journals) >= MUCH_BYTES;
    if (much) {
      Schema.beginFilling(database);
    }
    LogTables tables = new LogTables(database);
    boolean bare = database.number("SELECT EXISTS (SELECT 1 FROM op)") == 0;
    Intake intake = new Intake(journals, database, tables);
    Intake.Taken taken = checkedThrough ? intake.takeInAgain() : intake.takeIn();
    List<String> salvaged =
        unfilled ? new Salvage(folder, journals, medium).into(database, intake) : List.of();
    database.begin();
    tell(BadLine.settled(taken.bad(), database));
    notices.addAll(taken.notices());
    tell(taken, bare);
    notices.addAll(salvaged);
    KindViews.refresh(database);
    if (!much) {
      Schema.noteFilled(database);
    }
    database.commit();
    if (much) {
      Schema.endFilling(database);
    }
    return new Opened(database, tables, new FlightSearch(database), notices);
  }

  private void tell(List<BadLine> lost) {
    for (BadLine line : lost) {
      notices.add(
          "Skipped a line of journal "
              + line.file()
              + " at byte "
              + line.at()
              + ": "
              + line.why()
              + ".");
    }
  }

  private void tell(Intake.Taken taken, boolean bare) {
    if (bare && taken.lines() > 0) {
      notices.add(
          "The database was built from "
              + taken.lines()
              + " lines of "
              + taken.files()
              + " journals.");
    } else if (taken.lines() > 0) {
      notices.add("Taken in from the journals: " + taken.lines() + " lines the database lacked.");
    }
  }

  private static void closeQuietly(Database database) {
    try {
      database.close();
    } catch (SQLException e) {
      // The failure that led here is the one to tell.
    }
  }
}
