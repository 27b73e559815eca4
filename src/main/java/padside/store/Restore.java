package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import padside.fact.Fault;

/** Brings a backup into a log: what the log lacks goes into new journals, nothing is taken away. */
public final class Restore {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("d MMM uuuu HH:mm", Locale.ENGLISH);

  private final Path folder;
  private final Path journals;
  private final Machine machine;
  private final Medium medium;
  private final Wanted wanted;
  private final Consumer<String> tell;

  /**
   * What is wanted.
   *
   * @param backup a backup's folder, the folder that holds it, or one snapshot
   * @param dryRun to look only and write nothing
   * @param add to bring in what the log lacks although it holds lines the backup lacks
   */
  public record Wanted(Path backup, boolean dryRun, boolean add) {}

  /** Both sides, each built from its lines in a work folder. */
  private record Sides(WorkFolder work, Rebuilt log, Rebuilt backup, List<BadLine> bad) {}

  Restore(Path folder, Machine machine, Medium medium, Wanted wanted, Consumer<String> tell) {
    this.folder = folder;
    this.journals = folder.resolve(Opening.JOURNALS);
    this.machine = machine;
    this.medium = medium;
    this.wanted = wanted;
    this.tell = tell;
  }

  /**
   * Brings a backup into the log in a folder, which is made when missing.
   *
   * @param tell gets every step, a sentence or more each
   * @return true when nothing of the backup is lost
   * @throws Fault {@code no-source}, {@code restore-newer}, {@code restore-failed}, {@code
   *     log-in-use}, {@code log-newer}, {@code log-foreign}
   */
  public static boolean into(Path folder, Machine machine, Wanted wanted, Consumer<String> tell)
      throws Fault {
    return new Restore(folder, machine, new Medium(), wanted, tell).run();
  }

  boolean run() throws Fault {
    try {
      Sources sources = Sources.in(wanted.backup());
      if (wanted.dryRun() && !Files.exists(folder)) {
        return compared(sources);
      }
      try (LogLock lock = taken()) {
        lock.stale()
            .ifPresent(last -> tell.accept("The log was not closed in order by " + last + "."));
        return compared(sources);
      }
    } catch (IOException | SQLException e) {
      throw new Fault(
          "restore-failed",
          "The backup could not be brought into " + folder + ": " + LogFaults.reason(e) + ".",
          "Nothing was taken away; free some space or change the medium, then do it again.",
          e);
    }
  }

  private LogLock taken() throws IOException, Fault {
    return wanted.dryRun()
        ? LogLock.toLook(folder)
        : LogLock.take(folder, medium, machine.identity());
  }

  private boolean compared(Sources sources) throws IOException, SQLException, Fault {
    try (WorkFolder work = WorkFolder.make();
        Rebuilt log = Rebuilt.in(work);
        Rebuilt backup = Rebuilt.in(work.file("backup.sqlite"))) {
      List<BadLine> bad = new ArrayList<>();
      List<String> unread =
          sources.read(work, journal -> bad.addAll(backup.journal(journal)), backup::take);
      tell.accept("The backup holds " + Contents.of(backup.database()).words() + ".");
      unread.forEach(tell);
      return brought(new Sides(work, log, backup, bad)) && unread.isEmpty();
    }
  }

  private boolean brought(Sides sides) throws IOException, SQLException, Fault {
    Rebuilt log = sides.log();
    boolean any = !log.journals(journals).bad().isEmpty() || log.lines() > 0;
    long mark = Mending.mark(log.database());
    DatabaseLook look = DatabaseLook.of(folder.resolve(Opening.DATABASE), any, sides.work());
    if (look.copy().isPresent()) {
      look.readInto(log, sides.work());
      look = look.with(log, journals);
    }
    Offered offered = Offered.to(log);
    offered.take(sides.backup().raws());
    Contents before = Contents.of(log.database());
    tell.accept(
        before.lines() == 0
            ? "The log in " + folder + " is empty."
            : "The log in " + folder + " holds " + before.words() + ".");
    long lacked = offered.lacked().lines();
    refuseNewer(offered);
    offered.takeAll();
    long flights = Contents.of(log.database()).flights() - before.flights();
    if (lacked == 0) {
      tell.accept("The log holds every line of the backup.");
    } else {
      String what = lacked + " lines, " + flights + " flights more.";
      tell.accept((wanted.dryRun() ? "To be brought: " : "Bringing ") + what);
    }
    boolean toBeWritten = Mending.count(log.database(), mark) > 0 || look.fault().isPresent();
    if (toBeWritten && !wanted.dryRun()) {
      Mending mending = Mending.restoring(journals, medium);
      new Repair(folder, medium, mending).of(log, mark, look.fault());
      readBack(sides);
      tell.accept("Read back: the log holds " + Contents.of(log.database()).words() + ".");
    }
    return toldLost(sides);
  }

  private void refuseNewer(Offered offered) throws SQLException, Fault {
    Offered.Count alone = offered.hadAlone();
    if (alone.lines() == 0) {
      return;
    }
    String sentence =
        "The log in "
            + folder
            + " holds "
            + alone.lines()
            + " lines the backup lacks, the newest of "
            + alone.newest().map(this::moment).orElse("no known time");
    if (wanted.add()) {
      tell.accept(sentence + "; they stay.");
      return;
    }
    if (wanted.dryRun()) {
      tell.accept(sentence + "; only with --add what the log lacks is brought beside them.");
      return;
    }
    throw new Fault(
        "restore-newer",
        sentence + "; nothing was changed.",
        "Say --add to bring what the log lacks beside them, or name an empty folder with --log.");
  }

  private String moment(long wallMillis) {
    try {
      return MOMENT.format(
          Instant.ofEpochMilli(wallMillis).atZone(ZoneId.of(machine.identity().zone())));
    } catch (DateTimeException e) {
      return "an impossible date";
    }
  }

  /** From the journals alone, and from the database, comes what was to come. */
  private void readBack(Sides sides) throws IOException, SQLException, Fault {
    try (Rebuilt again = Rebuilt.in(sides.work().file("again.sqlite"))) {
      again.journals(journals);
      Differences journalled = Differences.ofContent(sides.log().database(), again.database());
      DatabaseLook look =
          DatabaseLook.of(folder.resolve(Opening.DATABASE), true, sides.work())
              .with(sides.log(), journals);
      if (!journalled.none() || look.fault().isPresent()) {
        throw new Fault(
            "restore-unsound",
            "Read back, the log in "
                + folder
                + " does not hold what was brought: "
                + look.fault().orElse(journalled.words())
                + ".",
            "The medium may be failing: restore into a folder on another one, named with --log.");
      }
    }
  }

  private boolean toldLost(Sides sides) throws SQLException {
    Database all = sides.log().database();
    List<BadLine> lost = BadLine.lost(sides.bad(), all);
    RecordWords words = new RecordWords(all);
    for (BadLine line : lost) {
      tell.accept((line.isTorn() ? "Unfinished in the backup: " : "Lost: ") + words.of(line) + ".");
    }
    return lost.stream().allMatch(BadLine::isTorn);
  }
}
