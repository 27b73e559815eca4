package padside.report;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.flight.Flight;
import padside.flight.OutcomeTable;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** Words about flights and days, the same on screens and pages. */
public final class FlightWords {
  /** The JDK's own names of days and months take it long to load, and differ with its version. */
  private static final String[] DAYS = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

  private static final String[] MONTHS = {
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
  };

  private FlightWords() {}

  /** {@code Sat 2 May 2026}. */
  public static String date(LocalDate date) {
    return DAYS[date.getDayOfWeek().getValue() - 1]
        + ' '
        + date.getDayOfMonth()
        + ' '
        + MONTHS[date.getMonthValue() - 1]
        + ' '
        + date.getYear();
  }

  /** What came of it, or how far it has come. */
  public static String outcome(Flight flight, OutcomeTable outcomes) {
    if (flight.status() != Flight.Status.FLOWN) {
      return flight.status().words();
    }
    return flight.awaitsDebrief() ? "debrief waits" : outcomes.told(flight.facts());
  }

  /** {@code 45° NE 140 ft}: from the pad, as far as known. */
  public static Optional<String> landing(
      Optional<Bearing> bearing, Optional<Length> distance, UnitSystem units) {
    String text =
        Stream.of(
                bearing.map(Notations.bearing()::show),
                distance.map(Notations.distance(units)::show))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(" "));
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /** Tenths: the delay of a motor is not known better. */
  public static String seconds(TimeSpan span) {
    return Notations.timeSpan().show(new TimeSpan(Math.round(span.seconds() * 10) / 10.0));
  }
}
