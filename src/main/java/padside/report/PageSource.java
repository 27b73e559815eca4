package padside.report;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.insight.Experience;
import padside.motor.MotorTable;
import padside.motor.MotorType;
import padside.page.Keys;
import padside.preflight.Settings;
import padside.units.UnitSystem;

/**
 * What pages are made of.
 *
 * @param motors the types that come with the program
 * @param today the date they are made on
 * @param keys what the keys of the main screens do
 */
public record PageSource(
    FlightLog log,
    MotorTable motors,
    OutcomeTable outcomes,
    Settings settings,
    ZoneId zone,
    LocalDate today,
    Keys keys) {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  UnitSystem units() {
    return settings.units();
  }

  /** Whose log it is, as far as that is set. */
  Optional<String> flier() {
    return settings.flier();
  }

  Logbook book() throws Fault {
    return Logbook.read(log, motors);
  }

  /** What lots and delays of the log are judged by, after some of its flights. */
  Experience after(FlightLog.Past past) throws Fault {
    List<Lot> lots = new ArrayList<>();
    for (Stored each : log.list(Kind.LOT)) {
      lots.add(new Lot(each.id(), each.facts()));
    }
    List<MotorType> types = new ArrayList<>();
    for (Stored each : log.list(Kind.MOTOR)) {
      types.add(new MotorType(each.id(), each.facts()));
    }
    return new Experience(lots, motors.with(types), past);
  }

  /** The time of day there: {@code 19:43}. */
  String clock(Instant at) {
    return CLOCK.withZone(zone).format(at);
  }

  /** What stands below the title of every page. */
  String made(String of) {
    String whose = flier().map(name -> " from the log of " + name).orElse("");
    return of + " Made on " + FlightWords.date(today) + whose + ".";
  }
}
