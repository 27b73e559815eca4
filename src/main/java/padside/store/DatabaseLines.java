package padside.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The journal lines in a database that may be damaged, read as far as they can be from its first
 * line on and, where that ends early, from its last one back.
 */
final class DatabaseLines {
  private static final int BATCH = 512;

  /** Gets the lines, some at a time. */
  interface Taker {
    /** Answers how many of them are sound. */
    int take(List<String> raws) throws SQLException;
  }

  /**
   * What could be read.
   *
   * @param unsound lines whose checksum does not fit
   * @param stopped what SQLite said where there were lines it could not read
   */
  record Read(int lines, int unsound, Optional<String> stopped) {
    boolean whole() {
      return unsound == 0 && stopped.isEmpty();
    }

    /** Why it is not whole. */
    String words() {
      return stopped.orElse(unsound + " lines with a checksum that does not fit");
    }
  }

  private record Row(long id, String raw) {}

  private final Path file;
  private final Taker taker;
  private int lines;
  private int sound;
  private Optional<String> stopped = Optional.empty();

  private DatabaseLines(Path file, Taker taker) {
    this.file = file;
    this.taker = taker;
  }

  /** Reads a database nobody else uses, such as a copy: SQLite may write to what it opens. */
  static Read read(Path file, Taker taker) throws SQLException {
    return new DatabaseLines(file, taker).read();
  }

  private Read read() throws SQLException {
    long reached = walk("SELECT rowid, raw FROM op WHERE rowid > ?1 ORDER BY rowid LIMIT ?2", 0);
    if (stopped.isPresent()) {
      Optional<String> first = stopped;
      walk(
          "SELECT rowid, raw FROM op WHERE rowid < ?1 AND rowid > "
              + reached
              + " ORDER BY rowid DESC LIMIT ?2",
          Long.MAX_VALUE);
      stopped = first;
    }
    return new Read(lines, lines - sound, stopped);
  }

  private long walk(String sql, long from) throws SQLException {
    boolean upwards = from < Long.MAX_VALUE;
    long at = from;
    int batch = BATCH;
    while (batch > 0) {
      Optional<List<Row>> rows = rows(sql, at, batch);
      if (rows.isEmpty()) {
        batch /= 8; // a smaller bite may still go
        continue;
      }
      if (rows.get().isEmpty()) {
        return at;
      }
      lines += rows.get().size();
      sound += taker.take(rows.get().stream().map(Row::raw).filter(Objects::nonNull).toList());
      long last = rows.get().get(rows.get().size() - 1).id();
      if (upwards ? last <= at : last >= at) {
        stopped = Optional.of("its lines are out of order");
        return at;
      }
      at = last;
    }
    return at;
  }

  private Optional<List<Row>> rows(String sql, long at, int batch) {
    try (Database database = Database.open(file)) {
      return Optional.of(
          database.list(row -> new Row(row.getLong(1), row.getString(2)), sql, at, batch));
    } catch (SQLException e) {
      stopped = Optional.of(String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }
}
