package padside.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.jdbc4.JDBC4Connection;

/** The one connection to an SQLite file, its statements kept ready. */
final class Database implements AutoCloseable {
  /** Reads one row. */
  interface Row<T> {
    T read(ResultSet row) throws SQLException;
  }

  /** What changes nothing in the file. */
  private static final List<String> TO_LOOK =
      List.of(
          "locking_mode = EXCLUSIVE",
          "foreign_keys = ON",
          "trusted_schema = OFF",
          "cell_size_check = ON",
          "temp_store = MEMORY");

  /**
   * The journal is the barrier that makes a save last; here NORMAL only keeps the file consistent.
   */
  private static final List<String> TO_WRITE =
      List.of(
          "journal_mode = WAL",
          "synchronous = NORMAL",
          "wal_autocheckpoint = 100",
          "journal_size_limit = 4194304",
          "cache_size = -2000");

  /** A WAL would have everything written twice. */
  private static final List<String> TO_FILL =
      List.of("journal_mode = TRUNCATE", "synchronous = OFF", "cache_size = -16384");

  private static final int BUSY_MS = 3000;

  private final Connection connection;
  private final Map<String, PreparedStatement> ready = new HashMap<>();

  private Database(Connection connection) {
    this.connection = connection;
  }

  /** A database's file and what SQLite keeps beside it, as far as they are there. */
  static List<Path> files(Path file) {
    return Stream.of("", "-wal", "-shm", "-journal")
        .map(end -> file.resolveSibling(file.getFileName() + end))
        .filter(Files::exists)
        .toList();
  }

  /** Opens the file, which is made when missing, and changes nothing in it yet. */
  static Database open(Path file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(BUSY_MS);
    // As an address, so that no character in the path is taken for an option.
    Database database = new Database(connection(file.toUri().toString(), config));
    try {
      database.set(TO_LOOK);
      return database;
    } catch (SQLException e) {
      database.close();
      throw e;
    }
  }

  /** Opens a file nobody writes, to look: nothing is written to it or beside it. */
  static Database unchanging(Path file) throws SQLException {
    return new Database(connection(file.toUri() + "?mode=ro&immutable=1", new SQLiteConfig()));
  }

  /** An empty one that no file holds. */
  static Database inMemory() throws SQLException {
    Database database = new Database(connection(":memory:", new SQLiteConfig()));
    database.set(TO_LOOK);
    return database;
  }

  /** Without the driver's own entry, which would wait at every start until the JDK has noted it. */
  private static Connection connection(String address, SQLiteConfig config) throws SQLException {
    return new JDBC4Connection("jdbc:sqlite:" + address, address, config.toProperties());
  }

  /** Shows what another database holds under a name, until it is detached. */
  void attach(String name, Database other) throws SQLException {
    run("ATTACH ':memory:' AS " + name);
    connection.unwrap(SQLiteConnection.class).deserialize(name, other.bytes());
  }

  private byte[] bytes() throws SQLException {
    return connection.unwrap(SQLiteConnection.class).serialize("main");
  }

  /** Readies the file for writing and takes it for this program alone. */
  void toWrite() throws SQLException {
    set(TO_WRITE);
  }

  /**
   * Readies the file, marked as unfilled, for very much: a power cut may leave it of no use until
   * {@link #force} and {@link #toWrite} end that.
   */
  void toFill() throws SQLException {
    set(TO_FILL);
  }

  /** The next commit has all that was written before on the medium when it returns. */
  void force() throws SQLException {
    set(List.of("synchronous = FULL"));
  }

  private void set(List<String> pragmas) throws SQLException {
    for (String pragma : pragmas) {
      script("PRAGMA " + pragma);
    }
  }

  /** Runs statements without parameters. */
  void script(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  /** Runs a statement and answers how many rows it changed. */
  int run(String sql, Object... values) throws SQLException {
    return bound(sql, values).executeUpdate();
  }

  <T> List<T> list(Row<T> reader, String sql, Object... values) throws SQLException {
    List<T> rows = new ArrayList<>();
    try (ResultSet row = bound(sql, values).executeQuery()) {
      while (row.next()) {
        rows.add(reader.read(row));
      }
    }
    return rows;
  }

  /** As {@link #list} for a statement that will hardly be run again. */
  <T> List<T> once(Row<T> reader, String sql, Object... values) throws SQLException {
    List<T> rows = new ArrayList<>();
    try (PreparedStatement statement = connection.prepareStatement(sql);
        ResultSet row = bound(statement, values).executeQuery()) {
      while (row.next()) {
        rows.add(reader.read(row));
      }
    }
    return rows;
  }

  /** Does something with a row. */
  interface RowWork {
    void on(ResultSet row) throws SQLException;
  }

  /** Does something with one row after the other; answers how many there were. */
  int each(RowWork work, String sql, Object... values) throws SQLException {
    int rows = 0;
    try (ResultSet row = bound(sql, values).executeQuery()) {
      while (row.next()) {
        work.on(row);
        rows++;
      }
    }
    return rows;
  }

  /** The first rows the reader makes something of, so many at most. */
  <T> List<T> search(int limit, Row<Optional<T>> reader, String sql, Object... values)
      throws SQLException {
    List<T> found = new ArrayList<>();
    try (ResultSet row = bound(sql, values).executeQuery()) {
      while (found.size() < limit && row.next()) {
        reader.read(row).ifPresent(found::add);
      }
    }
    return found;
  }

  <T> Optional<T> first(Row<T> reader, String sql, Object... values) throws SQLException {
    try (ResultSet row = bound(sql, values).executeQuery()) {
      return row.next() ? Optional.of(reader.read(row)) : Optional.empty();
    }
  }

  /** The whole number a query answers with; zero when it answers with nothing. */
  long number(String sql, Object... values) throws SQLException {
    return first(row -> row.getLong(1), sql, values).orElse(0L);
  }

  /** From now on what is not committed stays in memory, however much it is. */
  void keepInMemory() throws SQLException {
    set(List.of("cache_spill = OFF"));
  }

  /** Writes a copy without gaps into a file that is not there yet. */
  void copyTo(Path file) throws SQLException {
    for (PreparedStatement statement : ready.values()) {
      statement.close(); // one that was read in part would hold the copy up
    }
    ready.clear();
    run("VACUUM INTO ?1", file.toString());
  }

  void begin() throws SQLException {
    script("BEGIN IMMEDIATE");
  }

  /** Where {@link #backToMark} leads to, within a transaction. */
  void mark() throws SQLException {
    script("SAVEPOINT action");
  }

  void backToMark() throws SQLException {
    script("ROLLBACK TO action");
  }

  void commit() throws SQLException {
    script("COMMIT");
  }

  /** Gives up what was begun; a connection that cannot even do that is of no use any more. */
  void rollback() throws SQLException {
    script("ROLLBACK");
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }

  private PreparedStatement bound(String sql, Object... values) throws SQLException {
    PreparedStatement statement = ready.get(sql);
    if (statement == null) {
      statement = connection.prepareStatement(sql);
      ready.put(sql, statement);
    }
    return bound(statement, values);
  }

  private static PreparedStatement bound(PreparedStatement statement, Object... values)
      throws SQLException {
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
    return statement;
  }
}
