package padside.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.motor.MotorText;
import padside.page.Plot;
import padside.units.Length;

/** What flights come to while they pass by one after the other: none of them is kept. */
final class SeasonCount {
  static final FlightLog.Sought WANTED =
      FlightLog.Sought.of(
          Taught.and(
              Taught.ALIKE,
              List.of(Flight.BOOST, Flight.RECOVERY, Flight.LANDING, Flight.LANDED_ON)),
          Taught.and(List.of(Flight.DAY, Flight.ALTITUDE, Flight.PREDICTED_APOGEE), Taught.OWN));

  private static final Pattern CLASS = Pattern.compile("(?:1/[24])?[A-Z](?=[0-9])");

  private final Register register;
  private final FlightRows rows;
  private final Dates dates;
  private final Predicate<Facts> malfunction;
  private final ByLikeness<Shared> shared = new ByLikeness<>(this::shared);

  final Map<String, Group> byClass = new TreeMap<>();
  final Map<Optional<RecordId>, Group> byRocket = new HashMap<>();
  final Map<Optional<RecordId>, Group> byDay = new HashMap<>();
  final Map<String, Integer> motors = new TreeMap<>();
  final Map<String, Integer> amiss = new TreeMap<>();
  final List<Plot.Point> points = new ArrayList<>();
  final List<Double> shares = new ArrayList<>();
  final Taught taught = new Taught();
  final Group all = new Group();
  int scrubbed;

  /** Flights that have something in common. */
  static final class Group {
    int flown;
    int amiss;
    double highestM = Double.NaN;

    void count(boolean failed, Optional<Length> altitude) {
      flown++;
      amiss += failed ? 1 : 0;
      double metres = altitude.map(Length::metres).orElse(Double.NaN);
      highestM = Double.isNaN(highestM) || metres > highestM ? metres : highestM;
    }

    Optional<Length> highest() {
      return Double.isNaN(highestM) ? Optional.empty() : Optional.of(new Length(highestM));
    }
  }

  SeasonCount(Register register, PageSource source, Dates dates) {
    this.register = register;
    this.rows = FlightRows.of(source);
    this.dates = dates;
    this.malfunction = source.outcomes().anyMalfunction();
  }

  /** What flights that say the same come to. */
  private record Shared(
      Optional<Flight.Status> status,
      boolean failed,
      String told,
      List<MotorText.Part> motors,
      String motorClass,
      Optional<RecordId> rocket) {
    boolean is(Flight.Status other) {
      return status.filter(other::equals).isPresent();
    }
  }

  private Shared shared(Facts alike) {
    boolean failed = malfunction.test(alike);
    Optional<MotorText> motor = alike.get(Flight.MOTOR).map(MotorText::of);
    return new Shared(
        alike.get(Flight.STATUS),
        failed,
        failed ? rows.outcomes().told(alike) : "",
        motor.map(MotorText::parts).orElse(List.of()),
        motor.map(SeasonCount::letter).orElse("?"),
        alike.get(Flight.ROCKET));
  }

  /** Takes a flight in if it belongs to these dates. */
  void take(FlightLog.Passing flight) {
    Optional<RecordId> day = flight.own().get(Flight.DAY);
    if (!dates.holds(register.date(day))) {
      return;
    }
    Shared alike = shared.of(flight.alike());
    if (alike.is(Flight.Status.FLOWN)) {
      flown(flight, day, alike);
    } else if (alike.is(Flight.Status.SCRUBBED)) {
      scrubbed++;
    }
  }

  private void flown(FlightLog.Passing passing, Optional<RecordId> day, Shared alike) {
    Flight flight = new Flight(passing.id(), passing.own());
    Optional<Length> altitude = flight.altitude();
    all.count(alike.failed, altitude);
    group(byClass, alike.motorClass).count(alike.failed, altitude);
    group(byRocket, alike.rocket).count(alike.failed, altitude);
    group(byDay, register.day(day).map(Day::id)).count(alike.failed, altitude);
    for (MotorText.Part part : alike.motors) {
      motors.merge(part.motor(), part.count(), Integer::sum);
    }
    if (alike.failed) {
      amiss.merge(alike.told, 1, Integer::sum);
    }
    rows.point(flight, "").ifPresent(points::add);
    FlightRows.share(flight).ifPresent(shares::add);
    taught.take(passing);
  }

  private static <K> Group group(Map<K, Group> groups, K key) {
    return groups.computeIfAbsent(key, any -> new Group());
  }

  /** Of the topmost motor, which is the first of its designation. */
  private static String letter(MotorText motor) {
    Matcher found = CLASS.matcher(motor.top().motor());
    return found.lookingAt() ? found.group() : "?";
  }
}
