package padside.flight;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.FlightLog.Stored;
import padside.search.Search;

/**
 * What a search ought to find, found by looking at every record with the types everything else
 * uses: no table, no number. One is for one question: it reads each kind of record once.
 */
public final class PlainScan {
  private final FlightLog log;
  private final OutcomeTable outcomes;
  private final Map<Kind, List<Stored>> lists = new EnumMap<>(Kind.class);
  private final Map<Kind, Map<RecordId, Stored>> all = new EnumMap<>(Kind.class);

  public PlainScan(FlightLog log, OutcomeTable outcomes) {
    this.log = log;
    this.outcomes = outcomes;
  }

  /** Of all flights those found, newest first. */
  public List<RecordId> find(Search search) throws Fault {
    return log.flights(FlightLog.FlightQuery.newest(Integer.MAX_VALUE)).stream()
        .filter(flight -> matches(flight, search))
        .map(Stored::id)
        .toList();
  }

  boolean matches(Stored stored, Search search) {
    Flight flight = new Flight(stored.id(), stored.facts());
    List<String> told = told(flight);
    boolean open =
        list(Kind.FIX).stream()
            .map(each -> new Fix(each.id(), each.facts()))
            .anyMatch(
                fix -> fix.open() && fix.facts().get(Fix.FLIGHT).equals(Optional.of(flight.id())));
    return search.words().stream()
            .allMatch(word -> told.stream().anyMatch(text -> folded(text).contains(word)))
        && search.filters().stream().allMatch(filter -> passes(flight, filter))
        && (open || !search.open());
  }

  private boolean passes(Flight flight, Search.Filter filter) {
    List<String> texts =
        switch (filter.part()) {
          case ROCKET -> name(Kind.ROCKET, flight.rocket(), "name");
          case MOTOR -> motors(flight);
          case LOT -> lots(flight);
          case FIELD -> field(flight);
          case OUTCOME -> List.of(outcomes.everyWord(flight));
          case ON, FROM, TO -> name(Kind.DAY, flight.day(), "date");
        };
    return texts.stream()
        .map(PlainScan::folded)
        .anyMatch(
            text ->
                switch (filter.part()) {
                  case ON -> text.startsWith(filter.value());
                  case FROM -> text.compareTo(filter.value()) >= 0;
                  case TO -> text.compareTo(filter.value() + "~") <= 0;
                  default -> text.contains(filter.value());
                });
  }

  private List<String> told(Flight flight) {
    Facts facts = flight.facts();
    List<String> told = new ArrayList<>(motors(flight));
    told.addAll(name(Kind.ROCKET, flight.rocket(), "name"));
    told.addAll(lots(flight));
    told.addAll(field(flight));
    told.addAll(name(Kind.DAY, flight.day(), "date"));
    told.addAll(name(Kind.DEVICE, flight.device(), "name"));
    told.addAll(name(Kind.ALTIMETER, flight.altimeter(), "name"));
    told.add(outcomes.everyWord(flight));
    Stream.of("flier", "note", "reason", "against", "went_on", "damage", "to_mend", "verdict")
        .forEach(field -> told.addAll(said(facts, field)));
    facts.get(Flight.UNTICKED).ifPresent(told::addAll);
    facts
        .get(Flight.CONDITION)
        .ifPresent(
            parts ->
                parts.forEach(
                    part ->
                        told.add(
                            outcomes.words("part", part.part())
                                + " "
                                + outcomes.words("state", part.state()))));
    told.addAll(noted(Kind.FIX, flight, "text", "done_note"));
    told.addAll(noted(Kind.ATTEMPT, flight, "igniter", "note"));
    noted(Kind.ATTEMPT, flight, "cause").forEach(cause -> told.add(outcomes.words("cause", cause)));
    return told;
  }

  private List<String> noted(Kind kind, Flight flight, String... fields) {
    return list(kind).stream()
        .filter(note -> said(note.facts(), "flight").contains(flight.id().text()))
        .flatMap(note -> Stream.of(fields).flatMap(field -> said(note.facts(), field).stream()))
        .toList();
  }

  private static List<String> motors(Flight flight) {
    return Stream.concat(
            said(flight.facts(), "motor").stream(), flight.facts().typed(Flight.MOTOR).stream())
        .toList();
  }

  private List<String> lots(Flight flight) {
    return Stream.of(flight.lot(), flight.boosterLot())
        .flatMap(
            lot ->
                Stream.of("code", "date_code")
                    .flatMap(field -> name(Kind.LOT, lot, field).stream()))
        .toList();
  }

  private List<String> field(Flight flight) {
    return flight.day().flatMap(day -> find(Kind.DAY, day)).stream()
        .flatMap(day -> name(Kind.FIELD, day.facts().get(Day.FIELD), "name").stream())
        .toList();
  }

  private List<String> name(Kind kind, Optional<RecordId> id, String field) {
    return id.flatMap(known -> find(kind, known)).stream()
        .flatMap(record -> said(record.facts(), field).stream())
        .toList();
  }

  /** What a field has, or what was typed where that could not be read. */
  private static List<String> said(Facts facts, String field) {
    return Optional.ofNullable(facts.cells().get(field)).stream()
        .flatMap(cell -> cell.value().map(String::valueOf).or(cell::typed).stream())
        .toList();
  }

  /** A removed one too. */
  private Optional<Stored> find(Kind kind, RecordId id) {
    return Optional.ofNullable(
        all.computeIfAbsent(
                kind,
                any -> {
                  Map<RecordId, Stored> byId = new HashMap<>();
                  list(kind).forEach(each -> byId.put(each.id(), each));
                  read(() -> log.removed(kind)).forEach(each -> byId.put(each.id(), each));
                  return byId;
                })
            .get(id));
  }

  private List<Stored> list(Kind kind) {
    return lists.computeIfAbsent(kind, any -> read(() -> log.list(kind)));
  }

  private interface Reading {
    List<Stored> read() throws Fault;
  }

  private static List<Stored> read(Reading reading) {
    try {
      return reading.read();
    } catch (Fault fault) {
      throw new IllegalStateException(fault);
    }
  }

  private static String folded(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}", "")
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }
}
