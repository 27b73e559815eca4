package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;

/** Brings lines that stand outside the journals into them, and the database up to them. */
final class Repair implements Examination.Treatment {
  private final Path folder;
  private final Medium medium;
  private final Mending mending;

  Repair(Path folder, Medium medium, Mending mending) {
    this.folder = folder;
    this.medium = medium;
    this.mending = mending;
  }

  /**
   * Writes what no journal holds into new ones and has the database opened, or built anew.
   *
   * @param mark where the lines end that stand in journals
   * @param fault why the database is not to be used as it is
   */
  @Override
  public List<OwnJournal.End> of(Rebuilt rebuilt, long mark, Optional<String> fault)
      throws IOException, SQLException, Fault {
    List<OwnJournal.End> written = mending.write(rebuilt.database(), mark);
    Opening opening = new Opening(folder, folder, medium);
    boolean there = Files.exists(folder.resolve(Opening.DATABASE));
    Opening.Opened opened =
        fault.isPresent() && there ? opening.anew(fault.get()) : opening.open(true);
    try (Database database = opened.database()) {
      database.begin();
      note(database, rebuilt.database());
      database.commit();
    }
    return written;
  }

  /** The journals as they are on the medium now, and which of their lines are lost. */
  private void note(Database database, Database seen) throws IOException, SQLException {
    List<String> journals =
        JournalFiles.in(folder.resolve(Opening.JOURNALS)).stream()
            .map(file -> file.getFileName().toString())
            .toList();
    for (String known : database.list(row -> row.getString(1), "SELECT name FROM journal_file")) {
      if (!journals.contains(known)) {
        database.run("DELETE FROM journal_file WHERE name = ?1", known);
      }
    }
    record Journal(OwnJournal.End end, long seen) {}
    for (Journal journal :
        seen.list(
            row ->
                new Journal(new OwnJournal.End(row.getString(1), row.getLong(2)), row.getLong(3)),
            "SELECT name, bytes, seen FROM journal_file")) {
      Intake.note(database, journal.end(), journal.seen());
    }
    database.run("DELETE FROM bad_line");
    for (BadLine line : BadLine.noted(seen)) {
      line.note(database);
    }
    LogTables.setMeta(database, Opening.CLEAN, "1");
  }
}
