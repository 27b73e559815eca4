package padside.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;

/** What makes an SQLite file a log of this version. */
final class Schema {
  /** The letters PADS, by which tools know the file. */
  static final int APPLICATION_ID = 0x50414453;

  /** Version of the tables; those of an older one are built anew from the lines. */
  static final int VERSION = 7;

  /** Meta key: a sum over the tables as they were made. */
  private static final String TABLES = "tables";

  /** Meta key: a sum over the script that made them, its comments left out. */
  private static final String SCRIPT = "script";

  /** Meta key: the version of the tables. */
  private static final String MADE_BY = "version";

  /** Meta key: there from the making of the tables until they are filled for the first time. */
  private static final String UNFILLED = "unfilled";

  /** What was found in a file. */
  enum Found {
    EMPTY(""),
    CURRENT(""),
    OLDER("it is of an older version"),
    DAMAGED("it is damaged (header or tables are not those it was made with)");

    private final String unusable;

    Found(String unusable) {
      this.unusable = unusable;
    }

    /** Why it cannot be used as it is. */
    Optional<String> unusable() {
      return Optional.of(unusable).filter(why -> !why.isEmpty());
    }
  }

  private Schema() {}

  /** Looks whose file it is; refuses another program's and a newer version's. */
  static Found look(Database database, Path file) throws SQLException, Fault {
    long application = database.number("PRAGMA application_id");
    long version = database.number("PRAGMA user_version");
    if (database.number("SELECT count(*) FROM sqlite_schema") == 0
        && application == 0
        && version == 0) {
      return Found.EMPTY;
    }
    if (isOfThisVersion(database)) {
      boolean marked = application == APPLICATION_ID && version == VERSION;
      return !marked || !whole(database)
          ? Found.DAMAGED
          : LogTables.meta(database, SCRIPT).equals(Optional.of(script()))
              ? Found.CURRENT
              : Found.OLDER;
    }
    if (application != APPLICATION_ID) {
      throw foreign(file, application);
    }
    if (version > VERSION) {
      throw newer(file, version);
    }
    return version < VERSION ? Found.OLDER : Found.DAMAGED;
  }

  /** What is no database where nothing else says that there was a log. */
  static Fault foreign(Path file) {
    return new Fault(
        "log-foreign",
        "The file " + file + " is not a log, and there is no journal beside it.",
        "Move it elsewhere to begin a new log, or name another folder.");
  }

  private static Fault foreign(Path file, long application) {
    return new Fault(
        "log-foreign",
        "The file " + file + " belongs to another program (application id " + application + ").",
        "Move it elsewhere, or name another folder for the log.");
  }

  private static Fault newer(Path file, long version) {
    return new Fault(
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

  /** What the tables themselves say: a damaged file header must not pass for a newer version. */
  private static boolean isOfThisVersion(Database database) throws SQLException {
    return database.number("SELECT count(*) FROM sqlite_schema WHERE name = 'meta'") == 1
        && LogTables.meta(database, MADE_BY).equals(Optional.of(String.valueOf(VERSION)));
  }

  /** Makes the tables in an empty file. */
  static void make(Database database) throws SQLException {
    database.begin();
    database.script("PRAGMA application_id = " + APPLICATION_ID);
    database.script("PRAGMA user_version = " + VERSION);
    database.script(text());
    KindViews.refresh(database);
    LogTables.setMeta(database, MADE_BY, String.valueOf(VERSION));
    LogTables.setMeta(database, TABLES, tables(database));
    LogTables.setMeta(database, SCRIPT, script());
    LogTables.setMeta(database, UNFILLED, "1");
    database.commit();
  }

  /** True while not all that is to be had was taken into the tables since they were made. */
  static boolean isUnfilled(Database database) throws SQLException {
    return LogTables.meta(database, UNFILLED).isPresent();
  }

  /** From now on, until {@link #endFilling}, a start builds the tables from the journals. */
  static void beginFilling(Database database) throws SQLException {
    LogTables.setMeta(database, UNFILLED, "1");
    database.toFill(); // the change of the mode has the mark on the medium first
  }

  /** All is on the medium before the mark goes. */
  static void endFilling(Database database) throws SQLException {
    database.force();
    LogTables.setMeta(database, UNFILLED, "1");
    noteFilled(database);
    database.toWrite();
  }

  /** Within the caller's transaction, if there is one. */
  static void noteFilled(Database database) throws SQLException {
    database.run("DELETE FROM meta WHERE key = ?1", UNFILLED);
  }

  /** Takes every line out of the tables again. */
  static void empty(Database database) throws SQLException {
    database.begin();
    SearchRows.empty(database);
    for (String table :
        List.of("cell", "replaced", "record", "op", "run", "journal_file", "bad_line")) {
      database.run("DELETE FROM " + table);
    }
    database.commit();
  }

  /** True when tables and indexes are those the file was made with. */
  private static boolean whole(Database database) throws SQLException {
    return LogTables.meta(database, TABLES).equals(Optional.of(tables(database)));
  }

  private static String tables(Database database) throws SQLException {
    return Summed.sum(
        String.join(
            "\n",
            database.list(
                row -> row.getString(1) + row.getString(2),
                "SELECT name, sql FROM sqlite_schema WHERE type <> 'view' ORDER BY name")));
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

  private static String script() {
    return Summed.sum(text().replaceAll("--.*", "").replaceAll("\\s+", " "));
  }

  private static String text() {
    try (InputStream bytes = Schema.class.getResourceAsStream("schema.sql")) {
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
