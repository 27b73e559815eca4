package padside.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.motor.MotorText;
import padside.page.Plot;
import padside.units.Length;

/** What flights come to while they pass by one after the other: none of them is kept. */
final class SeasonCount {
  static final List<Column<?>> WANTED =
      List.of(
          Flight.STATUS,
          Flight.DAY,
          Flight.ROCKET,
          Flight.MOTOR,
          Flight.BOOST,
          Flight.BURN,
          Flight.EJECTION,
          Flight.RECOVERY,
          Flight.LANDING,
          Flight.LANDED_ON,
          Flight.ALTITUDE,
          Flight.PREDICTED_APOGEE);

  private static final Pattern CLASS = Pattern.compile("(?:1/[24])?[A-Z](?=[0-9])");

  private final Register register;
  private final FlightRows rows;
  private final Dates dates;
  private final Predicate<Facts> malfunction;
  private final Map<String, String> classes = new HashMap<>();

  final Map<String, Group> byClass = new TreeMap<>();
  final Map<Optional<RecordId>, Group> byRocket = new HashMap<>();
  final Map<Optional<RecordId>, Group> byDay = new HashMap<>();
  final Map<String, Integer> motors = new TreeMap<>();
  final Map<String, Integer> amiss = new TreeMap<>();
  final List<Plot.Point> points = new ArrayList<>();
  final List<Double> shares = new ArrayList<>();
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

  /** Takes a flight in if it belongs to these dates. */
  void take(Flight flight) {
    Optional<LocalDate> date = register.date(flight.day());
    if (!dates.holds(date)) {
      return;
    }
    if (flight.status() == Flight.Status.FLOWN) {
      flown(flight);
    } else if (flight.status() == Flight.Status.SCRUBBED) {
      scrubbed++;
    }
  }

  private void flown(Flight flight) {
    boolean failed = malfunction.test(flight.facts());
    Optional<Length> altitude = flight.altitude();
    all.count(failed, altitude);
    group(byClass, motorClass(flight)).count(failed, altitude);
    group(byRocket, flight.rocket()).count(failed, altitude);
    group(byDay, register.day(flight.day()).map(Day::id)).count(failed, altitude);
    flight.motor().map(MotorText::of).map(MotorText::parts).orElse(List.of()).stream()
        .forEach(part -> motors.merge(part.motor(), part.count(), Integer::sum));
    if (failed) {
      amiss.merge(rows.outcomes().told(flight.facts()), 1, Integer::sum);
    }
    rows.point(flight, "").ifPresent(points::add);
    FlightRows.share(flight).ifPresent(shares::add);
  }

  private static <K> Group group(Map<K, Group> groups, K key) {
    return groups.computeIfAbsent(key, any -> new Group());
  }

  /** The letter of the topmost motor, which is the first of its designation. */
  private String motorClass(Flight flight) {
    return flight
        .motor()
        .map(line -> classes.computeIfAbsent(line, SeasonCount::letter))
        .orElse("?");
  }

  private static String letter(String line) {
    Matcher found = CLASS.matcher(MotorText.of(line).top().motor());
    return found.lookingAt() ? found.group() : "?";
  }
}
