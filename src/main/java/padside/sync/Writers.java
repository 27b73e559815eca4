package padside.sync;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;
import padside.store.Holdings.Span;

/** Whose lines are whose, by the headers of their runs. */
final class Writers {
  private Writers() {}

  /** Lines of a log by the machine that kept them. */
  static Map<Exchange.Device, Holdings> of(Exchange log, Holdings lines) throws Fault {
    Map<String, Exchange.Device> devices = new HashMap<>();
    for (String run : lines.runs().keySet()) {
      for (String raw : log.lines(run, new Span(0, 0))) {
        ParcelForm.json(ByteBuffer.wrap(raw.getBytes(StandardCharsets.UTF_8)))
            .value()
            .flatMap(JournalName::device)
            .ifPresent(device -> devices.put(run, device));
      }
    }
    return by(lines, devices);
  }

  static Map<Exchange.Device, Holdings> by(Holdings lines, Map<String, Exchange.Device> devices) {
    Map<Exchange.Device, Map<String, List<Span>>> sorted = new LinkedHashMap<>();
    lines
        .runs()
        .forEach(
            (run, spans) ->
                sorted
                    .computeIfAbsent(
                        devices.getOrDefault(run, Parcel.UNKNOWN), d -> new HashMap<>())
                    .put(run, spans));
    Map<Exchange.Device, Holdings> by = new LinkedHashMap<>();
    sorted.forEach((device, runs) -> by.put(device, new Holdings(runs)));
    return by;
  }
}
