package padside.sync;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import padside.store.Exchange;
import padside.store.Holdings;
import padside.store.Holdings.Span;
import padside.store.Summed;
import padside.units.Reading;

/** How the head of a parcel is written and read; the package's documentation lays it down. */
final class ParcelForm {
  static final int VERSION = 1;

  /** Bytes of a head at most. */
  static final int MOST_BYTES = 16 << 20;

  /** No line of a journal is shorter: its keys, its run and its checksum alone take more. */
  private static final int SHORTEST_LINE = 60;

  /** Bytes of a parcel at most, and the largest count of a line. */
  private static final long LARGEST = 999_999_999_999_999L;

  private static final int MOST_LABEL = 200;
  private static final String MARK = "parcel";

  private ParcelForm() {}

  /** The line without its end; as long for any number of bytes. */
  static String write(Parcel parcel) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("padside", MARK);
    json.put("v", VERSION);
    json.put("by", device(parcel.by()));
    List<Map<String, Object>> lines = new ArrayList<>();
    parcel
        .lines()
        .forEach(
            (device, holdings) -> {
              Map<String, Object> of = device(device);
              of.put("runs", runs(holdings));
              lines.add(of);
            });
    json.put("lines", lines);
    Map<String, Object> unsound = new TreeMap<>();
    parcel.unsound().forEach((name, holdings) -> unsound.put(name, runs(holdings)));
    json.put("unsound", unsound);
    json.put("bytes", "%015d".formatted(parcel.bytes()));
    return Summed.write(json);
  }

  private static Map<String, Object> device(Exchange.Device device) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", device.id());
    String label = device.label();
    json.put("label", label.substring(0, Math.min(label.length(), MOST_LABEL)));
    return json;
  }

  private static Map<String, Object> runs(Holdings holdings) {
    Map<String, Object> json = new LinkedHashMap<>();
    holdings
        .runs()
        .forEach(
            (run, spans) -> {
              List<Long> ends = new ArrayList<>();
              for (Span span : spans) {
                ends.add(span.first());
                ends.add(span.last());
              }
              json.put(run, ends);
            });
    return json;
  }

  /** The version of a head that is sound: 0 where it is none. */
  static long version(Map<?, ?> json) {
    return MARK.equals(json.get("padside")) && json.get("v") instanceof Long version && version > 0
        ? version
        : 0;
  }

  static Reading<Map<?, ?>> json(ByteBuffer line) {
    return Summed.read(line, MOST_BYTES);
  }

  /** What a sound head of this version says. */
  static Reading<Parcel> read(Map<?, ?> json) {
    try {
      Map<Exchange.Device, Holdings> lines = new LinkedHashMap<>();
      for (Object each : (List<?>) json.get("lines")) {
        Map<?, ?> of = (Map<?, ?>) each;
        lines.merge(device(of), holdings(of.get("runs")), Holdings::with);
      }
      Map<String, Holdings> unsound = new TreeMap<>();
      ((Map<?, ?>) json.get("unsound"))
          .forEach((name, runs) -> unsound.put((String) name, holdings(runs)));
      long bytes = Long.parseLong((String) json.get("bytes"));
      Parcel parcel = new Parcel(device((Map<?, ?>) json.get("by")), lines, unsound, bytes);
      return bytes < 0 || bytes > LARGEST || promisesTooMuch(parcel)
          ? Reading.refused("it promises more lines than its bytes can hold")
          : Reading.of(parcel);
    } catch (IllegalArgumentException | ClassCastException | NullPointerException e) {
      return Reading.refused("its head says nothing that makes sense");
    }
  }

  private static boolean promisesTooMuch(Parcel parcel) {
    long most = parcel.bytes() / SHORTEST_LINE;
    long lines = 0;
    for (Holdings holdings : parcel.lines().values()) {
      for (List<Span> spans : holdings.runs().values()) {
        for (Span span : spans) {
          lines = span.count() > most ? most + 1 : lines + span.count();
          if (lines > most) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static Exchange.Device device(Map<?, ?> json) {
    String id = (String) json.get("id");
    if (!id.isEmpty() && !Holdings.isRun(id)) {
      throw new IllegalArgumentException("no id of a machine");
    }
    return new Exchange.Device(id, (String) json.get("label"));
  }

  private static Holdings holdings(Object json) {
    Map<String, List<Span>> runs = new TreeMap<>();
    ((Map<?, ?>) json).forEach((run, ends) -> runs.put((String) run, spans((List<?>) ends)));
    return new Holdings(runs);
  }

  private static List<Span> spans(List<?> ends) {
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i + 1 < ends.size(); i += 2) {
      Span span = new Span((Long) ends.get(i), (Long) ends.get(i + 1));
      if (span.last() > LARGEST) {
        throw new IllegalArgumentException("a count no run reaches");
      }
      spans.add(span);
    }
    return spans;
  }
}
