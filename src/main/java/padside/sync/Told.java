package padside.sync;

import java.util.List;
import padside.store.Exchange;

/**
 * What came of an exchange.
 *
 * @param other the machine at the other end
 * @param out lines the other lacked and now has; when only looked, lacks
 * @param in lines this log lacked and now has; when only looked, lacks
 * @param later of those that came, lines of a newer version
 * @param here what this machine has to say of it, in plain words; mostly nothing
 * @param there the same of the other
 * @param bytesOut bytes that went, greeting and all
 * @param bytesIn bytes that came
 */
public record Told(
    Exchange.Device other,
    long out,
    long in,
    long later,
    List<String> here,
    List<String> there,
    long bytesOut,
    long bytesIn) {
  public Told {
    here = List.copyOf(here);
    there = List.copyOf(there);
  }

  /** Of an exchange by files, at whose other end nobody answers. */
  static Told byFiles(Exchange.Device other, long out, long in, long later, Remarks here) {
    return new Told(other, out, in, later, here.all(), List.of(), 0, 0);
  }
}
