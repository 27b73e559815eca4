package padside.sync;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import padside.fact.Fault;
import padside.store.Arrived;
import padside.store.Exchange;
import padside.store.Holdings;

/**
 * The lines of a parcel a log lacks, a batch at a time; while one batch is put into the log the
 * next is read on another thread.
 */
final class ParcelBatches implements AutoCloseable {
  private static final int MOST_BYTES = 1 << 20;

  private final ParcelFile parcel;
  private final ParcelFile.Lines lines;
  private final Holdings known;
  private CompletableFuture<Batch> ahead;

  /**
   * Some lines.
   *
   * @param names what they say they are
   * @param last true when nothing follows
   */
  record Batch(Arrived lines, Holdings names, boolean last) {}

  private ParcelBatches(ParcelFile parcel, ParcelFile.Lines lines, Holdings known) {
    this.parcel = parcel;
    this.lines = lines;
    this.known = known;
    this.ahead = CompletableFuture.supplyAsync(this::read);
  }

  /**
   * Begins to read.
   *
   * @param known lines that are passed over
   */
  static ParcelBatches of(ParcelFile parcel, Holdings known) throws Fault {
    return new ParcelBatches(parcel, parcel.lines(), known);
  }

  /** The next batch, which may be empty; asked no more after the last one. */
  Batch next() throws Fault {
    try {
      Batch batch = ahead.join();
      if (!batch.last) {
        ahead = CompletableFuture.supplyAsync(this::read);
      }
      return batch;
    } catch (CompletionException e) {
      if (e.getCause() instanceof UncheckedIOException failed) {
        throw SyncFaults.unreadable(parcel.file(), failed.getCause());
      }
      throw e;
    }
  }

  private Batch read() {
    List<byte[]> batch = new ArrayList<>();
    HoldingsFound names = new HoldingsFound();
    int bytes = 0;
    boolean last = false;
    while (!last && batch.size() < Exchange.MOST_LINES && bytes <= MOST_BYTES) {
      Optional<byte[]> line = line();
      last = line.isEmpty();
      if (line.isPresent()) {
        Optional<JournalName> name = JournalName.of(line.get());
        if (name.isEmpty() || !known.has(name.get().run(), name.get().n())) {
          name.ifPresent(names::add);
          batch.add(line.get());
          bytes += line.get().length;
        }
      }
    }
    return new Batch(Arrived.read(batch), names.all(), last);
  }

  private Optional<byte[]> line() {
    try {
      return lines.next();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() throws Fault {
    ahead.exceptionally(failed -> null).join(); // it reads from what is closed here
    lines.close();
  }
}
