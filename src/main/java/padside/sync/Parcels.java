package padside.sync;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;

/**
 * Some parcels, and what of them a log lacks.
 *
 * @param unsound by the name of a parcel, lines of it that somebody could not read
 */
record Parcels(List<ParcelFile> files, Map<String, Holdings> unsound) {
  Parcels {
    files = List.copyOf(files);
    unsound = Map.copyOf(unsound);
  }

  static Parcels of(List<ParcelFile> files) {
    Map<String, Holdings> unsound = new HashMap<>();
    for (ParcelFile file : files) {
      file.head().unsound().forEach((name, lines) -> unsound.merge(name, lines, Holdings::with));
    }
    return new Parcels(files, unsound);
  }

  /** As somebody found them who could not read some lines. */
  Parcels with(Map<String, Holdings> more) {
    Map<String, Holdings> all = new HashMap<>(unsound);
    more.forEach((name, lines) -> all.merge(name, lines, Holdings::with));
    return new Parcels(files, all);
  }

  /** What a parcel holds for all anybody knows. */
  Holdings in(ParcelFile file) {
    return sound(file, file.head().holdings());
  }

  private Holdings sound(ParcelFile file, Holdings lines) {
    Holdings damaged = unsound.getOrDefault(file.name(), Holdings.none());
    return damaged.isEmpty() ? lines : lines.without(damaged);
  }

  /** What they hold together. */
  Holdings all() {
    return files.stream().map(this::in).reduce(Holdings.none(), Holdings::with);
  }

  /** Machines a log does not know, with what would come of them. */
  List<Stranger> strangers(Exchange log, Holdings lacking) throws Fault {
    Map<String, Exchange.Device> known = log.devices();
    String self = log.self().id();
    Map<String, Exchange.Device> labels = new LinkedHashMap<>();
    Map<String, Holdings> lines = new LinkedHashMap<>();
    for (ParcelFile file : files) {
      file.head()
          .lines()
          .forEach(
              (device, holdings) -> {
                Holdings come = sound(file, holdings).within(lacking);
                boolean stranger = !known.containsKey(device.id()) && !device.id().equals(self);
                if (stranger && !come.isEmpty()) {
                  labels.putIfAbsent(device.id(), device);
                  lines.merge(device.id(), come, Holdings::with);
                }
              });
    }
    List<Stranger> strangers = new ArrayList<>();
    labels.forEach((id, device) -> strangers.add(new Stranger(device, lines.get(id).count())));
    return strangers;
  }
}
