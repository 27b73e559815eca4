package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;

/**
 * Backs a log up to other folders: its journals, only ever added to, and snapshots of its database,
 * each read back after it was written.
 */
public final class Backup {
  private static final String NOT_WELL =
      "The log is not well; padside doctor says what is wrong and mends what can be mended.";

  private final Path folder;
  private final Machine machine;
  private final Medium medium;

  /**
   * What came of it.
   *
   * @param remark what there is to say of the log itself, when it was looked through
   */
  public record Result(List<Kept> places, Optional<String> remark) {
    /** Keeps its own list. */
    public Result {
      places = List.copyOf(places);
    }
  }

  /**
   * Where a backup goes.
   *
   * @param toBeMade true for a folder that is made when missing; any other one may be a medium that
   *     is not there
   */
  public record Target(Path folder, boolean toBeMade) {}

  /**
   * What came of one target.
   *
   * @param place the folder with journals and snapshots
   * @param snapshot the newest one's name
   * @param lines how many it holds
   * @param changed false when the backup held everything already
   * @param whole false when something that was once kept is not in the log any more
   * @param told what else there is to say, in plain words
   * @param fault why it could not be done; what was there before stays
   */
  public record Kept(
      Path place,
      Optional<String> snapshot,
      long lines,
      boolean changed,
      boolean whole,
      List<String> told,
      Optional<Fault> fault) {
    /** Keeps its own list. */
    public Kept {
      told = List.copyOf(told);
    }
  }

  Backup(Path folder, Machine machine, Medium medium) {
    this.folder = folder;
    this.machine = machine;
    this.medium = medium;
  }

  /**
   * Where a log's backups are kept on its own medium: {@code backups} beside a folder called {@code
   * log}, {@code NAME-backups} beside another one.
   */
  public static Path beside(Path folder) {
    Path log = folder.toAbsolutePath().normalize();
    String name = String.valueOf(log.getFileName());
    return log.resolveSibling(name.equals("log") ? "backups" : name + "-backups");
  }

  /**
   * Looks through the log and backs it up to each target.
   *
   * @throws Fault {@code log-in-use}, {@code log-newer}, {@code log-foreign}, {@code
   *     log-unreadable}, {@code backup-empty}
   */
  public static Result of(Path folder, Machine machine, List<Target> targets) throws Fault {
    return new Backup(folder, machine, new Medium()).keep(targets, false);
  }

  /** As {@link #of}; where the size of every journal is the one backed up, nothing is looked at. */
  public static Result ofWhatChanged(Path folder, Machine machine, List<Target> targets)
      throws Fault {
    return new Backup(folder, machine, new Medium()).keep(targets, true);
  }

  Result keep(List<Target> targets, boolean quick) throws Fault {
    List<BackupPlace> places =
        targets.stream().map(target -> new BackupPlace(target, folder, medium)).toList();
    try (LogLock lock = LogLock.toLook(folder);
        WorkFolder work = WorkFolder.make()) {
      List<Kept> kept = new ArrayList<>();
      if (quick && lock.stale().isEmpty()) {
        for (BackupPlace place : places) {
          place.current().ifPresent(kept::add);
        }
      }
      return kept.size() == places.size() ? new Result(kept, Optional.empty()) : keep(places, work);
    } catch (IOException | SQLException e) {
      throw LogFaults.unreadable(folder, e);
    }
  }

  private Result keep(List<BackupPlace> places, WorkFolder work)
      throws IOException, SQLException, Fault {
    List<Kept> kept = new ArrayList<>();
    try (Rebuilt rebuilt = Rebuilt.in(work)) {
      Examination look = new Examination(folder, work, rebuilt, said -> {});
      boolean well = look.of(new Doctor.Visit(List.of(), true), (lines, mark, fault) -> List.of());
      if (rebuilt.lines() == 0) {
        throw new Fault(
            "backup-empty",
            "The log in " + folder + " holds nothing; there is nothing to back up.",
            "Keep a record first; padside restore brings a backup back.");
      }
      Path snapshot = work.file("snapshot.sqlite");
      rebuilt.writeTo(snapshot);
      BackupPlace.State log =
          new BackupPlace.State(work, rebuilt, snapshot, date(), look.lostNothing());
      for (BackupPlace place : places) {
        kept.add(place.keep(log));
      }
      return new Result(kept, Optional.of(NOT_WELL).filter(remark -> !well));
    }
  }

  private LocalDate date() {
    return Instant.ofEpochMilli(machine.wallMillis())
        .atZone(ZoneId.of(machine.identity().zone()))
        .toLocalDate();
  }
}
