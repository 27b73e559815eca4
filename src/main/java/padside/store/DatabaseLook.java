package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import padside.fact.Fault;

/**
 * What was found in the database of a log, looked at in a copy.
 *
 * @param copy of it, where there is one
 * @param fault why it cannot be used
 */
record DatabaseLook(Optional<Path> copy, Optional<String> fault) {
  private static final String UNFILLED = "it was not filled to the end";

  /**
   * Looks.
   *
   * @param journals whether there are any, so that what is no database was one
   * @throws Fault {@code log-foreign}, {@code log-newer}
   */
  static DatabaseLook of(Path file, boolean journals, WorkFolder work) throws IOException, Fault {
    if (!Files.exists(file)) {
      return new DatabaseLook(Optional.empty(), Optional.of("it is not there"));
    }
    Path copy = work.copyOfDatabase(file);
    try (Database database = Database.open(copy)) {
      Schema.Found found = Schema.look(database, file);
      Optional<String> fault = found.unusable();
      if (found == Schema.Found.EMPTY) {
        fault = Optional.of("it is empty");
      } else if (found == Schema.Found.CURRENT) {
        fault = Schema.damage(database).map(DatabaseLook::damaged);
        fault = fault.isEmpty() && Schema.isUnfilled(database) ? Optional.of(UNFILLED) : fault;
      }
      return new DatabaseLook(Optional.of(copy), fault);
    } catch (SQLException e) {
      if (!journals && Opening.isNoDatabase(e)) {
        throw Schema.foreign(file);
      }
      return new DatabaseLook(
          Optional.of(copy), Optional.of(damaged(String.valueOf(e.getMessage()))));
    }
  }

  private static String damaged(String what) {
    return "it is damaged (" + what + ")";
  }

  /** Has the lines of its copy taken, as far as they can be read. */
  void readInto(Rebuilt rebuilt, WorkFolder work) throws IOException, SQLException {
    DatabaseLines.read(work.copyOfDatabase(copy.orElseThrow()), rebuilt::take);
  }

  /** The same, with what it shows held against what its lines say. */
  DatabaseLook with(Rebuilt rebuilt, Path journals) throws IOException {
    if (fault.isPresent()) {
      return this;
    }
    try {
      Differences found = rebuilt.against(copy.orElseThrow(), journals);
      return found.none() ? this : new DatabaseLook(copy, Optional.of(found.words()));
    } catch (SQLException e) {
      return new DatabaseLook(copy, Optional.of(damaged(String.valueOf(e.getMessage()))));
    }
  }
}
