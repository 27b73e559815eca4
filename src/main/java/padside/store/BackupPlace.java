package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;

/** One folder a log is backed up to. */
final class BackupPlace {
  private final Backup.Target target;
  private final Path journals;
  private final Path place;
  private final Medium medium;

  /**
   * A log as it was found.
   *
   * @param snapshot a sound database with every line that is to be had
   * @param whole true when nothing that was kept is known to be missing
   */
  record State(WorkFolder work, Rebuilt rebuilt, Path snapshot, LocalDate date, boolean whole) {}

  private record Journal(String name, long bytes) {}

  BackupPlace(Backup.Target target, Path log, Medium medium) {
    this.target = target;
    this.journals = log.resolve(Opening.JOURNALS);
    Path folder = target.folder().toAbsolutePath().normalize();
    this.place = folder.endsWith(Mirror.FOLDER) ? folder : folder.resolve(Mirror.FOLDER);
    this.medium = medium;
  }

  /** What is there, when it was made of journals just as long as the log's are now. */
  Optional<Backup.Kept> current() {
    try {
      Optional<Snapshot> newest = Snapshot.in(place).stream().findFirst();
      if (newest.isEmpty()) {
        return Optional.empty();
      }
      try (Database database = Database.unchanging(newest.get().file())) {
        List<Journal> known =
            database.list(
                row -> new Journal(row.getString(1), row.getLong(2)),
                "SELECT name, seen FROM journal_file ORDER BY name");
        return known.equals(journals()) && allAreMirrored(known)
            ? Optional.of(
                new Backup.Kept(
                    place,
                    newest.map(Snapshot::name),
                    database.number("SELECT count(*) FROM op"),
                    false,
                    !newest.get().partial(),
                    List.of(),
                    Optional.empty()))
            : Optional.empty();
      }
    } catch (IOException | SQLException e) {
      return Optional.empty(); // what cannot be read is backed up anew, and told if that fails too
    }
  }

  private List<Journal> journals() throws IOException {
    List<Journal> found = new ArrayList<>();
    for (Path journal : JournalFiles.in(journals)) {
      found.add(new Journal(journal.getFileName().toString(), Files.size(journal)));
    }
    return found;
  }

  private boolean allAreMirrored(List<Journal> known) throws IOException {
    for (Journal journal : known) {
      Path copy = copies().resolve(journal.name());
      if (!Files.exists(copy) || Files.size(copy) < journal.bytes()) {
        return false;
      }
    }
    return true;
  }

  private Mirror mirror() {
    return new Mirror(journals, copies(), medium);
  }

  private Path copies() {
    return place.resolve(Opening.JOURNALS);
  }

  /** Backs the log up, or says why not. */
  Backup.Kept keep(State log) {
    try {
      if (!target.toBeMade() && !Files.isDirectory(target.folder())) {
        throw new Fault(
            "backup-missing",
            "The folder " + target.folder() + " for a backup is not there.",
            "Put the medium in, or name another folder.");
      }
      Optional<Backup.Kept> current = current();
      return current.isPresent() && isSound(place.resolve(current.get().snapshot().get()), log)
          ? current.get()
          : written(log);
    } catch (Fault fault) {
      return failed(fault);
    } catch (IOException | SQLException e) {
      return failed(
          new Fault(
              "backup-failed",
              "The backup in " + place + " could not be written: " + LogFaults.reason(e) + ".",
              "What was there before is untouched; free some space or name another folder.",
              e));
    }
  }

  private Backup.Kept failed(Fault fault) {
    return new Backup.Kept(place, Optional.empty(), 0, false, false, List.of(), Optional.of(fault));
  }

  private Backup.Kept written(State log) throws IOException, SQLException, Fault {
    List<String> told = new ArrayList<>();
    long lacked = lackedByLog(log);
    medium.folder(place);
    told.addAll(mirror().copy());
    Snapshot snapshot = Snapshot.next(place, log.date(), lacked > 0 || !log.whole());
    medium.copy(log.snapshot(), snapshot.file());
    medium.forceFolder(place);
    if (!isSound(snapshot.file(), log)) {
      Files.delete(snapshot.file());
      throw new Fault(
          "backup-unsound",
          "What was written to " + place + " reads back otherwise than it was written.",
          "The medium may be failing: look at it, and name another folder meanwhile.");
    }
    if (lacked > 0) {
      told.add(
          "The backup in "
              + place
              + " holds "
              + lacked
              + " lines the log lacks, and keeps them; padside restore --add brings them in.");
    }
    told.addAll(rotated());
    return new Backup.Kept(
        place,
        Optional.of(snapshot.name()),
        log.rebuilt().lines(),
        true,
        !snapshot.partial(),
        told,
        Optional.empty());
  }

  /** How many lines of this log's runs only the backup has; refuses that of another log. */
  private long lackedByLog(State log) throws SQLException, Fault {
    Offered offered = offered(log);
    long lacked = offered.lacked().lines();
    if (lacked > 0 && lacked == offered.all().lines()) {
      throw new Fault(
          "backup-of-another",
          "The backup in " + place + " is of another log: it shares no line with this one.",
          "Name another folder, or bring it into this log first with padside restore --add.");
    }
    return lacked;
  }

  /** The lines of the backup, laid beside those of the log. */
  private Offered offered(State log) throws SQLException, Fault {
    Offered offered = Offered.to(log.rebuilt());
    Sources.anyIn(place).read(log.work(), offered::take);
    return offered;
  }

  /**
   * Reads the backup back: every line of the log stands in it with a sum that fits, and the
   * snapshot is sound and shows what the log's lines say.
   */
  private boolean isSound(Path snapshot, State log) throws IOException, SQLException, Fault {
    Offered offered = offered(log);
    DatabaseLook look = DatabaseLook.of(snapshot, true, log.work());
    return mirror().holdsAll()
        && offered.hadAlone().lines() == 0
        && look.fault().isEmpty()
        && Differences.between(log.rebuilt().database(), look.copy().orElseThrow()).none();
  }

  private List<String> rotated() throws IOException {
    List<String> told = new ArrayList<>();
    for (Snapshot old : Snapshot.superfluous(Snapshot.in(place))) {
      try {
        Files.delete(old.file());
      } catch (IOException e) {
        told.add("The old snapshot " + old.file() + " stays: " + LogFaults.reason(e) + ".");
      }
    }
    return told;
  }
}
