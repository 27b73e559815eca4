package padside.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.clock.Anchor;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Operation;

/** The log in one folder, held for this program until it is closed. */
public final class LogFolder implements FlightLog {
  /** A reading or writing of the database. */
  private interface Work<T> {
    T on(Opening.Opened log) throws SQLException, Fault;
  }

  private final Path folder;
  private final Medium medium;
  private final LogLock lock;
  private final OwnJournal journal;
  private final RunLines lines;
  private final List<String> notices = new ArrayList<>();
  private Optional<Opening.Opened> open = Optional.empty();
  private boolean headerKept;

  private LogFolder(
      Path folder, Machine machine, Medium medium, LogLock lock, OwnJournal.Forced forced) {
    this.folder = folder;
    this.medium = medium;
    this.lock = lock;
    this.lines = new RunLines(machine);
    this.journal = new OwnJournal(folder.resolve(Opening.JOURNALS), medium, lines.run(), forced);
  }

  /**
   * Opens the log in a folder, which is made when missing, and takes it for this program.
   *
   * @throws Fault {@code log-folder} when the folder cannot be made or written, {@code log-in-use},
   *     {@code log-newer}, {@code log-foreign}, {@code log-unreadable}
   */
  public static LogFolder open(Path folder, Machine machine) throws Fault {
    return open(folder, machine, new Medium());
  }

  /**
   * As {@link #open} for a log that is worth nothing until it is whole, such as one written aside
   * and then renamed: what is saved is on the medium once the log is closed, and not before.
   */
  public static LogFolder openToFill(Path folder, Machine machine) throws Fault {
    return open(folder, machine, new Medium(), OwnJournal.Forced.AT_THE_END);
  }

  static LogFolder open(Path folder, Machine machine, Medium medium) throws Fault {
    return open(folder, machine, medium, OwnJournal.Forced.AT_ONCE);
  }

  static LogFolder open(Path folder, Machine machine, Medium medium, OwnJournal.Forced forced)
      throws Fault {
    LogLock lock;
    try {
      medium.folder(folder);
      medium.folder(folder.resolve(Opening.JOURNALS));
      lock = LogLock.take(folder, medium, machine.identity());
    } catch (IOException e) {
      throw new Fault(
          "log-folder",
          "The folder " + folder + " cannot be used for the log: " + reason(e) + ".",
          "Make it writable, or name another folder.",
          e);
    }
    LogFolder log = new LogFolder(folder, machine, medium, lock, forced);
    try {
      log.database(false);
      return log;
    } catch (Fault | RuntimeException e) {
      log.letGo();
      throw e;
    }
  }

  /** True when a log has been begun in a folder. */
  public static boolean isIn(Path folder) {
    return Files.isDirectory(folder.resolve(Opening.JOURNALS));
  }

  /** What was found and mended since the log was opened, in plain words; mostly nothing. */
  public List<String> notices() {
    return List.copyOf(notices);
  }

  @Override
  public List<RecordId> save(Action action) throws Fault {
    return action.changes().isEmpty() ? List.of() : with(log -> keep(log, action));
  }

  @Override
  public List<Stored> list(Kind kind) throws Fault {
    return with(log -> new Records(log.database()).list(kind));
  }

  /** The record, one marked as removed included. */
  @Override
  public Optional<Stored> find(Kind kind, RecordId id) throws Fault {
    return with(log -> new Records(log.database()).find(kind, id));
  }

  @Override
  public List<Stored> flights(FlightQuery query) throws Fault {
    return with(log -> new Records(log.database()).flights(query));
  }

  @Override
  public List<Stored> lastFlightOfEachRocket() throws Fault {
    return with(log -> new Records(log.database()).lastFlightOfEachRocket());
  }

  @Override
  public Map<RecordId, Integer> firedByLot() throws Fault {
    return with(log -> new Records(log.database()).firedByLot());
  }

  @Override
  public List<Stored> removed(Kind kind) throws Fault {
    return with(log -> new Records(log.database()).removed(kind));
  }

  @Override
  public List<Operation> history(Kind kind, RecordId id) throws Fault {
    List<Anchor> anchors = anchors();
    return with(log -> new History(log.database(), anchors).of(kind, id));
  }

  @Override
  public List<Stamp> stamps(String boot) throws Fault {
    return with(log -> new Stamps(log.database()).of(boot));
  }

  @Override
  public Optional<Moment> newest() throws Fault {
    return with(
        log -> {
          RunHeaders headers = new RunHeaders(log.database());
          Optional<JournalLine> line = log.tables().newest();
          return line.isPresent() ? Optional.of(headers.moment(line.get())) : Optional.empty();
        });
  }

  @Override
  public List<Use> uses() throws Fault {
    return with(log -> new Records(log.database()).uses());
  }

  @Override
  public void close() throws Fault {
    try {
      if (open.isPresent()) {
        Database database = open.get().database();
        if (!LogTables.meta(database, Opening.CLEAN).equals(Optional.of("1"))) {
          LogTables.setMeta(database, Opening.CLEAN, "1");
        }
        database.close();
      }
    } catch (SQLException e) {
      discard(); // every save is in the journal; the next start looks closer
    } finally {
      open = Optional.empty();
      letGo();
    }
  }

  /**
   * Begin; put the line into the tables, where it is checked; append it to the journal, which is
   * the moment it is kept; commit.
   */
  private List<RecordId> keep(Opening.Opened log, Action action) throws SQLException, Fault {
    RunLines.Entry header = lines.header(log.database(), log.tables());
    RunLines.Entry entry = lines.next(log.tables(), action);
    log.database().begin();
    if (!headerKept) {
      log.tables().take(header.line(), header.raw());
      lines.noteBegun(log.database());
      LogTables.setMeta(log.database(), Opening.CLEAN, "0");
    }
    log.tables().take(entry.line(), entry.raw());
    log.tables().show();
    commit(log, append(log, (headerKept ? "" : header.raw() + "\n") + entry.raw() + "\n"));
    return entry.ids();
  }

  private OwnJournal.End append(Opening.Opened log, String text) throws Fault {
    try {
      OwnJournal.End end = journal.append(text);
      headerKept = true;
      return end;
    } catch (IOException e) {
      rollback(log);
      throw notKept(e);
    }
  }

  private Fault notKept(IOException e) {
    return new Fault(
        "log-not-kept",
        "NOT SAVED: the medium with " + folder + " refused the journal: " + reason(e) + ".",
        "Free some space or change the medium, then save again; it is still on the screen.",
        e);
  }

  private void rollback(Opening.Opened log) {
    try {
      log.database().rollback();
    } catch (SQLException e) {
      discard();
    }
  }

  /** What is in the journal is kept; a database that fails now is read anew from it. */
  private void commit(Opening.Opened log, OwnJournal.End end) {
    try {
      Intake.note(log.database(), end, end.bytes());
      log.database().commit();
    } catch (SQLException e) {
      discard();
    }
  }

  /** Does the work; when the database fails it is opened and checked anew, and tried once more. */
  private <T> T with(Work<T> work) throws Fault {
    try {
      return work.on(database(false));
    } catch (SQLException e) {
      discard();
    }
    try {
      return work.on(database(true));
    } catch (SQLException e) {
      discard();
      throw unreadable(e);
    }
  }

  private Opening.Opened database(boolean doubted) throws Fault {
    if (open.isEmpty()) {
      try {
        Opening.Opened opened = new Opening(folder, medium).open(doubted);
        lines.claim(opened.database());
        notices.addAll(opened.notices());
        open = Optional.of(opened);
      } catch (IOException | SQLException e) {
        throw unreadable(e);
      }
    }
    return open.get();
  }

  private Fault unreadable(Exception e) {
    return new Fault(
        "log-unreadable",
        "The log in " + folder + " cannot be read: " + reason(e) + ".",
        "Close other programs that use it and check the medium; the journals hold what was kept.",
        e);
  }

  private void discard() {
    if (open.isPresent()) {
      try {
        open.get().database().close();
      } catch (SQLException e) {
        // The connection is given up anyhow; the journal holds what was kept.
      }
      open = Optional.empty();
    }
  }

  private void letGo() throws Fault {
    discard();
    try (lock) {
      journal.close();
    } catch (IOException e) {
      throw notKept(e);
    }
  }

  /** What the operating system or SQLite said, without the file's name, which stands before it. */
  private static String reason(Exception e) {
    if (e instanceof AccessDeniedException) {
      return "access is denied";
    }
    if (e instanceof FileSystemException file && file.getReason() != null) {
      return file.getReason();
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }
}
