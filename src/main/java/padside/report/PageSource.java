package padside.report;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.motor.MotorTable;
import padside.units.UnitSystem;

/**
 * What pages are made of.
 *
 * @param motors the types that come with the program
 * @param today the date they are made on
 */
public record PageSource(
    FlightLog log,
    MotorTable motors,
    OutcomeTable outcomes,
    UnitSystem units,
    ZoneId zone,
    LocalDate today) {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  Logbook book() throws Fault {
    return Logbook.read(log, motors);
  }

  /** The time of day there: {@code 19:43}. */
  String clock(Instant at) {
    return CLOCK.withZone(zone).format(at);
  }

  /** What stands below the title of every page. */
  String made(String of) {
    return of + " Made on " + FlightWords.date(today) + ".";
  }
}
