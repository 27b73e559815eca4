package padside.sync;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;
import padside.store.Holdings.Span;
import padside.store.WholeFile;

/** Writes lines of a log into a parcel of their own: under another name, forced, then named. */
final class ParcelWriter {
  private static final int BLOCK = 1 << 20;

  private final Exchange log;
  private final Parcel parcel;
  private final Terms terms;
  private final ByteBuffer block = ByteBuffer.allocate(BLOCK);
  private Optional<Fault> failed = Optional.empty();
  private long at;
  private long done;

  /** Of a log's lines, and what else the head is to say. */
  ParcelWriter(Exchange log, Parcel parcel, Terms terms) {
    this.log = log;
    this.parcel = parcel;
    this.terms = terms;
  }

  static ParcelWriter of(Exchange log, Holdings lines, Map<String, Holdings> unsound, Terms terms)
      throws Fault {
    return new ParcelWriter(log, new Parcel(log.self(), Writers.of(log, lines), unsound, 0), terms);
  }

  /**
   * Writes the file, all of it or none.
   *
   * @param unfinished the name it has until it is whole
   */
  void write(Path file, String unfinished) throws IOException, Fault {
    try {
      WholeFile.forOthers(file).fill(unfinished, this::fill);
    } catch (IOException e) {
      if (failed.isPresent()) {
        throw failed.get();
      }
      throw e;
    }
    ParcelFile written = ParcelFile.look(file);
    if (written.remark().isPresent()) {
      Files.delete(file);
      throw new IOException("read back it is not what was written");
    }
  }

  /** The head last, for it says how many bytes follow; it is as long whatever their number. */
  private void fill(FileChannel file) throws IOException {
    byte[] head = head(0);
    at = head.length;
    long start = at;
    try {
      for (Holdings holdings : parcel.lines().values()) {
        for (Map.Entry<String, List<Span>> run : holdings.runs().entrySet()) {
          for (Span span : run.getValue()) {
            put(file, run.getKey(), span);
          }
        }
      }
    } catch (Fault fault) {
      failed = Optional.of(fault);
      throw new IOException(fault);
    }
    flush(file);
    WholeFile.write(file, ByteBuffer.wrap(head(at - start)), 0);
  }

  private byte[] head(long bytes) {
    return (ParcelForm.write(parcel.of(bytes)) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private void put(FileChannel file, String run, Span span) throws IOException, Fault {
    for (long first = span.first(); first <= span.last(); first += Exchange.MOST_LINES) {
      long last = Math.min(span.last(), first + Exchange.MOST_LINES - 1);
      List<String> raws = log.lines(run, new Span(first, last));
      if (raws.size() != last - first + 1) {
        throw new IllegalStateException("the log lacks lines it said it has");
      }
      for (String raw : raws) {
        put(file, (raw + "\n").getBytes(StandardCharsets.UTF_8));
      }
      done += raws.size();
      terms.moved(Terms.Stage.GIVING, done, parcel.holdings().count());
    }
  }

  private void put(FileChannel file, byte[] line) throws IOException {
    if (line.length > block.remaining()) {
      flush(file);
    }
    block.put(line);
  }

  private void flush(FileChannel file) throws IOException {
    block.flip();
    at = WholeFile.write(file, block, at);
    block.clear();
  }
}
