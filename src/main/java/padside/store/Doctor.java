package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Consumer;
import padside.fact.Fault;

/**
 * Looks through a log step by step and mends what can be mended. Journals are never changed; what
 * is mended goes into new ones.
 */
public final class Doctor {
  private static final String WELL = "Nothing that was kept is missing; the log is well.";
  private static final String NOT_WELL =
      "Not all is well. Name a backup, a stick or another log with --from to look there for what"
          + " is lost.";
  private static final String LEFT_AS_IT_IS =
      "Not all is well; nothing was changed. Leave --dry-run out to mend what can be mended.";

  private final Path folder;
  private final Machine machine;
  private final Medium medium;
  private final Visit visit;
  private final Consumer<String> tell;

  /**
   * What is wanted.
   *
   * @param from where lines may be had that the log lacks: another log, a backup, a stick
   * @param dryRun to look only and write nothing into the log's folder
   */
  public record Visit(List<Path> from, boolean dryRun) {
    /** Keeps its own list. */
    public Visit {
      from = List.copyOf(from);
    }
  }

  Doctor(Path folder, Machine machine, Medium medium, Visit visit, Consumer<String> tell) {
    this.folder = folder;
    this.machine = machine;
    this.medium = medium;
    this.visit = visit;
    this.tell = tell;
  }

  /**
   * Looks through the log in a folder.
   *
   * @param tell gets every step, a sentence or more each
   * @return true when all is well, or well again
   * @throws Fault {@code log-in-use}, {@code log-newer}, {@code log-foreign}, {@code no-source},
   *     {@code log-unreadable}
   */
  public static boolean look(Path folder, Machine machine, Visit visit, Consumer<String> tell)
      throws Fault {
    return new Doctor(folder, machine, new Medium(), visit, tell).look();
  }

  boolean look() throws Fault {
    try (LogLock lock = taken();
        WorkFolder work = WorkFolder.make();
        Rebuilt rebuilt = Rebuilt.in(work)) {
      hold(lock);
      boolean well =
          new Examination(folder, work, rebuilt, tell)
              .of(
                  visit,
                  new Repair(
                      folder, medium, new Mending(folder.resolve(Opening.JOURNALS), medium)));
      tell.accept(well ? WELL : visit.dryRun() ? LEFT_AS_IT_IS : NOT_WELL);
      return well;
    } catch (IOException | SQLException e) {
      throw new Fault(
          "log-unreadable",
          "The log in " + folder + " could not be looked through: " + LogFaults.reason(e) + ".",
          "Check the medium and the space left on it and in the folder for temporary files.",
          e);
    }
  }

  private LogLock taken() throws IOException, Fault {
    return visit.dryRun()
        ? LogLock.toLook(folder)
        : LogLock.take(folder, medium, machine.identity());
  }

  private void hold(LogLock lock) {
    tell.accept(
        "The log in "
            + folder
            + " is open in no other program"
            + lock.stale()
                .map(last -> "; the last one, " + last + ", did not close it in order.")
                .orElse("."));
  }
}
