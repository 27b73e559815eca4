package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;

/**
 * The database of a log while the log is open: its own or a copy, opened anew when it fails. One
 * transaction may stay open while nothing can be written.
 */
final class LogDatabase {
  /** With less room than this on the medium only the journal is written, not the database. */
  private static final long ROOM_BYTES = 2L << 20;

  private final Path folder;
  private final Medium medium;
  private final Filling filling;
  private final List<String> notices;

  /** Where a copy may lie; absent where only the log's own database will do. */
  private final Optional<Path> temporary;

  private boolean own;
  private Optional<ReadingCopy> copy = Optional.empty();
  private Optional<Opening.Opened> open = Optional.empty();
  private boolean inTransaction;
  private boolean inFilling;

  /** Puts into a database just opened what no file holds. */
  interface Filling {
    void fill(Opening.Opened opened) throws SQLException;
  }

  /**
   * Of the log in a folder.
   *
   * @param notices gets what is found and mended
   */
  LogDatabase(
      Path folder, Medium medium, Optional<Path> temporary, List<String> notices, Filling filling) {
    this.folder = folder;
    this.medium = medium;
    this.temporary = temporary;
    this.notices = notices;
    this.filling = filling;
  }

  /** From now on the log's own database is used, which this program holds. */
  void useOwn() {
    discard();
    copy.ifPresent(ReadingCopy::delete);
    copy = Optional.empty();
    own = true;
  }

  /** Does the work; when the database fails it is opened and checked anew, and tried once more. */
  <T> T with(LogQueries.Work<T> work) throws Fault {
    try {
      return work.on(opened(false));
    } catch (SQLException e) {
      discard();
    }
    try {
      return work.on(opened(true));
    } catch (SQLException e) {
      discard();
      throw LogFaults.unreadable(folder, e);
    }
  }

  /**
   * Begins a transaction, or goes on in the one that is open, from where {@link #takeBack} leads
   * to.
   *
   * @return true when one was open
   */
  boolean begin(Opening.Opened log) throws SQLException {
    boolean within = inTransaction;
    if (!within) {
      log.database().begin();
      inTransaction = true;
    }
    log.database().mark();
    return within;
  }

  /**
   * Before the first of perhaps very many lines: where no record is in the tables yet they are
   * filled in a way that is fast and, cut off, has the next start build them from the journals.
   */
  void beginFilling(Opening.Opened log) throws SQLException {
    if (!inFilling
        && !inTransaction
        && log.database().number("SELECT EXISTS (SELECT 1 FROM record)") == 0) {
      Schema.beginFilling(log.database());
      inFilling = true;
    }
  }

  /** Ends that, once all there was to come has come. */
  void endFilling(Opening.Opened log) throws SQLException {
    if (inFilling && !inTransaction) {
      Schema.endFilling(log.database());
      inFilling = false;
    }
  }

  /**
   * What was put into the tables last is taken out of them again.
   *
   * @param within what {@link #begin} answered
   */
  void takeBack(boolean within) {
    try {
      if (within) {
        open.orElseThrow().database().backToMark();
      } else {
        open.orElseThrow().database().rollback();
        inTransaction = false;
      }
      open.orElseThrow().tables().forget();
    } catch (SQLException e) {
      discard();
    }
  }

  /** Nothing of what is put in from now on goes to the medium before it is committed. */
  void keepInMemory() throws SQLException {
    open.orElseThrow().database().keepInMemory();
  }

  /** What is in the journal is kept; a database that fails now is read anew from it. */
  void commit(OwnJournal.End end) {
    Database database = open.orElseThrow().database();
    try {
      Intake.note(database, end, end.bytes());
      if (!hasRoom()) {
        database.keepInMemory(); // a commit that fails would take what is in the tables with it
        return;
      }
      database.commit();
      inTransaction = false;
    } catch (SQLException | IOException e) {
      discard();
    }
  }

  private boolean hasRoom() throws IOException {
    return copy.isPresent() || medium.room(folder) >= ROOM_BYTES;
  }

  /**
   * Closes the database and marks it as closed in order.
   *
   * @param all false when something is in the tables that is in no journal
   */
  void close(boolean all) {
    boolean inOrder = false;
    try {
      if (open.isPresent() && copy.isEmpty() && all && (!inTransaction || hasRoom())) {
        closeInOrder(open.get().database());
        inOrder = true;
      }
    } catch (SQLException | IOException e) {
      // Every save is in the journal; the next start looks closer.
    } finally {
      discard();
      if (inOrder) {
        new Seal(folder.resolve(Opening.DATABASE)).set(medium);
      }
      copy.ifPresent(ReadingCopy::delete);
    }
  }

  private void closeInOrder(Database database) throws SQLException {
    if (inTransaction) {
      database.commit();
      inTransaction = false;
    }
    if (inFilling) {
      Schema.endFilling(database);
      inFilling = false;
    }
    if (!LogTables.meta(database, Opening.CLEAN).equals(Optional.of("1"))) {
      LogTables.setMeta(database, Opening.CLEAN, "1");
    }
  }

  private Opening.Opened opened(boolean doubted) throws Fault {
    if (open.isEmpty()) {
      try {
        Opening.Opened opened = ownOrCopy(doubted);
        notices.addAll(opened.notices());
        open = Optional.of(opened);
        filling.fill(opened);
      } catch (IOException | SQLException e) {
        throw LogFaults.unreadable(folder, e);
      }
    }
    return open.get();
  }

  private Opening.Opened ownOrCopy(boolean doubted) throws IOException, SQLException, Fault {
    if (own && copy.isEmpty()) {
      try {
        return new Opening(folder, folder, medium).open(doubted);
      } catch (IOException | SQLException e) {
        if (temporary.isEmpty() || e instanceof NoLibraryException) {
          throw e;
        }
        notices.add(
            "The database cannot be used ("
                + LogFaults.reason(e)
                + "); a copy is shown meanwhile, and the journal goes on.");
      }
    }
    if (copy.isEmpty()) {
      copy = Optional.of(ReadingCopy.of(folder, temporary.orElseThrow()));
    }
    return new Opening(copy.get().place(), folder, new Medium()).open(true);
  }

  private void discard() {
    inTransaction = false;
    inFilling = false;
    if (open.isPresent()) {
      try {
        open.get().database().close();
      } catch (SQLException e) {
        // The connection is given up anyhow; the journal holds what was kept.
      }
      open = Optional.empty();
    }
  }
}
