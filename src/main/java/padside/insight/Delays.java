package padside.insight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apache.commons.statistics.distribution.TDistribution;
import padside.fact.RecordId;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Moments;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.motor.MotorTable;
import padside.motor.MotorType;

/** What the flights of a log say of delays: how long they were, and which would have suited. */
public final class Delays {
  /** How far two marks by hand are off: common practice, no source. */
  public static final String REACTION = "a mark by hand is some 0.2 s late";

  /** How the words here are come by. */
  public static final String METHOD =
      "Delays with the 95 % interval of their mean (Student's t); "
          + REACTION
          + " (common practice, no source). Certification lets a delay be a fifth or 1.5 s off, 3 s"
          + " at most (NFPA 1125, from memory).";

  private static final double UPPER = 0.975;

  /** NFPA 1125 as remembered, not looked up: a fifth of the label or 1.5 s, 3 s at most. */
  private static final double SHARE = 0.2;

  private static final double LEAST_S = 1.5;
  private static final double MOST_S = 3;

  // Words of the outcome table.
  private static final String EARLY = "early";
  private static final String AT_APOGEE = "at_apogee";
  private static final String LATE = "late";

  private final MotorTable table;
  private final Map<String, Optional<MotorStack>> stacks = new HashMap<>();
  private final Map<String, AsFlown> motors = new TreeMap<>();
  private final Map<RecordId, AsFlown> lots = new LinkedHashMap<>();
  private final Map<Pair, Votes> votes = new LinkedHashMap<>();

  private record Pair(RecordId rocket, String motors) {}

  /**
   * Delays that were measured.
   *
   * @param motor as on the box
   * @param label the delay it is sold with, in seconds
   * @param measured in seconds
   */
  public record AsFlown(String motor, double label, Moments measured) {
    private AsFlown and(AsFlown more) {
      return new AsFlown(motor, label, measured.and(more.measured));
    }

    /** What holds the mean delay 95 times in 100 by Student's t; absent of one delay. */
    public Optional<Interval> mean() {
      int n = measured.count();
      if (n < 2) {
        return Optional.empty();
      }
      double error = Math.sqrt(measured.squares() / (n - 1) / n);
      double half = TDistribution.of(n - 1).inverseCumulativeProbability(UPPER) * error;
      return Optional.of(new Interval(measured.mean() - half, measured.mean() + half));
    }

    /** How far one motor's delay may be off its label and be certified, in seconds. */
    public double tolerance() {
      return Math.min(MOST_S, Math.max(LEAST_S, SHARE * label));
    }

    /** Whether the mean is further off the label than one motor may be. */
    public boolean isBeyond() {
      return Math.abs(measured.mean() - label) > tolerance();
    }

    /** In words: {@code C6-5: 5 flown, 5.6 s (5.1 to 6.1), label 5}. */
    public String words() {
      String interval =
          mean().map(mean -> " (" + one(mean.low()) + " to " + one(mean.high()) + ")").orElse("");
      String beyond =
          isBeyond() ? "; more than " + one(tolerance()) + " s off, beyond certification" : "";
      return "%s: %d flown, %s s%s, label %s%s"
          .formatted(motor, measured.count(), one(measured.mean()), interval, plain(label), beyond);
    }
  }

  private static final class Votes {
    private final Map<Double, Integer> flights = new TreeMap<>();
    private Moments off = Moments.NONE;

    private void count(double delay, FlightLog.Told told) {
      flights.merge(delay, told.flights(), Integer::sum);
    }
  }

  /**
   * The delay on sale that suits a rocket on a motor by its own flights.
   *
   * @param motors all of them but the topmost's delay, such as {@code C6}
   * @param says how many flights say so
   * @param of how many say anything
   * @param off measured less predicted best delay where the charge fired at apogee
   */
  public record Suits(RecordId rocket, String motors, double delay, int says, int of, Moments off) {
    /** Whether it is about such motors. */
    public boolean isFor(MotorStack stack) {
      return motors.equals(Delays.motors(stack));
    }

    /** {@code 4 of 5 own flights on C6 say delay 5; predicted best 0.3 s short so far (3)}. */
    public String words() {
      String predicted =
          off.count() == 0
              ? ""
              : "; best delay was predicted %s s too %s (%s)"
                  .formatted(
                      one(Math.abs(off.mean())),
                      off.mean() < 0 ? "long" : "short",
                      off.count() == 1 ? "1 flight" : off.count() + " flights");
      return "%d of %d own flight%s on %s %s delay %s%s"
          .formatted(
              says,
              of,
              of == 1 ? "" : "s",
              motors,
              says == 1 ? "says" : "say",
              plain(delay),
              predicted);
    }
  }

  private Delays(Experience known, Predicate<FlightLog.Ejected> wanted) {
    this.table = known.motors();
    known
        .past()
        .ejections()
        .forEach(
            (alike, told) -> {
              if (wanted.test(alike)) {
                count(alike, told);
              }
            });
  }

  /** Of all flights the reading of the log knows of. */
  public static Delays of(Logbook book) {
    return of(Experience.of(book));
  }

  /** Of some flights. */
  public static Delays of(Experience known) {
    return new Delays(known, any -> true);
  }

  /** Of those of one rocket. */
  public static Delays ofRocket(RecordId rocket, Logbook book) {
    return new Delays(Experience.of(book), alike -> alike.rocket().equals(Optional.of(rocket)));
  }

  private Optional<MotorStack> stack(String line) {
    return stacks.computeIfAbsent(line, it -> table.chooseAll(it).value());
  }

  private void count(FlightLog.Ejected alike, FlightLog.Told told) {
    Optional<MotorStack> stack = alike.motor().flatMap(this::stack);
    if (stack.isEmpty() || stack.get().top().motor().delaySeconds().isEmpty()) {
      return;
    }
    MotorChoice motor = stack.get().top().motor();
    double label = motor.delaySeconds().getAsDouble();
    if (label == 0) {
      return; // a booster has none
    }
    if (told.delays().count() > 0) {
      AsFlown flown = new AsFlown(motor.designation(), label, told.delays());
      motors.merge(flown.motor, flown, AsFlown::and);
      alike.lot().ifPresent(lot -> lots.merge(lot, flown, AsFlown::and));
    }
    if (alike.rocket().isPresent() && alike.ejection().isPresent()) {
      Pair pair = new Pair(alike.rocket().get(), motors(stack.get()));
      vote(votes.computeIfAbsent(pair, any -> new Votes()), motor, alike.ejection().get(), told);
    }
  }

  private static void vote(Votes votes, MotorChoice motor, String ejection, FlightLog.Told told) {
    double label = motor.delaySeconds().orElseThrow();
    List<Double> sold = sold(motor.type());
    switch (ejection) {
      case AT_APOGEE -> {
        votes.count(label, told);
        votes.off = votes.off.and(told.off());
      }
      case EARLY ->
          votes.count(sold.stream().filter(it -> it > label).findFirst().orElse(label), told);
      case LATE ->
          votes.count(
              sold.stream().filter(it -> it < label).reduce((a, b) -> b).orElse(label), told);
      default -> {}
    }
  }

  private static List<Double> sold(MotorType type) {
    return type.delays().stream()
        .filter(delay -> !delay.equals(MotorType.PLUGGED) && !delay.equals(MotorType.BOOSTER))
        .map(Double::valueOf)
        .sorted()
        .toList();
  }

  /** All motors of a flight but the topmost's delay: {@code C6}, {@code C6-0 then 3xC6}. */
  private static String motors(MotorStack stack) {
    String whole = stack.designation();
    return whole.substring(0, whole.length() - stack.top().motor().delay().length() - 1);
  }

  /** By motor as on the box, in the order of the alphabet. */
  public List<AsFlown> byMotor() {
    return List.copyOf(motors.values());
  }

  /** Of one lot's motors. */
  public Optional<AsFlown> of(Lot lot) {
    return Optional.ofNullable(lots.get(lot.id()));
  }

  /** {@code lot K7, C6-5: 5 flown, 5.6 s (5.1 to 6.1), label 5}; absent where none was measured. */
  public Optional<String> words(Lot lot) {
    return of(lot).map(flown -> "lot " + lot.code() + ", " + flown.words());
  }

  /** What suits a rocket on some motors, whatever their delay; absent where no flight says. */
  public Optional<Suits> suits(RecordId rocket, MotorStack stack) {
    return suits(new Pair(rocket, motors(stack)));
  }

  /** What suits each rocket on each motor it was flown on. */
  public List<Suits> suits() {
    return votes.keySet().stream()
        .sorted(Comparator.comparing(Pair::motors).thenComparing(Pair::rocket))
        .flatMap(pair -> suits(pair).stream())
        .toList();
  }

  /** Of two delays that as many flights name, the shorter: late is worse. */
  private Optional<Suits> suits(Pair pair) {
    Votes cast = votes.get(pair);
    if (cast == null || cast.flights.isEmpty()) {
      return Optional.empty();
    }
    int all = 0;
    Map.Entry<Double, Integer> most = null;
    for (Map.Entry<Double, Integer> each : new ArrayList<>(cast.flights.entrySet())) {
      all += each.getValue();
      most = most == null || each.getValue() > most.getValue() ? each : most;
    }
    return Optional.of(
        new Suits(pair.rocket, pair.motors, most.getKey(), most.getValue(), all, cast.off));
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String plain(double delay) {
    return delay == Math.rint(delay) ? "" + (long) delay : "" + delay;
  }
}
