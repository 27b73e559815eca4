package padside.flight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import padside.clock.LogClock;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.motor.MotorTable;
import padside.motor.MotorType;

/**
 * A reading of the log at one moment: everything small whole, of the flights the newest and each
 * rocket's last. It never changes; after a save a new one is read.
 *
 * @param past of all flights where it was read whole or there are few, else of those read
 * @param measuredFlights of each rocket the newest whose altitude was measured, the newest first
 * @param clocks the records of what was told for the clock, the newest last; before them what of
 *     that was taken back
 * @param conflicts of so many records as one goes through in a sitting; further ones come once
 *     these are chosen from
 * @param found flights not among the newest that a search found: they can be opened too
 */
public record Logbook(
    List<Rocket> rockets,
    MotorTable motors,
    List<Lot> lots,
    Map<RecordId, Integer> firedByLot,
    FlightLog.Past past,
    Map<RecordId, Used> used,
    List<RecoveryDevice> devices,
    List<Altimeter> altimeters,
    List<Field> fields,
    List<Day> days,
    List<Weather> weather,
    List<Flight> flights,
    List<Flight> lastFlights,
    List<Flight> measuredFlights,
    List<Fix> fixes,
    List<Attempt> attempts,
    List<Sighting> sightings,
    List<CheckLine> checkLines,
    LogClock clock,
    List<RecordId> clocks,
    List<FlightLog.Conflict> conflicts,
    List<Flight> found) {

  /**
   * How often a parachute, streamer or altimeter has flown.
   *
   * @param last the latest date it flew on, where that is known
   */
  public record Used(int times, Optional<LocalDate> last) {
    /** It has never flown. */
    public static final Used NEVER = new Used(0, Optional.empty());

    private Used and(Used other) {
      Optional<LocalDate> later =
          Stream.concat(last.stream(), other.last.stream()).max(Comparator.naturalOrder());
      return new Used(times + other.times, later);
    }
  }

  /** How many flights are read; older ones are found by searching. */
  private static final int NEWEST_FLIGHTS = 500;

  /** More than anybody flies on one day. */
  private static final int FIRST_FLIGHTS = 30;

  private static final int MOST_CONTESTED = 50;

  /** More altitudes of one rocket make its drag hardly better known. */
  private static final int MOST_MEASURED = 100;

  /** Of so many it is known about as well as the spread of one flight lets it be. */
  private static final int ENOUGH_MEASURED = 12;

  /** Of a log in which nothing stands. */
  public static Logbook empty(MotorTable table) {
    return new Logbook(
        List.of(),
        table,
        List.of(),
        Map.of(),
        FlightLog.Past.of(List.of(), true),
        Map.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new LogClock(List.of(), Optional.empty()),
        List.of(),
        List.of(),
        List.of());
  }

  /** Reads the log, and of all its flights what they say of motors and delays. */
  public static Logbook readWhole(FlightLog log, MotorTable table) throws Fault {
    Logbook read = read(log, table);
    return read.past.whole() ? read : read.with(FlightLog.Past.ofAll(log));
  }

  /** Reads the log, with the motor types entered there put over the table's. */
  public static Logbook read(FlightLog log, MotorTable table) throws Fault {
    return read(log, table, NEWEST_FLIGHTS);
  }

  /** As {@link #read}, without what the first screen does not tell. */
  public static Logbook firstLook(FlightLog log, MotorTable table) throws Fault {
    return read(log, table, FIRST_FLIGHTS);
  }

  private static Logbook read(FlightLog log, MotorTable table, int flights) throws Fault {
    List<Flight> newest = flights(log.flights(FlightLog.FlightQuery.newest(flights)));
    boolean first = flights == FIRST_FLIGHTS;
    List<Day> days = log.list(Kind.DAY).stream().map(d -> new Day(d.id(), d.facts())).toList();
    return new Logbook(
        log.list(Kind.ROCKET).stream().map(r -> new Rocket(r.id(), r.facts())).toList(),
        table.with(
            log.list(Kind.MOTOR).stream().map(m -> new MotorType(m.id(), m.facts())).toList()),
        log.list(Kind.LOT).stream().map(l -> new Lot(l.id(), l.facts())).toList(),
        Map.copyOf(log.firedByLot()),
        FlightLog.Past.of(first ? List.of() : newest, !first && newest.size() < flights),
        first ? Map.of() : used(log.uses(), days),
        log.list(Kind.DEVICE).stream().map(d -> new RecoveryDevice(d.id(), d.facts())).toList(),
        log.list(Kind.ALTIMETER).stream().map(a -> new Altimeter(a.id(), a.facts())).toList(),
        log.list(Kind.FIELD).stream().map(f -> new Field(f.id(), f.facts())).toList(),
        days,
        log.list(Kind.WEATHER).stream().map(w -> new Weather(w.id(), w.facts())).toList(),
        newest,
        first ? newest : flights(log.lastFlightOfEachRocket()),
        measured(log, newest, flights),
        log.list(Kind.FIX).stream().map(f -> new Fix(f.id(), f.facts())).toList(),
        log.list(Kind.ATTEMPT).stream().map(a -> new Attempt(a.id(), a.facts())).toList(),
        log.list(Kind.SIGHTING).stream().map(s -> new Sighting(s.id(), s.facts())).toList(),
        log.list(Kind.CHECKLINE).stream().map(c -> new CheckLine(c.id(), c.facts())).toList(),
        new LogClock(log.anchors(), log.newest()),
        clocks(log),
        log.conflicts(MOST_CONTESTED),
        List.of());
  }

  /** The same with what more flights say of motors and delays. */
  public Logbook with(FlightLog.Past other) {
    return with(other, found);
  }

  /** The same with flights a search found; those among the newest are left out. */
  public Logbook withFound(List<Flight> some) {
    return with(past, some.stream().filter(flight -> newest(flight.id()).isEmpty()).toList());
  }

  /** Whether no more was read than a first look does. */
  public boolean isFirstLook() {
    return !past.whole() && flights.size() <= FIRST_FLIGHTS;
  }

  /** Whether there are flights beside the newest, which a search finds. */
  public boolean isLarge() {
    return flights.size() >= NEWEST_FLIGHTS;
  }

  private Logbook with(FlightLog.Past otherPast, List<Flight> otherFound) {
    return new Logbook(
        rockets,
        motors,
        lots,
        firedByLot,
        otherPast,
        used,
        devices,
        altimeters,
        fields,
        days,
        weather,
        flights,
        lastFlights,
        measuredFlights,
        fixes,
        attempts,
        sightings,
        checkLines,
        clock,
        clocks,
        conflicts,
        otherFound);
  }

  private static List<RecordId> clocks(FlightLog log) throws Fault {
    List<RecordId> ids = new ArrayList<>();
    log.removed(Kind.CLOCK).forEach(each -> ids.add(0, each.id()));
    log.list(Kind.CLOCK).forEach(each -> ids.add(each.id()));
    return List.copyOf(ids);
  }

  /**
   * The log is asked for more only of rockets of which few measured flights are among the newest,
   * at a first look only of those on cards.
   */
  private static List<Flight> measured(FlightLog log, List<Flight> newest, int most) throws Fault {
    List<Flight> measured = newest.stream().filter(Flight::isMeasured).toList();
    if (newest.size() < most) {
      return measured;
    }
    Map<RecordId, List<Flight>> byRocket =
        measured.stream()
            .filter(flight -> flight.rocket().isPresent())
            .collect(Collectors.groupingBy(flight -> flight.rocket().orElseThrow()));
    List<Flight> all = new ArrayList<>();
    List<RecordId> rockets =
        most < NEWEST_FLIGHTS
            ? onCards(newest)
            : log.list(Kind.ROCKET).stream().map(FlightLog.Stored::id).toList();
    for (RecordId rocket : rockets) {
      List<Flight> known = byRocket.getOrDefault(rocket, List.of());
      all.addAll(
          known.size() >= ENOUGH_MEASURED
              ? known
              : flights(log.measuredFlights(rocket, ENOUGH_MEASURED)));
    }
    return List.copyOf(all);
  }

  /** The rockets somebody is about to fly. */
  private static List<RecordId> onCards(List<Flight> flights) {
    return flights.stream()
        .filter(flight -> flight.status() != Flight.Status.FLOWN)
        .flatMap(flight -> flight.rocket().stream())
        .distinct()
        .toList();
  }

  private static Map<RecordId, Used> used(List<FlightLog.Use> uses, List<Day> days) {
    Map<RecordId, LocalDate> dates = new HashMap<>();
    days.forEach(day -> day.date().ifPresent(date -> dates.put(day.id(), date)));
    Map<RecordId, Used> used = new HashMap<>();
    for (FlightLog.Use use : uses) {
      Optional<LocalDate> date = use.day().map(dates::get);
      used.merge(use.gear(), new Used(use.flights(), date), Used::and);
    }
    return Map.copyOf(used);
  }

  private static List<Flight> flights(List<FlightLog.Stored> stored) {
    return stored.stream().map(f -> new Flight(f.id(), f.facts())).toList();
  }

  public Optional<Rocket> rocket(RecordId id) {
    return rockets.stream().filter(rocket -> rocket.id().equals(id)).findFirst();
  }

  public Optional<Lot> lot(RecordId id) {
    return lots.stream().filter(lot -> lot.id().equals(id)).findFirst();
  }

  public Optional<RecoveryDevice> device(RecordId id) {
    return devices.stream().filter(device -> device.id().equals(id)).findFirst();
  }

  public Optional<Altimeter> altimeter(RecordId id) {
    return altimeters.stream().filter(altimeter -> altimeter.id().equals(id)).findFirst();
  }

  public Optional<Field> field(RecordId id) {
    return fields.stream().filter(field -> field.id().equals(id)).findFirst();
  }

  public Optional<Day> day(RecordId id) {
    return days.stream().filter(day -> day.id().equals(id)).findFirst();
  }

  /** One of the newest, or found by a search. */
  public Optional<Flight> flight(RecordId id) {
    return newest(id).or(() -> found.stream().filter(flight -> flight.id().equals(id)).findFirst());
  }

  private Optional<Flight> newest(RecordId id) {
    return flights.stream().filter(flight -> flight.id().equals(id)).findFirst();
  }

  /** The day opened last, whatever its date: a clock may have been wrong. */
  public Optional<Day> latestDay() {
    return latestDay(day -> true);
  }

  /** The same among some days; of the others few are asked about. */
  public Optional<Day> latestDay(Predicate<Day> which) {
    return IntStream.rangeClosed(1, days.size())
        .mapToObj(back -> days.get(days.size() - back))
        .filter(which)
        .findFirst();
  }

  /**
   * The last weather reading entered on a day; what it is silent about, the wind apart, is as the
   * day's earlier readings had it.
   */
  public Optional<Weather> latestWeather(RecordId day) {
    return weatherOf(day).stream().reduce((earlier, later) -> later.after(earlier));
  }

  /** Every look at the weather on a day, in the order they were entered. */
  public List<Weather> weatherOf(RecordId day) {
    return weather.stream().filter(reading -> reading.day().equals(Optional.of(day))).toList();
  }

  /** Flights of a day: in the order their cards were begun, behind them those planned. */
  public List<Flight> flightsOf(RecordId day) {
    List<Flight> oldestFirst = new ArrayList<>();
    flights.stream()
        .filter(flight -> flight.day().equals(Optional.of(day)))
        .forEach(flight -> oldestFirst.add(0, flight));
    oldestFirst.sort(
        Comparator.comparing(Flight::isPlanned).thenComparing(each -> each.place().orElse(0)));
    return List.copyOf(oldestFirst);
  }

  /** The flights planned for a day that are not begun, in their order. */
  public List<Flight> plannedFor(RecordId day) {
    return flightsOf(day).stream().filter(Flight::isPlanned).toList();
  }

  /** The place behind all others of a day, among those planned or among those begun. */
  public int nextPlace(RecordId day, boolean planned) {
    return 1
        + flightsOf(day).stream()
            .filter(flight -> flight.isPlanned() == planned)
            .mapToInt(flight -> flight.place().orElse(0))
            .max()
            .orElse(0);
  }

  /** A rocket's newest flight that is more than planned or a draft. */
  public Optional<Flight> lastFlight(RecordId rocket) {
    return lastFlights.stream()
        .filter(Flight::isTold)
        .filter(flight -> flight.rocket().equals(Optional.of(rocket)))
        .findFirst();
  }

  /** A rocket's newest flights whose altitude was measured, the newest first. */
  public List<Flight> measured(RecordId rocket) {
    return measuredFlights.stream()
        .filter(flight -> flight.rocket().equals(Optional.of(rocket)))
        .limit(MOST_MEASURED)
        .toList();
  }

  public List<Fix> openFixes(RecordId rocket) {
    return fixes.stream()
        .filter(fix -> fix.open() && fix.rocket().equals(Optional.of(rocket)))
        .toList();
  }

  /** Misfires of a card, in the order they were told. */
  public List<Attempt> attemptsOf(RecordId flight) {
    return attempts.stream().filter(each -> each.flight().equals(Optional.of(flight))).toList();
  }

  /** Lines of sight to a flight, in the order they were told. */
  public List<Sighting> sightingsOf(RecordId flight) {
    return sightings.stream().filter(each -> each.flight().equals(Optional.of(flight))).toList();
  }

  /** How often a parachute, streamer or altimeter has flown. */
  public Used used(RecordId gear) {
    return used.getOrDefault(gear, Used.NEVER);
  }

  /** Everyone named as flier of a flight or a rocket, in the order of the alphabet. */
  public List<String> fliers() {
    return Stream.concat(
            flights.stream().flatMap(flight -> flight.flier().stream()),
            rockets.stream().flatMap(rocket -> rocket.flier().stream()))
        .distinct()
        .sorted()
        .toList();
  }

  /** Motors left of a lot, absent when it was never counted. */
  public Optional<Integer> left(Lot lot) {
    return lot.left(firedByLot.getOrDefault(lot.id(), 0));
  }
}
