package padside.insight;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.motor.MotorText;

/** How the motors of a log have burnt: by lot, by type, by the maker's date code. */
public final class Reliability {
  /**
   * What was counted last: every key pressed on a card asks anew, mostly about the same flights.
   */
  private static final AtomicReference<Counted> LAST = new AtomicReference<>();

  private final Experience known;
  private final Map<String, String> types = new HashMap<>();
  private final Counted counted;
  private Optional<Summed> summed = Optional.empty();

  /** Flights alike in motors and burn. */
  private record Group(
      Optional<String> motor, Map<RecordId, Integer> lots, int flights, Mark mark) {
    /** Keeps its own map. */
    private Group {
      lots = Map.copyOf(lots);
    }

    /** So many motors of each flight: one of them failed where one is told to have. */
    Burns burns(int motors) {
      int fired = Math.max(1, motors) * flights;
      return switch (mark) {
        case UNTOLD -> new Burns(0, fired, 0, 0);
        case WORKED -> new Burns(fired, 0, 0, 0);
        case FAILED -> new Burns(fired, 0, flights, 0);
        case BURST -> new Burns(fired, 0, flights, flights);
      };
    }
  }

  /**
   * Motors by type.
   *
   * @param besideLot those on the flights that name a lot
   */
  private record Summed(
      SortedMap<String, Burns> byType, Map<RecordId, Map<String, Burns>> besideLot) {
    void add(Group group, String type, Burns burns) {
      byType.merge(type, burns, Burns::and);
      for (RecordId lot : group.lots.keySet()) {
        besideLot.computeIfAbsent(lot, any -> new HashMap<>()).merge(type, burns, Burns::and);
      }
    }
  }

  private enum Mark {
    UNTOLD,
    WORKED,
    FAILED,
    BURST
  }

  /** What some flights come to, by lot; it never changes. */
  private record Counted(
      FlightLog.Past past, OutcomeTable outcomes, List<Group> groups, Map<RecordId, Burns> lots) {
    @SuppressWarnings("ReferenceEquality") // cheap, and all that is asked: the very same flights
    static Counted of(FlightLog.Past past, OutcomeTable outcomes) {
      Counted last = LAST.get();
      if (last != null && last.past == past && last.outcomes == outcomes) {
        return last;
      }
      List<Group> groups =
          past.burns().entrySet().stream()
              .map(each -> group(each.getKey(), each.getValue(), outcomes))
              .toList();
      Map<RecordId, Burns> lots = new HashMap<>();
      groups.forEach(
          group ->
              group.lots.forEach(
                  (lot, motors) -> lots.merge(lot, group.burns(motors), Burns::and)));
      Counted fresh = new Counted(past, outcomes, groups, lots);
      LAST.set(fresh);
      return fresh;
    }
  }

  /** Of all flights the reading of the log knows of. */
  public Reliability(Logbook book, OutcomeTable outcomes) {
    this(Experience.of(book), outcomes);
  }

  /** Of some flights. */
  public Reliability(Experience known, OutcomeTable outcomes) {
    this.known = known;
    this.counted = Counted.of(known.past(), outcomes);
  }

  private static Group group(FlightLog.Burnt alike, int flights, OutcomeTable outcomes) {
    Mark mark = alike.burn().map(code -> mark(code, outcomes)).orElse(Mark.UNTOLD);
    return new Group(
        alike.motor(),
        MotorText.fired(alike.motor(), alike.lot(), alike.boosterLot()),
        flights,
        mark);
  }

  private static Mark mark(String code, OutcomeTable outcomes) {
    return outcomes
        .find(Flight.BURN.name(), code)
        .map(
            outcome ->
                switch (outcome.mark()) {
                  case NOMINAL, PASSABLE -> Mark.WORKED;
                  case MALFUNCTION -> Mark.FAILED;
                  case BURST -> Mark.BURST;
                })
        .orElse(Mark.WORKED);
  }

  /** The type of a motor: {@code C6} of {@code C6-5}; what the table does not know as it stands. */
  private String type(String motor) {
    return types.computeIfAbsent(
        motor,
        line ->
            known
                .motors()
                .choose(line)
                .value()
                .map(choice -> choice.type().designation())
                .orElse(line.strip()));
  }

  /** Motors of each type that a flight of a group takes. */
  private Map<String, Integer> types(Group group) {
    Map<String, Integer> types = new HashMap<>();
    for (MotorText.Part part : MotorText.of(group.motor.orElse("")).parts()) {
      types.merge(type(part.motor()), part.count(), Integer::sum);
    }
    types.remove("");
    return types;
  }

  /** Counted when first asked for: few ask, and each asks for many lots. */
  private Summed summed() {
    if (summed.isEmpty()) {
      Summed fresh = new Summed(new TreeMap<>(), new HashMap<>());
      for (Group group : counted.groups) {
        types(group).forEach((type, motors) -> fresh.add(group, type, group.burns(motors)));
      }
      summed = Optional.of(fresh);
    }
    return summed.get();
  }

  /** The type of a lot's motors. */
  public String type(Lot lot) {
    return type(lot.motor());
  }

  /** Whether all flights of the log are counted, not the newest alone. */
  public boolean isWhole() {
    return known.past().whole();
  }

  /** The lots that were fired, suspect first: those that burst, then by the next one's chance. */
  public List<Lot> suspectFirst() {
    Comparator<Lot> burst = Comparator.comparing(lot -> of(lot).burst() == 0);
    Comparator<Lot> marked = Comparator.comparing(lot -> !of(lot).isMarked());
    Comparator<Lot> works = Comparator.comparingDouble(lot -> of(lot).failures().allWork(1));
    return known.lots().stream()
        .filter(lot -> of(lot).fired() > 0)
        .sorted(burst.thenComparing(marked).thenComparing(works))
        .toList();
  }

  /** {@code C6-5 lot K7}. */
  public static String name(Lot lot) {
    return lot.motor() + " lot " + lot.code();
  }

  public Burns of(Lot lot) {
    return counted.lots.getOrDefault(lot.id(), Burns.NONE);
  }

  /** By type, whatever lot and delay, in the order of the alphabet. */
  public Map<String, Burns> byType() {
    return Collections.unmodifiableMap(summed().byType);
  }

  /** By the maker's date code where that was told, type before it: {@code C6 of 12 03 24}. */
  public Map<String, Burns> byDateCode() {
    Map<String, Burns> codes = new TreeMap<>();
    for (Lot lot : known.lots()) {
      lot.dateCode().ifPresent(code -> codes.merge(type(lot) + " of " + code, of(lot), Burns::and));
    }
    return new LinkedHashMap<>(codes);
  }

  /**
   * A lot that has failed, against the rest of its type: those fired on flights that name it not.
   */
  public Optional<Contrast> contrast(Lot lot) {
    if (!of(lot).isMarked()) {
      return Optional.empty();
    }
    String type = type(lot);
    Burns rest =
        summed()
            .byType
            .getOrDefault(type, Burns.NONE)
            .without(
                summed().besideLot.getOrDefault(lot.id(), Map.of()).getOrDefault(type, Burns.NONE));
    return rest.told() > 0 ? Optional.of(new Contrast(type, of(lot), rest)) : Optional.empty();
  }

  /** Some motors beside others of their type. */
  public record Contrast(String type, Burns some, Burns rest) {
    /** How likely chance alone makes them differ at least as much. */
    public double chance() {
      return some.failures().chanceOfDiffering(rest.failures());
    }

    /**
     * In words: {@code The rest of C6: 1 of 40 failed (1 in 1581 to 1 in 7). By chance alone they
     * differ so much 2 times in 100.}
     */
    public String words() {
      long times = Math.round(100 * chance());
      String often =
          switch ((int) times) {
            case 0 -> "less than once in 100";
            case 1 -> "once in 100";
            case 100 -> "every time";
            default -> times + " times in 100";
          };
      return "The rest of %s: %s. By chance alone they differ so much %s."
          .formatted(type, rest.words(), often);
    }
  }
}
