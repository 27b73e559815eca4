package padside.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.RecoveryDevice;

/** What the flights of a plan need, each thing once. */
final class PlannedItems {
  /** Igniters for every motor to be lit: one and a spare (common practice, no source). */
  private static final int IGNITERS_EACH = 2;

  private final Plan plan;
  private final Logbook book;

  PlannedItems(Plan plan, Logbook book) {
    this.plan = plan;
    this.book = book;
  }

  List<Packing.Item> all() {
    List<Packing.Item> items = new ArrayList<>();
    items.addAll(rockets());
    items.addAll(motors());
    items.addAll(lacking());
    items.addAll(igniters());
    items.addAll(devices());
    items.addAll(altimeters());
    return items;
  }

  private List<Packing.Item> rockets() {
    List<Packing.Item> items = new ArrayList<>();
    uses(Flight::rocket)
        .forEach(
            (id, flights) ->
                book.rocket(id)
                    .ifPresent(
                        rocket ->
                            items.add(
                                once(
                                    "rocket." + id.text(),
                                    Packing.Group.ROCKETS,
                                    rocket.name(),
                                    notes(fixes(id), flies(flights))))));
    return items;
  }

  private Optional<String> fixes(RecordId rocket) {
    return Optional.of(
            book.openFixes(rocket).stream().map(Fix::words).collect(Collectors.joining("; ")))
        .filter(words -> !words.isEmpty());
  }

  private List<Packing.Item> motors() {
    Map<RecordId, Integer> ofLot = new LinkedHashMap<>();
    Map<String, Integer> ofNone = new LinkedHashMap<>();
    for (Taken taken : taken()) {
      taken.draws().forEach(draw -> ofLot.merge(draw.lot().id(), draw.count(), Integer::sum));
      int drawn = taken.draws().stream().mapToInt(Taken.Draw::count).sum();
      int rest = taken.count() - drawn - taken.lacking();
      if (rest > 0) {
        ofNone.merge(taken.motor(), rest, Integer::sum);
      }
    }
    List<Packing.Item> items = new ArrayList<>();
    ofLot.forEach((id, count) -> book.lot(id).ifPresent(lot -> items.add(motor(lot, count))));
    ofNone.forEach((motor, count) -> items.add(motor(motor, count, "", false)));
    return items;
  }

  private Packing.Item motor(Lot lot, int count) {
    return new Packing.Item(
        "lot." + lot.id().text() + "." + count,
        Packing.Group.MOTORS,
        count,
        lot.motor() + " lot " + lot.code(),
        lot.facts().get(Lot.PLACE).orElse(""),
        book.left(lot).isEmpty() ? "not counted" : "",
        false);
  }

  private List<Packing.Item> lacking() {
    Map<String, Integer> lacking = new LinkedHashMap<>();
    taken().stream()
        .filter(taken -> taken.lacking() > 0)
        .forEach(taken -> lacking.merge(taken.motor(), taken.lacking(), Integer::sum));
    return lacking.entrySet().stream()
        .map(each -> motor(each.getKey(), each.getValue(), "short: not in the box", true))
        .toList();
  }

  private static Packing.Item motor(String motor, int count, String note, boolean lacking) {
    String key = (lacking ? "short." : "motor.") + motor + "." + count;
    return new Packing.Item(key, Packing.Group.MOTORS, count, motor, "", note, lacking);
  }

  private List<Packing.Item> igniters() {
    int count = IGNITERS_EACH * plan.lines().stream().mapToInt(Plan.Line::lit).sum();
    return count == 0
        ? List.of()
        : List.of(
            new Packing.Item(
                "igniters." + count,
                Packing.Group.MOTORS,
                count,
                "igniters",
                "",
                "one a motor and a spare each",
                false));
  }

  private List<Packing.Item> devices() {
    List<Packing.Item> items = new ArrayList<>();
    uses(Flight::device)
        .forEach(
            (id, flights) ->
                book.device(id)
                    .ifPresent(
                        device ->
                            items.add(
                                once(
                                    "device." + id.text(),
                                    Packing.Group.RECOVERY,
                                    device.name(),
                                    notes(
                                        device.shape().map(RecoveryDevice.Shape::code),
                                        shared(flights))))));
    return items;
  }

  private List<Packing.Item> altimeters() {
    List<Packing.Item> items = new ArrayList<>();
    uses(Flight::altimeter)
        .forEach(
            (id, flights) ->
                book.altimeter(id)
                    .map(Altimeter::name)
                    .ifPresent(
                        name ->
                            items.add(
                                once(
                                    "altimeter." + id.text(),
                                    Packing.Group.ALTIMETERS,
                                    name,
                                    notes(Optional.of("altimeter"), shared(flights))))));
    return items;
  }

  private static Packing.Item once(String key, Packing.Group group, String what, String note) {
    return new Packing.Item(key, group, 0, what, "", note, false);
  }

  /** In how many flights each thing is used, in the order of the first. */
  private Map<RecordId, Integer> uses(Function<Flight, Optional<RecordId>> thing) {
    Map<RecordId, Integer> uses = new LinkedHashMap<>();
    plan.lines().stream()
        .flatMap(line -> thing.apply(line.flight()).stream())
        .forEach(id -> uses.merge(id, 1, Integer::sum));
    return uses;
  }

  private static Optional<String> flies(int flights) {
    return Optional.of("flies in " + flights).filter(any -> flights > 1);
  }

  /** It moves from rocket to rocket between their flights. */
  private static Optional<String> shared(int flights) {
    return flies(flights).map(words -> "packed once, " + words);
  }

  private static String notes(Optional<String> first, Optional<String> second) {
    return Stream.of(first, second).flatMap(Optional::stream).collect(Collectors.joining("; "));
  }

  private List<Taken> taken() {
    return plan.lines().stream().flatMap(line -> line.motors().stream()).toList();
  }
}
