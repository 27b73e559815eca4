package padside.sync;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;
import padside.store.Holdings.Span;

/**
 * Gives lines and takes them. A batch is answered once it is on the medium and before the next is
 * sent: whatever breaks off, what was answered need not go again.
 */
final class Batches {
  /** Lines read from a log at once. */
  private static final int AT_ONCE = 64;

  /** Bytes of lines after which a batch goes. */
  private static final int ENOUGH = 1 << 20;

  private static final String HEAD = "\"head\"";
  private static final int SENTENCES = 20;

  /** So many lines that are none are no accident. */
  private static final int TOO_MANY = 1000;

  private final Wire wire;
  private final Exchange log;
  private final Terms terms;
  private final List<String> batch = new ArrayList<>();
  private int bytes;
  private long done;
  private long of;
  private long later;
  private int refused;
  private Optional<Set<String>> agreed = Optional.empty();

  Batches(Wire wire, Exchange log, Terms terms) {
    this.wire = wire;
    this.log = log;
    this.terms = terms;
  }

  /** Takes headers of these machines only. */
  Batches only(Set<String> devices) {
    agreed = Optional.of(devices);
    return this;
  }

  private void check(String raw) throws Wire.Damage {
    if (agreed.isPresent() && raw.contains(HEAD)) {
      Optional<Exchange.Device> device =
          ParcelForm.json(StandardCharsets.UTF_8.encode(raw)).value().flatMap(JournalName::device);
      if (device.isPresent() && !agreed.get().contains(device.get().id())) {
        throw new Wire.Damage("lines of a machine that was not named came");
      }
    }
  }

  /** Gives lines; answers how many of them the other lacked. */
  long give(Holdings lines, Remarks remarks) throws IOException, Fault {
    done = 0;
    of = lines.count();
    for (Map.Entry<String, List<Span>> run : lines.runs().entrySet()) {
      for (Span span : run.getValue()) {
        give(run.getKey(), span, remarks);
      }
    }
    flush(remarks);
    wire.send(Wire.Kind.GIVEN);
    return done;
  }

  private void give(String run, Span span, Remarks remarks) throws IOException, Fault {
    for (long first = span.first(); first <= span.last(); first += AT_ONCE) {
      long last = Math.min(span.last(), first + AT_ONCE - 1);
      for (String raw : log.lines(run, new Span(first, last))) {
        batch.add(raw);
        bytes += raw.length();
        if (batch.size() == Exchange.MOST_LINES || bytes >= ENOUGH) {
          flush(remarks);
        }
      }
    }
  }

  private void flush(Remarks remarks) throws IOException, Fault {
    if (batch.isEmpty()) {
      return;
    }
    wire.send(
        Wire.Kind.LINES,
        message -> {
          message.writeInt(batch.size());
          for (String raw : batch) {
            byte[] line = raw.getBytes(StandardCharsets.UTF_8);
            message.writeInt(line.length);
            message.write(line);
          }
        });
    Exchange.Taken kept = wire.receive(Wire.Kind.KEPT, message -> kept(message, batch.size()));
    kept.refused().forEach(remarks::add);
    done += kept.fresh();
    batch.clear();
    bytes = 0;
    terms.moved(Terms.Stage.GIVING, done, of);
  }

  private static Exchange.Taken kept(DataInputStream message, int sent) throws IOException {
    int fresh = Wire.count(message, sent);
    int known = Wire.count(message, sent - fresh);
    return new Exchange.Taken(fresh, known, 0, Wire.texts(message, SENTENCES));
  }

  /**
   * Takes lines until the other has given them all; answers how many the log lacked.
   *
   * @param promised lines the other has and this log lacks: more do not come
   */
  long take(long promised, Remarks remarks) throws IOException, Fault {
    done = 0;
    long came = 0;
    while (true) {
      Wire.Message message = wire.receive();
      if (message.kind() == Wire.Kind.GIVEN) {
        return done;
      }
      if (message.kind() != Wire.Kind.LINES) {
        throw new Wire.Damage(message.kind() + " came where lines belong");
      }
      List<String> raws = Wire.read(message, Batches::lines);
      came += raws.size();
      if (came > promised) {
        throw new Wire.Damage("more lines came than were promised");
      }
      for (String raw : raws) {
        check(raw);
      }
      take(raws, remarks);
      terms.moved(Terms.Stage.TAKING, Math.min(done, promised), promised);
    }
  }

  private void take(List<String> raws, Remarks remarks) throws IOException, Fault {
    Exchange.Taken taken = log.take(raws);
    done += taken.fresh();
    later += taken.later();
    wire.send(
        Wire.Kind.KEPT,
        message -> {
          message.writeInt(taken.fresh());
          message.writeInt(taken.known());
          Wire.texts(message, taken.refused().stream().limit(SENTENCES).toList());
        });
    taken.refused().forEach(remarks::add);
    refused += taken.refused().size();
    if (refused > TOO_MANY) {
      throw new Wire.Damage("more than " + TOO_MANY + " lines that are none came");
    }
  }

  private static List<String> lines(DataInputStream message) throws IOException {
    int count = Wire.count(message, Exchange.MOST_LINES);
    List<String> lines = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      lines.add(new String(Wire.bytes(message, Exchange.MOST_BYTES), StandardCharsets.UTF_8));
    }
    return lines;
  }

  /** Of the lines taken those of a newer version. */
  long later() {
    return later;
  }
}
