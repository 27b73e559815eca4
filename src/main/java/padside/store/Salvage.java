package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gets the lines no journal holds out of the databases set aside, and into new journals. */
final class Salvage {
  private final Path folder;
  private final Medium medium;
  private final List<String> notices = new ArrayList<>();

  Salvage(Path folder, Medium medium) {
    this.folder = folder;
    this.medium = medium;
  }

  /**
   * Takes them into tables that hold exactly what the journals hold.
   *
   * @return what came of it, in plain words
   */
  List<String> into(Database database, Intake intake) throws IOException, SQLException {
    long mark = Mending.mark(database);
    for (SetAside aside : SetAside.in(folder)) {
      unread(aside, intake).ifPresent(notices::add);
    }
    int saved = Mending.count(database, mark);
    if (saved > 0) {
      notices.add(
          "Recovered from the database set aside: "
              + saved
              + " lines no journal "
              + kept(database, mark));
    }
    return notices;
  }

  private static Optional<String> unread(SetAside aside, Intake intake) throws SQLException {
    try {
      return aside
          .lines(intake::take)
          .stopped()
          .map(
              why ->
                  "The database set aside in "
                      + aside.place()
                      + " can be read in part only: "
                      + why);
    } catch (IOException e) {
      return Optional.of(
          "The database set aside in "
              + aside.place()
              + " could not be looked at: "
              + Reason.of(e)
              + ".");
    }
  }

  private String kept(Database database, long mark) throws SQLException {
    try {
      List<OwnJournal.End> written =
          new Mending(folder.resolve(Opening.JOURNALS), medium).write(database, mark);
      database.begin();
      for (OwnJournal.End end : written) {
        Intake.note(database, end, end.bytes());
      }
      database.commit();
      return "held; they stand in a journal again.";
    } catch (IOException e) {
      return "holds; they could not be written to one: "
          + Reason.of(e)
          + "; padside doctor tries again.";
    }
  }
}
