package padside.sync;

import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;

/** Takes what a log lacks out of parcels, a batch at a time. */
final class Taking {
  private final Exchange log;
  private final Terms terms;
  private final long of;
  private final Remarks remarks;
  private Holdings known;
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
    try (ParcelBatches batches = ParcelBatches.of(parcel, known)) {
      ParcelBatches.Batch batch = batches.next();
      take(batch);
      while (!batch.last()) {
        batch = batches.next();
        take(batch);
      }
    }
  }

  private void take(ParcelBatches.Batch batch) throws Fault {
    if (batch.lines().count() == 0) {
      return;
    }
    Exchange.Taken taken = log.take(batch.lines());
    fresh += taken.fresh();
    later += taken.later();
    taken.refused().forEach(remarks::add);
    if (taken.refused().isEmpty()) {
      known = known.with(batch.names());
    }
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
