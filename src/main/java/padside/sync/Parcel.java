package padside.sync;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import padside.store.Exchange;
import padside.store.Holdings;

/**
 * The head of a parcel: a file of journal lines somebody wrote for others, once and for all.
 *
 * @param by who wrote it
 * @param lines those in it by who kept them; of nobody known, by a machine without id
 * @param unsound by the name of other parcels, lines these promise and its writer could not read
 * @param bytes of the lines
 */
record Parcel(
    Exchange.Device by,
    Map<Exchange.Device, Holdings> lines,
    Map<String, Holdings> unsound,
    long bytes) {
  /** Who kept lines whose run has lost its header. */
  static final Exchange.Device UNKNOWN = new Exchange.Device("", "");

  Parcel {
    lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
    unsound = Map.copyOf(unsound);
  }

  Holdings holdings() {
    return lines.values().stream().reduce(Holdings.none(), Holdings::with);
  }

  Parcel of(long other) {
    return new Parcel(by, lines, unsound, other);
  }
}
