package padside.flight;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;

/** A log that keeps everything in memory, for tests of what stands above the log. */
public final class MemoryFlightLog implements FlightLog {
  private final Map<Kind, Map<RecordId, Facts>> records = new EnumMap<>(Kind.class);
  private final List<Action> actions = new ArrayList<>();

  public MemoryFlightLog() {
    List.of(Kind.values()).forEach(kind -> records.put(kind, new LinkedHashMap<>()));
  }

  /** Puts a record in; returns its id. */
  public RecordId has(Kind kind, Facts facts) {
    return save(Action.create("given", kind, facts)).get(0);
  }

  /** Another log with the same records; what either keeps from now on the other does not. */
  public MemoryFlightLog copy() {
    MemoryFlightLog copy = new MemoryFlightLog();
    actions.forEach(copy::save);
    return copy;
  }

  /** Every action kept so far, in order. */
  public List<Action> actions() {
    return List.copyOf(actions);
  }

  /** The facts of a record as they stand now. */
  public Facts facts(Kind kind, RecordId id) {
    return Optional.ofNullable(records.get(kind).get(id)).orElse(Facts.none());
  }

  @Override
  public List<RecordId> save(Action action) {
    actions.add(action);
    List<RecordId> ids = new ArrayList<>();
    for (Action.Change change : action.changes()) {
      RecordId id = change.record().orElse(new RecordId("memory." + actions.size() + suffix(ids)));
      records.get(change.kind()).merge(id, change.facts(), Facts::with);
      ids.add(id);
    }
    return ids;
  }

  @Override
  public List<Stored> list(Kind kind) {
    return records.get(kind).entrySet().stream()
        .filter(record -> !record.getValue().get(Kind.REMOVED).orElse(false))
        .map(record -> new Stored(record.getKey(), record.getValue()))
        .toList();
  }

  @Override
  public Optional<Stored> find(Kind kind, RecordId id) {
    return Optional.ofNullable(records.get(kind).get(id)).map(facts -> new Stored(id, facts));
  }

  @Override
  public List<Stored> flights(FlightQuery query) {
    return newestFirst().stream()
        .filter(matches(query.rocket(), Flight.ROCKET))
        .filter(matches(query.day(), Flight.DAY))
        .filter(flight -> query.words().map(words -> holds(flight, words)).orElse(true))
        .limit(query.limit())
        .toList();
  }

  @Override
  public List<Stored> lastFlightOfEachRocket() {
    Map<RecordId, Stored> last = new LinkedHashMap<>();
    newestFirst().stream()
        .filter(flight -> flight(flight).status() != Flight.Status.DRAFT)
        .forEach(flight -> flight(flight).rocket().ifPresent(id -> last.putIfAbsent(id, flight)));
    return List.copyOf(last.values());
  }

  @Override
  public Map<RecordId, Integer> firedByLot() {
    Map<RecordId, Integer> fired = new LinkedHashMap<>();
    list(Kind.FLIGHT).stream()
        .map(MemoryFlightLog::flight)
        .filter(flight -> flight.status() == Flight.Status.FLOWN)
        .forEach(flight -> flight.fired().forEach((lot, n) -> fired.merge(lot, n, Integer::sum)));
    return fired;
  }

  @Override
  public void close() {}

  private List<Stored> newestFirst() {
    List<Stored> flights = new ArrayList<>(list(Kind.FLIGHT));
    Collections.reverse(flights);
    return flights;
  }

  private static Predicate<Stored> matches(Optional<RecordId> wanted, Column<RecordId> column) {
    return flight -> wanted.isEmpty() || flight.facts().get(column).equals(wanted);
  }

  private static boolean holds(Stored flight, String words) {
    return flight.facts().cells().values().toString().contains(words);
  }

  private static Flight flight(Stored stored) {
    return new Flight(stored.id(), stored.facts());
  }

  private static String suffix(List<RecordId> before) {
    return before.isEmpty() ? "" : "." + before.size();
  }
}
