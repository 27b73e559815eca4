package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import padside.units.Reading;

/** Reads the lines of journals while those before are put into the tables. */
final class LinesAhead implements JournalFiles.Reader<SQLException> {
  /** Lines read at a time. */
  private static final int MOST = 256;

  /** Bytes read at a time, and one line more. */
  private static final int MOST_BYTES = 1 << 20;

  /**
   * A line as it stands in a journal.
   *
   * @param next the first byte after it; where the file ends within the line its own first byte
   */
  record Line(long at, long next, ByteBuffer bytes, Reading<ReadyLine> reading) {}

  /** Gets the lines, in order. */
  interface Taker {
    void take(Line line) throws SQLException;
  }

  private record Unread(long at, long next, ByteBuffer bytes) {
    Line read() {
      Reading<ReadyLine> reading =
          next == at ? Reading.refused(BadLine.TORN) : ReadyLine.read(bytes.duplicate());
      return new Line(at, next, bytes, reading);
    }
  }

  private final Taker taker;
  private List<Unread> unread = new ArrayList<>();
  private int unreadBytes;
  private Optional<CompletableFuture<List<Line>>> ahead = Optional.empty();

  LinesAhead(Taker taker) {
    this.taker = taker;
  }

  /** Reads a journal from a line's beginning on; when this returns or throws all read is taken. */
  void read(Path journal, long from) throws IOException, SQLException {
    try {
      JournalFiles.read(journal, from, this);
    } finally {
      takeAhead();
      for (Unread line : unread) {
        taker.take(line.read());
      }
      unread = new ArrayList<>();
      unreadBytes = 0;
    }
  }

  @Override
  public void line(long at, long next, ByteBuffer bytes) throws SQLException {
    add(new Unread(at, next, bytes));
  }

  @Override
  public void torn(long at, ByteBuffer bytes) throws SQLException {
    add(new Unread(at, at, bytes));
  }

  private void add(Unread line) throws SQLException {
    unread.add(line);
    unreadBytes += line.bytes().remaining();
    if (unread.size() >= MOST || unreadBytes >= MOST_BYTES) {
      List<Unread> batch = unread;
      unread = new ArrayList<>();
      unreadBytes = 0;
      CompletableFuture<List<Line>> next =
          CompletableFuture.supplyAsync(() -> batch.stream().map(Unread::read).toList());
      takeAhead();
      ahead = Optional.of(next);
    }
  }

  private void takeAhead() throws SQLException {
    Optional<CompletableFuture<List<Line>>> batch = ahead;
    ahead = Optional.empty();
    if (batch.isPresent()) {
      for (Line line : batch.get().join()) {
        taker.take(line);
      }
    }
  }
}
