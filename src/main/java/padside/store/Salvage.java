package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gets the lines no journal holds out of the databases set aside, and into new journals. */
final class Salvage {
  private final Path place;
  private final Path journals;
  private final Medium medium;
  private final List<String> notices = new ArrayList<>();

  /**
   * Of a log.
   *
   * @param place where the database lies and those that were set aside: the log's own folder, or
   *     that of a copy, for which no journal is written
   */
  Salvage(Path place, Path journals, Medium medium) {
    this.place = place;
    this.journals = journals;
    this.medium = medium;
  }

  /**
   * Takes them into tables that hold exactly what the journals hold.
   *
   * @return what came of it, in plain words
   */
  List<String> into(Database database, Intake intake) throws IOException, SQLException {
    long mark = Mending.mark(database);
    for (SetAside aside : SetAside.in(place)) {
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
              + LogFaults.reason(e)
              + ".");
    }
  }

  private String kept(Database database, long mark) throws SQLException {
    if (!journals.startsWith(place)) {
      return "holds; opening the log itself writes them to one.";
    }
    try {
      List<OwnJournal.End> written = new Mending(journals, medium).write(database, mark);
      database.begin();
      for (OwnJournal.End end : written) {
        Intake.note(database, end, end.bytes());
      }
      database.commit();
      return "held; they stand in a journal again.";
    } catch (IOException e) {
      return "holds; they could not be written to one: "
          + LogFaults.reason(e)
          + "; padside doctor tries again.";
    }
  }
}
