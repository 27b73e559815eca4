package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import padside.fact.Fault;

/** One look through a log: the journals, the database held against them, what is missing. */
final class Examination {
  /** Lines told one by one at most. */
  private static final int TOLD = 20;

  /** Mends. */
  interface Treatment {
    List<OwnJournal.End> of(Rebuilt rebuilt, long mark, Optional<String> fault)
        throws IOException, SQLException, Fault;
  }

  private final Path folder;
  private final Path journals;
  private final WorkFolder work;
  private final Rebuilt rebuilt;
  private final Consumer<String> tell;
  private final List<BadLine> bad = new ArrayList<>();
  private boolean lostNothing;

  Examination(Path folder, WorkFolder work, Rebuilt rebuilt, Consumer<String> tell) {
    this.folder = folder;
    this.journals = folder.resolve(Opening.JOURNALS);
    this.work = work;
    this.rebuilt = rebuilt;
    this.tell = tell;
  }

  /** True when all is well, or well again. */
  boolean of(Doctor.Visit visit, Treatment treatment) throws IOException, SQLException, Fault {
    Intake.Taken taken = rebuilt.journals(journals);
    bad.addAll(taken.bad());
    long mark = Mending.mark(rebuilt.database());
    tellJournals(taken);
    DatabaseLook look = database(taken);
    aside();
    for (Path from : visit.from()) {
      elsewhere(from);
    }
    int found = Mending.count(rebuilt.database(), mark);
    boolean mends = found > 0 || look.fault().isPresent() || !bad.isEmpty();
    if (visit.dryRun()) {
      would(found, look);
      return told() && found == 0 && look.fault().isEmpty();
    }
    if (mends) {
      tellMended(found, treatment.of(rebuilt, mark, look.fault()), look);
    }
    return again(mends) && told();
  }

  private void tellJournals(Intake.Taken taken) throws IOException, SQLException {
    long runs = rebuilt.database().number("SELECT count(DISTINCT run) FROM op");
    int files = JournalFiles.in(journals).size();
    tell.accept(
        "Journals: "
            + files
            + " with "
            + rebuilt.lines()
            + " lines of "
            + runs
            + " runs; "
            + (taken.bad().isEmpty()
                ? "every checksum fits."
                : taken.bad().size() + " lines cannot be read:"));
    for (BadLine line : taken.bad().subList(0, Math.min(TOLD, taken.bad().size()))) {
      tell.accept("  " + line.place() + ": " + line.why() + ".");
    }
    if (taken.bad().size() > TOLD) {
      tell.accept("  and " + (taken.bad().size() - TOLD) + " more.");
    }
    taken.notices().forEach(tell);
  }

  private DatabaseLook database(Intake.Taken taken) throws IOException, SQLException, Fault {
    boolean any = taken.lines() > 0 || !taken.bad().isEmpty();
    DatabaseLook look = DatabaseLook.of(folder.resolve(Opening.DATABASE), any, work);
    tell.accept(
        look.fault()
            .map(fault -> "Database: " + fault + ".")
            .orElse(
                "Database: SQLite finds no fault; its tables are as they were made and every row"
                    + " belongs to something."));
    long before = rebuilt.lines();
    if (look.copy().isPresent()) {
      look.readInto(rebuilt, work);
      tellFound(rebuilt.lines() - before, "the database");
    }
    DatabaseLook compared = look.with(rebuilt, journals);
    if (look.fault().isEmpty()) {
      long records = rebuilt.database().number("SELECT count(*) FROM record");
      tell.accept(
          compared
              .fault()
              .map(fault -> "Held against its lines the database is wrong: " + fault + ".")
              .orElse("Held against its lines: all " + records + " records show what they say."));
    }
    return compared;
  }

  private void aside() throws IOException, SQLException {
    for (SetAside aside : SetAside.in(folder)) {
      long before = rebuilt.lines();
      aside.lines(rebuilt::take);
      tellFound(rebuilt.lines() - before, "the database set aside in " + aside.place());
    }
  }

  private void elsewhere(Path from) throws IOException, SQLException, Fault {
    Offered offered = Offered.to(rebuilt);
    Sources.in(from).read(work, offered::take).forEach(tell);
    long before = rebuilt.lines();
    offered.takeRelated();
    tellFound(rebuilt.lines() - before, from.toString());
    long left = offered.lacked().lines();
    if (left > 0) {
      tell.accept(
          "Left in "
              + from
              + ": "
              + left
              + " lines of runs this log knows nothing of; padside restore --add brings them in.");
    }
  }

  private void tellFound(long lines, String where) {
    if (lines > 0) {
      tell.accept("Found in " + where + ": " + lines + " lines that no journal holds.");
    }
  }

  private void would(int found, DatabaseLook look) {
    if (found > 0) {
      tell.accept("To be mended: " + found + " lines would be written to new journals.");
    }
    if (look.fault().isPresent()) {
      tell.accept("To be mended: the database would be set aside and built anew from the lines.");
    }
  }

  private void tellMended(int found, List<OwnJournal.End> written, DatabaseLook look) {
    if (found > 0) {
      tell.accept(
          "Mended: "
              + found
              + " lines stand in journals again: "
              + String.join(", ", written.stream().map(OwnJournal.End::file).toList())
              + ".");
    }
    if (look.fault().isPresent()) {
      tell.accept(
          "Mended: the database was built anew from "
              + "the lines"
              + (look.copy().isPresent() ? "; the one before is kept in " + newestAside() : "")
              + ".");
    }
  }

  private String newestAside() {
    try {
      List<SetAside> all = SetAside.in(folder);
      return all.isEmpty() ? "no place" : all.get(all.size() - 1).place().toString();
    } catch (IOException e) {
      return "the folder aside";
    }
  }

  /** What was mended is looked at once more. */
  private boolean again(boolean mended) throws IOException, Fault {
    if (!mended) {
      return true;
    }
    DatabaseLook look =
        DatabaseLook.of(folder.resolve(Opening.DATABASE), true, work).with(rebuilt, journals);
    tell.accept(
        look.fault()
            .map(fault -> "Looked at again, the database is still wrong: " + fault + ".")
            .orElse("Looked at again: the database shows what all lines say."));
    return look.fault().isEmpty();
  }

  /** Tells what is lost; true when nothing is. */
  private boolean told() throws SQLException {
    Missing missing = new Missing(rebuilt.database());
    List<BadLine> lost = BadLine.lost(bad, rebuilt.database());
    int healed = bad.size() - lost.size();
    if (healed > 0) {
      tell.accept("Of the lines that cannot be read " + healed + " are whole elsewhere.");
    }
    missing.gaps().forEach(tell);
    List<String> told = new ArrayList<>();
    for (BadLine line : lost) {
      String what = new RecordWords(rebuilt.database()).of(line);
      if (line.isTorn()) {
        tell.accept(
            "Unfinished: " + what + ". A line counts as kept only once all of it is written.");
      } else {
        told.add(what);
      }
    }
    told.addAll(missing.spokenOf());
    told.forEach(what -> tell.accept("Lost: " + what + "."));
    lostNothing = told.isEmpty();
    return lostNothing;
  }

  /** True when every line is to be had, wherever it stands; asked after the look. */
  boolean lostNothing() {
    return lostNothing;
  }
}
