package padside.sync;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;

/** Takes what a log lacks out of parcels, a batch at a time. */
final class Taking {
  private static final int MOST_BYTES = 4 << 20;

  private final Exchange log;
  private final Terms terms;
  private final long of;
  private final Remarks remarks;
  private final List<String> batch = new ArrayList<>();
  private HoldingsFound inBatch = new HoldingsFound();
  private Holdings known;
  private int bytes;
  private long fresh;
  private long later;

  /**
   * Into a log.
   *
   * @param known what it has
   * @param of how many lines are to come
   */
  Taking(Exchange log, Holdings known, Terms terms, long of, Remarks remarks) {
    this.log = log;
    this.known = known;
    this.terms = terms;
    this.of = of;
    this.remarks = remarks;
  }

  /** Takes the lines the log lacks; every line of the parcel is looked at. */
  void from(ParcelFile parcel) throws Fault {
    parcel.read(this::line);
    take();
  }

  private void line(byte[] line) throws Fault {
    Optional<JournalName> name = JournalName.of(line);
    if (name.isPresent() && known.has(name.get().run(), name.get().n())) {
      return;
    }
    name.ifPresent(inBatch::add);
    batch.add(new String(line, StandardCharsets.UTF_8));
    bytes += line.length;
    if (batch.size() == Exchange.MOST_LINES || bytes > MOST_BYTES) {
      take();
    }
  }

  private void take() throws Fault {
    if (batch.isEmpty()) {
      return;
    }
    Exchange.Taken taken = log.take(batch);
    fresh += taken.fresh();
    later += taken.later();
    taken.refused().forEach(remarks::add);
    if (taken.refused().isEmpty()) {
      known = known.with(inBatch.all());
    }
    batch.clear();
    inBatch = new HoldingsFound();
    bytes = 0;
    terms.moved(Terms.Stage.TAKING, Math.min(fresh, of), of);
  }

  /** What the log has for certain; of a batch in which something was refused nothing counts. */
  Holdings known() {
    return known;
  }

  /** Lines that are new. */
  long fresh() {
    return fresh;
  }

  /** Of those the ones of a newer version. */
  long later() {
    return later;
  }
}
