package padside.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import padside.flight.Fault;

/** What makes an SQLite file a log of this version. */
final class Schema {
  /** The letters PADS, by which tools know the file. */
  static final int APPLICATION_ID = 0x50414453;

  /** Version of the tables; those of an older one are built anew from the lines. */
  static final int VERSION = 1;

  /** What was found in a file. */
  enum Found {
    EMPTY,
    CURRENT,
    OLDER
  }

  private Schema() {}

  /** Looks whose file it is; refuses another program's and a newer version's. */
  static Found look(Database database, Path file) throws SQLException, Fault {
    long application = database.number("PRAGMA application_id");
    long version = database.number("PRAGMA user_version");
    if (application == 0
        && version == 0
        && database.number("SELECT count(*) FROM sqlite_schema") == 0) {
      return Found.EMPTY;
    }
    if (application != APPLICATION_ID) {
      throw new Fault(
          "log-foreign",
          "The file " + file + " belongs to another program (application id " + application + ").",
          "Move it elsewhere, or name another folder for the log.");
    }
    if (version > VERSION) {
      throw new Fault(
          "log-newer",
          "The log "
              + file
              + " was made by a newer Padside (log version "
              + version
              + ", this one knows "
              + VERSION
              + ").",
          "Update Padside on this machine, or name another folder for the log.");
    }
    return version < VERSION ? Found.OLDER : Found.CURRENT;
  }

  /** Makes the tables in an empty file. */
  static void make(Database database) throws SQLException {
    database.begin();
    database.script("PRAGMA application_id = " + APPLICATION_ID);
    database.script("PRAGMA user_version = " + VERSION);
    database.script(text());
    KindViews.refresh(database);
    database.commit();
  }

  /** The first fault SQLite finds in the file, by its thorough check. */
  static Optional<String> damage(Database database) throws SQLException {
    List<String> faults = database.list(row -> row.getString(1), "PRAGMA integrity_check(1)");
    if (!faults.equals(List.of("ok"))) {
      return Optional.of(faults.isEmpty() ? "no answer from the check" : faults.get(0));
    }
    return database.number("SELECT count(*) FROM pragma_foreign_key_check") > 0
        ? Optional.of("rows that belong to nothing")
        : Optional.empty();
  }

  private static String text() {
    try (InputStream bytes = Schema.class.getResourceAsStream("schema.sql")) {
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
