package padside.sync;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;

/**
 * One file with everything a log has, to be sent or carried however one likes.
 *
 * @param file wherever it lies
 */
public record Bundle(Path file) {
  private static final String UNFINISHED = ".unfinished";

  /** Writes all the log has; answers how many lines. */
  public long write(Exchange log, Terms terms) throws Fault {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw SyncFaults.exists(file);
    }
    Holdings all = log.holdings();
    if (!terms.onlyLook()) {
      try {
        ParcelWriter.of(log, all, Map.of(), terms).write(file, file.getFileName() + UNFINISHED);
      } catch (IOException e) {
        throw SyncFaults.notWritten(file, e, 0);
      }
    }
    return all.count();
  }

  /** Takes what the log lacks. */
  public Told take(Exchange log, Terms terms) throws Fault {
    if (!ParcelFile.isPlain(file)) {
      throw SyncFaults.noBundle(file, "it is no file of its own");
    }
    ParcelFile parcel = ParcelFile.look(file);
    boolean nothing = parcel.remark().isPresent() && parcel.head().holdings().isEmpty();
    if (parcel.isNewer() || nothing) {
      throw SyncFaults.noBundle(file, parcel.remark().orElseThrow());
    }
    Remarks remarks = new Remarks();
    parcel
        .remark()
        .ifPresent(why -> remarks.add("Of " + file + " only a part is sound: " + why + "."));
    Holdings mine = log.holdings();
    Holdings lacking = parcel.head().holdings().without(mine);
    Taking taking = new Taking(log, mine, terms, lacking.count(), remarks);
    if (!terms.onlyLook() && !lacking.isEmpty()) {
      List<Stranger> strangers = Parcels.of(List.of(parcel)).strangers(log, lacking);
      if (!strangers.isEmpty() && !terms.mayTake(strangers)) {
        throw SyncFaults.declined();
      }
      taking.from(parcel);
      log.settle().forEach(remarks::add);
    }
    long missing = terms.onlyLook() ? 0 : lacking.without(log.holdings()).count();
    if (missing > 0) {
      remarks.add("Of " + file + " " + missing + " lines are damaged; write it anew to have them.");
    }
    return new Told(
        parcel.head().by(),
        0,
        terms.onlyLook() ? lacking.count() : taking.fresh(),
        taking.later(),
        remarks.all(),
        List.of(),
        0,
        0);
  }
}
