package padside.flight;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Predicate;
import java.util.stream.Stream;
import padside.clock.Anchor;
import padside.clock.LogClock;
import padside.clock.Moment;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.search.Found;
import padside.search.Search;
import padside.units.TimeSpan;

/** A log that keeps everything in memory, for tests of what stands above the log. */
public final class MemoryFlightLog implements FlightLog {
  private final Map<Kind, Map<RecordId, Facts>> records = new EnumMap<>(Kind.class);
  private final List<Action> actions = new ArrayList<>();
  private final List<Done> done = new ArrayList<>();
  private final List<Conflict> conflicts = new ArrayList<>();
  private Moment now =
      new Moment(
          Instant.parse("2026-05-02T08:00:00Z"), new TimeSpan(0), "before", Moment.Trust.SURE);

  /** A cell as it was and as it became. */
  private record Cell(
      Kind kind,
      RecordId record,
      String field,
      Facts.Cell before,
      Optional<RecordId> over,
      Facts.Cell after) {
    boolean isOf(Cell other) {
      return record.equals(other.record) && field.equals(other.field);
    }
  }

  private record Done(RecordId id, String label, Moment when, List<Cell> cells) {}

  public MemoryFlightLog() {
    List.of(Kind.values()).forEach(kind -> records.put(kind, new LinkedHashMap<>()));
  }

  /** Puts a record in; returns its id. */
  public RecordId has(Kind kind, Facts facts) {
    return save(Action.create("given", kind, facts)).get(0);
  }

  /** What the clocks say from now on. */
  public void at(Moment time) {
    now = time;
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
    RecordId operation = new RecordId("memory." + actions.size());
    List<RecordId> ids = new ArrayList<>();
    List<Cell> cells = new ArrayList<>();
    for (Action.Change change : action.changes()) {
      RecordId id = change.record().orElse(new RecordId(operation + suffix(ids)));
      change
          .facts()
          .cells()
          .forEach(
              (field, after) -> {
                Facts.Cell before = cell(change.kind(), id, field);
                Cell cell = new Cell(change.kind(), id, field, before, Optional.empty(), after);
                Optional<RecordId> over = lastToWrite(cell).map(Done::id);
                cells.add(new Cell(change.kind(), id, field, before, over, after));
              });
      conflicts.removeIf(
          each -> each.record().equals(id) && change.facts().cells().containsKey(each.field()));
      records.get(change.kind()).merge(id, change.facts(), Facts::with);
      ids.add(id);
    }
    done.add(new Done(operation, action.label(), now, cells));
    return ids;
  }

  private Optional<Done> lastToWrite(Cell cell) {
    return done.stream()
        .filter(each -> each.cells.stream().anyMatch(cell::isOf))
        .reduce((older, newer) -> newer);
  }

  private Facts.Cell cell(Kind kind, RecordId id, String field) {
    return facts(kind, id).cells().getOrDefault(field, Facts.Cell.emptied());
  }

  @Override
  public List<Stored> removed(Kind kind) {
    List<Stored> removed = new ArrayList<>();
    records
        .get(kind)
        .forEach(
            (id, facts) -> {
              if (facts.get(Kind.REMOVED).orElse(false)) {
                removed.add(0, new Stored(id, facts));
              }
            });
    return removed;
  }

  @Override
  public List<Operation> history(Kind kind, RecordId id) {
    return done.stream()
        .filter(each -> each.cells.stream().anyMatch(cell -> cell.record.equals(id)))
        .map(this::operation)
        .toList();
  }

  private Operation operation(Done each) {
    LogClock clock = new LogClock(clocks(), Optional.empty());
    Operation bare =
        new Operation(
            each.id,
            each.label,
            clock.told(each.when).wall(),
            clock.anchor(each.when.boot()).isPresent(),
            "folding table",
            List.of());
    List<Operation.Changed> changes = new ArrayList<>();
    for (Cell cell : each.cells) {
      boolean first = changes.stream().noneMatch(known -> known.record().equals(cell.record));
      if (first && bare.made(cell.record)) {
        Facts.Cell removed = cell(cell.kind, cell.record, Kind.REMOVED.name());
        changes.add(Operation.Changed.made(cell.kind, cell.record, removed));
      }
      changes.add(
          new Operation.Changed(
              cell.kind,
              cell.record,
              cell.field,
              cell.before,
              cell.over,
              cell.after,
              cell(cell.kind, cell.record, cell.field),
              lastToWrite(cell).equals(Optional.of(each)),
              cell.before));
    }
    return new Operation(each.id, each.label, bare.when(), bare.timed(), bare.machine(), changes);
  }

  private List<Anchor> clocks() {
    return list(Kind.CLOCK).stream().flatMap(each -> Anchor.in(each.facts()).stream()).toList();
  }

  /** Machines said different things; the conflict is over once the field is saved. */
  public void contest(Conflict conflict) {
    conflicts.add(conflict);
  }

  @Override
  public List<Conflict> conflicts(int most) {
    return conflicts.stream().limit(most).toList();
  }

  @Override
  public Optional<Moment> newest() {
    return done.stream().map(Done::when).reduce((older, newer) -> newer);
  }

  @Override
  public List<Stamp> stamps(String boot) {
    List<Stamp> stamps = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (Stored record : list(kind)) {
        for (String field : record.facts().cells().keySet()) {
          Optional<Done> first = firstToWrite(record, field);
          first
              .filter(each -> Stamp.isIn(kind, field) && each.when.boot().equals(boot))
              .map(each -> stamp(kind, record, field, each))
              .ifPresent(stamps::add);
        }
      }
    }
    return stamps;
  }

  /** Of what shows in a field; a correction only carries it on. */
  private Optional<Done> firstToWrite(Stored record, String field) {
    return done.stream()
        .filter(each -> each.cells.stream().noneMatch(cell -> cell.kind == Kind.CLOCK))
        .filter(each -> !wrote(each, record.id(), field).isEmpty())
        .reduce((older, newer) -> newer);
  }

  private static List<Cell> wrote(Done done, RecordId record, String field) {
    return done.cells.stream()
        .filter(cell -> cell.record.equals(record) && cell.field.equals(field))
        .toList();
  }

  private Stamp stamp(Kind kind, Stored record, String field, Done first) {
    Facts facts = Facts.none();
    for (Cell cell : first.cells) {
      facts = cell.record.equals(record.id()) ? facts.with(cell.field, cell.after) : facts;
    }
    Facts.Cell shown = record.facts().cells().get(field);
    return new Stamp(kind, record.id(), field, shown, facts, first.when, ZoneOffset.UTC);
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
        .limit(query.limit())
        .toList();
  }

  @Override
  public List<Stored> measuredFlights(RecordId rocket, int most) {
    return flights(FlightQuery.newest(Integer.MAX_VALUE)).stream()
        .filter(flight -> new Flight(flight.id(), flight.facts()).isMeasured())
        .filter(flight -> flight.facts().get(Flight.ROCKET).equals(Optional.of(rocket)))
        .limit(most)
        .toList();
  }

  @Override
  public Found<Stored> found(Search search, OutcomeTable outcomes, int most) {
    PlainScan scan = new PlainScan(this, outcomes);
    List<Stored> all =
        newestFirst().stream().filter(flight -> scan.matches(flight, search)).toList();
    return new Found<>(all.subList(0, Math.min(most, all.size())), all.size(), true);
  }

  @Override
  public Stretch pass(Sought sought, Optional<RecordId> after, int most) {
    List<Passing> all =
        list(Kind.FLIGHT).stream()
            .filter(matches(sought.rocket(), Flight.ROCKET))
            .map(
                each ->
                    new Passing(each.id(), some(each, sought.alike()), some(each, sought.own())))
            .toList();
    int start = after.map(id -> 1 + all.stream().map(Passing::id).toList().indexOf(id)).orElse(0);
    int end = Math.min(all.size(), start + most);
    return new Stretch(
        all.subList(start, end),
        end < all.size() ? Optional.of(all.get(end - 1).id()) : Optional.empty());
  }

  private static Facts some(Stored flight, List<Column<?>> wanted) {
    Facts some = Facts.none();
    for (Column<?> column : wanted) {
      Facts.Cell cell = flight.facts().cells().getOrDefault(column.name(), Facts.Cell.emptied());
      some =
          cell.value().isPresent()
              ? some.with(column.name(), Facts.Cell.of(cell.value().get()))
              : some;
    }
    return some;
  }

  @Override
  public List<Stored> lastFlightOfEachRocket() {
    Map<RecordId, Stored> last = new LinkedHashMap<>();
    newestFirst().stream()
        .filter(flight -> flight(flight).status() != Flight.Status.DRAFT)
        .filter(flight -> !flight(flight).isPlanned())
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
  public Page flown(long after, int most) {
    List<Flight> all =
        list(Kind.FLIGHT).stream()
            .map(MemoryFlightLog::flight)
            .filter(flight -> flight.status() == Flight.Status.FLOWN)
            .toList();
    int end = (int) Math.min(all.size(), after + most);
    return new Page(
        all.subList((int) after, end),
        end < all.size() ? OptionalLong.of(end) : OptionalLong.empty());
  }

  @Override
  public List<Use> uses() {
    return list(Kind.FLIGHT).stream()
        .map(MemoryFlightLog::flight)
        .filter(flight -> flight.status() == Flight.Status.FLOWN)
        .flatMap(
            flight ->
                Stream.concat(flight.device().stream(), flight.altimeter().stream())
                    .map(gear -> new Use(gear, flight.day(), 1)))
        .toList();
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

  private static Flight flight(Stored stored) {
    return new Flight(stored.id(), stored.facts());
  }

  private static String suffix(List<RecordId> before) {
    return before.isEmpty() ? "" : "." + before.size();
  }
}
