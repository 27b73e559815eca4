package padside.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Weather;
import padside.motor.MotorTable;
import padside.trace.Found;
import padside.trace.TraceAir;
import padside.trace.TraceFinding;
import padside.units.Length;
import padside.units.TimeSpan;

/**
 * What an altimeter's trace offers a flight, beside what the flight says already. Nothing the flier
 * typed gives way unless told so.
 */
public record Traced(
    Offer<Length> altitude,
    Offer<TimeSpan> ejection,
    Offer<TimeSpan> delay,
    Offer<TimeSpan> touchdown,
    String trace) {

  /**
   * One value offered.
   *
   * @param said what the flight says now
   * @param typed whether the flier typed that
   */
  public record Offer<T>(Column<T> column, Found<T> found, Optional<T> said, boolean typed) {
    private static <T> Offer<T> of(Column<T> column, Found<T> found, Facts flight) {
      boolean typed = flight.typed(column).isPresent();
      return new Offer<>(column, found, flight.get(column), typed);
    }

    /** Whether it goes in unless the flier says otherwise. */
    public boolean isTaken() {
      return found.value().isPresent() && !typed;
    }
  }

  /** What a trace gives a flight of those facts. */
  public static Traced of(TraceFinding trace, Facts flight, MotorTable motors) {
    Found<Length> apogee = rounded(trace.apogee());
    Found<TimeSpan> ejection = inHundredths(trace.ejection());
    return new Traced(
        Offer.of(Flight.ALTITUDE, apogee, flight),
        Offer.of(Flight.EJECTION_MARK, ejection, flight),
        Offer.of(Flight.MEASURED_DELAY, delay(ejection, flight, motors), flight),
        Offer.of(Flight.TOUCHDOWN_MARK, inHundredths(trace.touchdown()), flight),
        trace.kept().text());
  }

  private static Found<TimeSpan> delay(Found<TimeSpan> ejection, Facts flight, MotorTable motors) {
    if (ejection.value().isEmpty()) {
      return Found.absent("it needs the ejection");
    }
    Facts marked = flight.with(Flight.EJECTION_MARK, ejection.value().get());
    return Measured.of(marked, motors)
        .delay()
        .map(delay -> inHundredths(Found.of(delay, ejection.within().orElseThrow())))
        .orElseGet(() -> Found.absent("the motor's burn time is not known, or is longer"));
  }

  private static Found<Length> rounded(Found<Length> found) {
    return new Found<>(
        found.value().map(v -> new Length(hundredth(v.metres()))), found.within(), found.why());
  }

  private static Found<TimeSpan> inHundredths(Found<TimeSpan> found) {
    return new Found<>(
        found.value().map(v -> new TimeSpan(hundredth(v.seconds()))), found.within(), found.why());
  }

  /** More digits than that are noise. */
  private static double hundredth(double value) {
    return Math.round(value * 100) / 100.0;
  }

  public List<Offer<?>> offers() {
    return List.of(altitude, ejection, delay, touchdown);
  }

  /**
   * What goes into the flight, its line always.
   *
   * @param over columns whose typed values give way
   */
  public Facts taken(Set<String> over) {
    Facts facts = Facts.none().with(Flight.TRACE, trace);
    for (Offer<?> offer : offers()) {
      facts = facts.with(taken(offer, over));
    }
    return facts;
  }

  private static <T> Facts taken(Offer<T> offer, Set<String> over) {
    boolean takes = offer.isTaken() || over.contains(offer.column.name());
    return takes ? Facts.none().with(offer.column, offer.found.value()) : Facts.none();
  }

  /** The columns whose typed values stand unless told otherwise. */
  public List<Column<?>> standing() {
    List<Column<?>> standing = new ArrayList<>();
    for (Offer<?> offer : offers()) {
      if (offer.typed && offer.found.value().isPresent()) {
        standing.add(offer.column);
      }
    }
    return standing;
  }

  /** The air of a flight's day, as far as it was read. */
  public static TraceAir air(Flight flight, Logbook log) {
    Optional<Weather> weather = flight.day().flatMap(log::latestWeather);
    Optional<Field> field = flight.day().flatMap(log::day).flatMap(Day::field).flatMap(log::field);
    return new TraceAir(weather.flatMap(Weather::temperature), field.flatMap(Field::elevation));
  }
}
