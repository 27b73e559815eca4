package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;

/**
 * The log in one folder, held for this program until it is closed. Where it cannot be had or
 * written it may be read from a copy; then, and while the medium refuses the journal, what is kept
 * waits in memory until it can be written.
 */
public final class LogFolder extends LogQueries {
  private static final List<String> READABLE_STILL = List.of("log-in-use", "log-folder");

  private final Path folder;
  private final Medium medium;
  private final Machine machine;
  private final RunLines lines;
  private final OwnJournal journal;
  private final Ballast ballast;
  private final Held held;
  private final LogDatabase database;
  private final List<String> notices = new ArrayList<>();
  private final LogExchange exchange;
  private Optional<LogLock> lock = Optional.empty();
  private Optional<Fault> refused = Optional.empty();
  private boolean headerKept;

  /**
   * What came of an action.
   *
   * @param onMedium false while it waits in memory; every reading shows it all the same
   */
  public record Kept(List<RecordId> records, boolean onMedium) {
    public Kept {
      records = List.copyOf(records);
    }
  }

  /**
   * Why the log's own medium does not take what is kept.
   *
   * @param reason the same in a few words
   * @param changes actions that wait
   * @param elsewhere the folder all that waits is kept in meanwhile
   * @param reading true when the log itself is not held by this program
   */
  public record Refusal(
      Fault fault, String reason, int changes, Optional<Path> elsewhere, boolean reading) {}

  /**
   * What is to be written, in order, the action's own line last.
   *
   * @param within whether the tables held something not written before it
   */
  private record Due(boolean within, List<RunLines.Entry> entries) {
    Due {
      entries = List.copyOf(entries);
    }

    List<RecordId> records() {
      return entries.get(entries.size() - 1).ids();
    }
  }

  private LogFolder(
      Path folder,
      Machine machine,
      Medium medium,
      OwnJournal.Forced forced,
      Optional<Path> temporary) {
    this.folder = folder;
    this.medium = medium;
    this.machine = machine;
    this.lines = new RunLines(machine, new DeviceFile(folder));
    this.journal = new OwnJournal(folder.resolve(Opening.JOURNALS), medium, lines.run(), forced);
    this.ballast = new Ballast(folder, medium);
    this.held = new Held(medium);
    this.database = new LogDatabase(folder, medium, temporary, notices, this::fill);
    this.exchange = new LogExchange(folder, medium, lines, database, this::writable);
  }

  /**
   * Loads the library a log is read with, which the first opening would otherwise wait for; for a
   * thread that has nothing better to do. What fails here fails and is told there.
   */
  public static void readyLibrary() {
    try (Database database = Database.inMemory()) {
      database.number("SELECT 1");
    } catch (SQLException e) {
      return; // the opening meets the same and says so
    }
  }

  /**
   * Opens the log in a folder, which is made when missing, and takes it for this program.
   *
   * @throws Fault {@code log-folder} when the folder cannot be made or written, {@code log-in-use},
   *     {@code log-newer}, {@code log-foreign}, {@code log-library}, {@code log-unreadable}
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

  /**
   * As {@link #open}; a log that another program holds, or whose medium cannot be written, is read
   * from a copy, and {@link #refusal} tells why.
   *
   * @param temporary a folder the copy may lie in
   */
  public static LogFolder openOrRead(Path folder, Machine machine, Path temporary) throws Fault {
    return openOrRead(folder, machine, new Medium(), temporary);
  }

  static LogFolder openOrRead(Path folder, Machine machine, Medium medium, Path temporary)
      throws Fault {
    LogFolder log =
        new LogFolder(folder, machine, medium, OwnJournal.Forced.AT_ONCE, Optional.of(temporary));
    try {
      log.take();
    } catch (Fault fault) {
      if (!READABLE_STILL.contains(fault.code()) || !isIn(folder)) {
        throw fault;
      }
      log.refused = Optional.of(fault);
    }
    return log.opened();
  }

  static LogFolder open(Path folder, Machine machine, Medium medium) throws Fault {
    return open(folder, machine, medium, OwnJournal.Forced.AT_ONCE);
  }

  static LogFolder open(Path folder, Machine machine, Medium medium, OwnJournal.Forced forced)
      throws Fault {
    LogFolder log = new LogFolder(folder, machine, medium, forced, Optional.empty());
    log.take();
    return log.opened();
  }

  private void take() throws Fault {
    try {
      lock = Optional.of(LogLock.take(folder, medium, machine.identity()));
      lock.get()
          .stale()
          .ifPresent(
              holder ->
                  notices.add(
                      "It was left open by " + holder + ", which has ended: the log is free."));
    } catch (IOException e) {
      throw LogFaults.noFolder(folder, e);
    }
    database.useOwn();
  }

  private LogFolder opened() throws Fault {
    try {
      return with(log -> this);
    } catch (Fault | RuntimeException e) {
      letGo();
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

  /** Why what is kept now would only wait in memory, or waits already; mostly nothing. */
  public Optional<Refusal> refusal() {
    return refused.map(
        fault ->
            new Refusal(
                fault, LogFaults.shortly(fault), held.changes(), held.elsewhere(), lock.isEmpty()));
  }

  /**
   * What this log gives other machines and takes from them.
   *
   * @throws Fault why nothing can be written to the log now
   */
  public Exchange exchange() throws Fault {
    tryAgain();
    writable();
    return exchange;
  }

  private void writable() throws Fault {
    if (refused.isPresent()) {
      throw refused.get();
    }
  }

  /** Lays down what is given up when the medium is full; takes a moment. */
  public void layBallast() {
    if (lock.isPresent()) {
      ballast.lay();
    }
  }

  @Override
  public List<RecordId> save(Action action) throws Fault {
    if (action.changes().isEmpty()) {
      return List.of();
    }
    return with(
        log -> {
          Due due = due(log, action);
          Optional<Fault> fault = write(due.entries());
          if (fault.isPresent()) {
            database.takeBack(due.within());
            throw fault.get();
          }
          return due.records();
        });
  }

  /** Keeps an action; while the medium refuses it, in memory and where {@link #keepIn} says. */
  public Kept keep(Action action) throws Fault {
    if (action.changes().isEmpty()) {
      return new Kept(List.of(), true);
    }
    return with(
        log -> {
          Due due = due(log, action);
          refused = write(due.entries());
          if (refused.isPresent()) {
            database.keepInMemory();
            held.hold(due.entries());
          }
          return new Kept(due.records(), refused.isEmpty() || held.elsewhere().isPresent());
        });
  }

  /**
   * Tries again to write what waits, and to get hold of a log that is only read. After that {@link
   * #refusal} tells whether it could be done.
   */
  public void tryAgain() throws Fault {
    if (refused.isEmpty()) {
      return;
    }
    if (lock.isEmpty()) {
      try {
        take();
      } catch (Fault still) {
        refused = Optional.of(still);
        return;
      }
    }
    refused = with(log -> held.isEmpty() ? Optional.<Fault>empty() : write(held.entries()));
  }

  /** Keeps what waits, and what will have to wait, in another folder too. */
  public void keepIn(Path other) throws Fault {
    RunLines.Entry header = with(log -> lines.header(log.database(), log.tables()));
    try {
      held.keepIn(other, header);
    } catch (IOException e) {
      throw LogFaults.noOtherFolder(other, e);
    }
  }

  @Override
  public void close() throws Fault {
    Optional<Fault> lost =
        refused.filter(fault -> held.changes() > 0 && held.elsewhere().isEmpty());
    letGo();
    if (lost.isPresent()) {
      throw lost.get();
    }
  }

  /** Puts an action into the tables. */
  private Due due(Opening.Opened log, Action action) throws SQLException, Fault {
    RunLines.Entry header = lines.header(log.database(), log.tables());
    RunLines.Entry entry = lines.next(log.tables(), action);
    List<RunLines.Entry> entries = new ArrayList<>(held.entries());
    boolean first = !headerKept && entries.isEmpty();
    boolean within = database.begin(log);
    if (first) {
      entries.add(header);
      takeIn(log, header);
    }
    entries.add(entry);
    takeIn(log, entry);
    log.tables().show();
    return new Due(within, entries);
  }

  private void takeIn(Opening.Opened log, RunLines.Entry entry) throws SQLException {
    log.tables().take(ReadyLine.of(entry.line(), entry.raw()));
    if (entry.line().op().n() == 0) {
      lines.noteBegun(log.database());
      LogTables.setMeta(log.database(), Opening.CLEAN, "0");
    }
  }

  /** Appends lines to the journal, the moment they are kept, and commits; or says why not. */
  private Optional<Fault> write(List<RunLines.Entry> due) {
    if (lock.isEmpty()) {
      return refused;
    }
    try {
      database.commit(append(Held.text(due)));
      headerKept = true;
      held.letGo();
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(LogFaults.notKept(folder, e));
    }
  }

  private OwnJournal.End append(String text) throws IOException {
    try {
      return journal.append(text);
    } catch (IOException e) {
      if (!ballast.release()) {
        throw e;
      }
      OwnJournal.End end = journal.append(text);
      notices.add(
          "The medium with "
              + folder
              + " is full; the room held back for that is now in use. Free some space.");
      return end;
    }
  }

  @Override
  <T> T with(Work<T> work) throws Fault {
    return database.with(work);
  }

  /** A database just opened holds what the journals hold; what waits is put in again. */
  private void fill(Opening.Opened log) throws SQLException {
    lines.claim(log.database());
    if (!held.isEmpty()) {
      database.begin(log);
      for (RunLines.Entry entry : held.entries()) {
        takeIn(log, entry);
      }
      log.tables().show();
    }
  }

  private void letGo() throws Fault {
    database.close(held.isEmpty());
    try {
      journal.close();
      exchange.close();
      held.close();
    } catch (IOException e) {
      throw LogFaults.notKept(folder, e);
    } finally {
      release();
    }
  }

  private void release() throws Fault {
    try {
      if (lock.isPresent()) {
        lock.get().close();
      }
    } catch (IOException e) {
      throw LogFaults.notKept(folder, e);
    }
  }
}
