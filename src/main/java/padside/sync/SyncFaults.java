package padside.sync;

import java.io.IOException;
import java.nio.file.Path;
import padside.fact.Fault;
import padside.store.LogFaults;

/** What is said when an exchange by files fails. */
final class SyncFaults {
  private SyncFaults() {}

  static Fault noFolder(Path folder) {
    return new Fault(
        "sync-folder",
        "There is no folder " + folder + " to synchronise with.",
        "Put the stick in or connect the share, or name another folder; nothing was exchanged.");
  }

  static Fault noLink(Path folder) {
    return new Fault(
        "sync-link",
        folder + " is no folder of its own but leads elsewhere.",
        "Name the folder it leads to, or take it away; nothing was exchanged.");
  }

  static Fault unreadable(Path file, IOException e) {
    return new Fault(
        "sync-unreadable",
        file + " cannot be read: " + LogFaults.reason(e) + ".",
        "What came before stays; look to the stick or share, then synchronise again.",
        e);
  }

  static Fault notWritten(Path file, IOException e, long came) {
    return new Fault(
        "sync-not-written",
        (came == 0 ? "" : came + " lines came. ")
            + "What this log has to give could not be written to "
            + file
            + ": "
            + LogFaults.reason(e)
            + ".",
        "Free some space there or use another stick, then synchronise again; this log has lost"
            + " nothing.",
        e);
  }

  static Fault exists(Path file) {
    return new Fault(
        "sync-bundle-exists",
        file + " is there already.",
        "Name a file that is not there yet, or move that one away.");
  }

  static Fault noBundle(Path file, String why) {
    return new Fault(
        "sync-no-bundle",
        file + " is no bundle of Padside: " + why + ".",
        "Name a file written by padside sync --bundle, or a folder.");
  }

  static Fault declined() {
    return new Fault(
        "sync-strangers",
        "Lines of machines this log does not know were not taken; nothing was exchanged.",
        "Synchronise again and agree, or say --yes, once you know whose they are.");
  }
}
