package padside.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import padside.fact.Fault;

/** What is said when the medium with a log fails. */
public final class LogFaults {
  private LogFaults() {}

  static Fault noFolder(Path folder, IOException e) {
    return new Fault(
        "log-folder",
        "The folder " + folder + " cannot be used for the log: " + reason(e) + ".",
        "Make it writable, or name another folder.",
        e);
  }

  static Fault notKept(Path folder, IOException e) {
    return new Fault(
        "log-not-kept",
        "NOT SAVED: the medium with " + folder + " refused the journal: " + reason(e) + ".",
        "Free some space or change the medium, then save again; it is still on the screen.",
        e);
  }

  static Fault notTaken(Path folder, IOException e) {
    return new Fault(
        "log-not-taken",
        "What other machines wrote was not taken: the medium with "
            + folder
            + " refused it: "
            + reason(e)
            + ".",
        "Free some space or change the medium, then synchronise again; nothing is lost.",
        e);
  }

  static Fault unreadable(Path folder, Exception e) {
    if (e instanceof NoLibraryException) {
      return new Fault(
          "log-library",
          "SQLite, which keeps the log in " + folder + ", cannot be loaded on this machine.",
          "Start Padside by bin/padside; by java -jar, name with -Djava.io.tmpdir= a folder where"
              + " programs may be run. The log is as it was.",
          e);
    }
    return new Fault(
        "log-unreadable",
        "The log in " + folder + " cannot be read: " + reason(e) + ".",
        "Close other programs that use it and check the medium; the journals hold what was kept.",
        e);
  }

  /** The tables a search looks through could not be written. */
  static Fault notLookedThrough(SQLException e) {
    return new Fault(
        "log-search",
        "The flights could not be looked through: the medium with the log is full.",
        "Free some space, then search again; the log itself is as it was.",
        e);
  }

  static boolean isFull(SQLException e) {
    return (e.getErrorCode() & 0xff) == SQLiteErrorCode.SQLITE_FULL.code;
  }

  static Fault noOtherFolder(Path other, IOException e) {
    return new Fault(
        "other-folder",
        "The folder " + other + " cannot be written: " + reason(e) + ".",
        "Name another one; what you typed still waits in memory.",
        e);
  }

  /** Why a log cannot be written, in a few words. */
  static String shortly(Fault fault) {
    return fault.getCause() instanceof IOException e ? reason(e) : "another program holds the log";
  }

  /** What the operating system or SQLite said, without the file's name, which stands before it. */
  public static String reason(Exception e) {
    if (e instanceof AccessDeniedException) {
      return "access is denied";
    }
    if (e instanceof NoSuchFileException) {
      return "it is not there";
    }
    if (e instanceof FileSystemException file && file.getReason() != null) {
      return file.getReason();
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }
}
