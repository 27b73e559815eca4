package padside.preflight;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.insight.Burns;
import padside.insight.Confidence;
import padside.insight.Delays;
import padside.motor.MotorStack;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Wind;

/**
 * A flight card with everything it refers to looked up. What is not known is absent; the check says
 * what it lacks.
 *
 * @param motors all of them, from the ground up
 * @param mass without motors, recovery packed
 * @param wind as it stands on the card
 * @param weather the day's latest reading, for air and cloud base; its wind is not used
 * @param readings every look at the weather on its day, in the order they were entered
 * @param lotRecord how the lot of the topmost motors has done so far
 * @param boosterRecord the same of a booster's lot, in a stack
 * @param learned what the rocket's altitudes teach
 * @param suits the delay that suits by this rocket's own flights on these motors
 * @param claims what it names that another open card of its day holds
 * @param box what could fly in place of its motor and recovery
 * @param at when it is to fly, to the minute; absent where no clock is asked
 * @param unread what was typed here or in a record it refers to but cannot be read, as nouns
 */
public record Card(
    Optional<Rocket> rocket,
    Optional<MotorStack> motors,
    Optional<Mass> mass,
    Optional<RecoveryDevice> device,
    Optional<Length> rod,
    Angle tilt,
    Optional<Bearing> tiltToward,
    Optional<Wind> wind,
    Optional<Weather> weather,
    List<Weather> readings,
    Optional<Day> day,
    Optional<Field> field,
    List<Fix> openFixes,
    Optional<LotRecord> lotRecord,
    Optional<LotRecord> boosterRecord,
    Learned learned,
    Optional<Delays.Suits> suits,
    List<OpenCards.Claim> claims,
    Box box,
    Optional<Instant> at,
    List<String> unread) {
  /**
   * How one lot has done.
   *
   * @param burns of its motors
   */
  public record LotRecord(String code, Burns burns) {
    /** Whether a motor of it has malfunctioned. */
    public boolean isMarked() {
      return burns.isMarked();
    }
  }

  /** Keeps its own lists and the minute. */
  public Card {
    readings = List.copyOf(readings);
    openFixes = List.copyOf(openFixes);
    claims = List.copyOf(claims);
    unread = List.copyOf(unread);
    at = at.map(time -> time.truncatedTo(ChronoUnit.MINUTES));
  }

  /** Looks up what a flight's card refers to. */
  public static Card of(Flight flight, Logbook book, OutcomeTable outcomes, Optional<Instant> at) {
    LotRecords records = new LotRecords(book, outcomes);
    return withoutBox(flight, records, at).withBox(Box.of(flight, records));
  }

  /** The same with nothing to choose from: no advice will be asked for. */
  public static Card withoutBox(Flight flight, LotRecords records, Optional<Instant> at) {
    Logbook book = records.book();
    Card card = asFlown(flight, book).atThePad(flight, records, at);
    return card.withUnread(Unread.in(flight, card));
  }

  /**
   * What decides how a flight goes, without what else the check looks at. Mass and rod fall back on
   * the rocket's usual ones.
   */
  static Card asFlown(Flight flight, Logbook book) {
    Optional<Rocket> rocket = flight.rocket().flatMap(book::rocket);
    Optional<Day> day = flight.day().flatMap(book::day);
    return new Card(
        rocket,
        flight.motor().flatMap(motor -> book.motors().chooseAll(motor).value()),
        Unread.or(flight.facts(), Flight.MASS, rocket.flatMap(Rocket::mass)),
        flight.device().flatMap(book::device),
        Unread.or(flight.facts(), Flight.ROD, rocket.flatMap(Rocket::rod)),
        flight.facts().get(Flight.TILT).orElse(new Angle(0)),
        flight.facts().get(Flight.TILT_TOWARD),
        flight.wind(),
        flight.day().flatMap(book::latestWeather),
        List.of(),
        day,
        day.flatMap(Day::field).flatMap(book::field),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Learned.nothing(),
        Optional.empty(),
        List.of(),
        Box.EMPTY,
        Optional.empty(),
        List.of());
  }

  private Card atThePad(Flight flight, LotRecords records, Optional<Instant> time) {
    Logbook book = records.book();
    return new Card(
        rocket,
        motors,
        mass,
        device,
        rod,
        tilt,
        tiltToward,
        wind,
        weather,
        flight.day().map(book::weatherOf).orElse(List.of()),
        day,
        field,
        rocket.map(r -> book.openFixes(r.id())).orElse(List.of()),
        flight.lot().flatMap(book::lot).map(records::of),
        motors
            .filter(MotorStack::isStaged)
            .flatMap(stack -> flight.boosterLot())
            .flatMap(book::lot)
            .map(records::of),
        rocket.map(r -> Learned.of(r.id(), records)).orElse(Learned.nothing()),
        rocket.flatMap(r -> motors.flatMap(m -> records.suits(r.id(), m))),
        OpenCards.beside(flight, book).claims(flight),
        box,
        time,
        List.of());
  }

  /** What the rocket's drag is taken as, told with what holds it so often. */
  Learned.Taken drag(Confidence confidence) {
    return learned.of(rocket, confidence);
  }

  private Card withUnread(List<String> nouns) {
    return new Card(
        rocket,
        motors,
        mass,
        device,
        rod,
        tilt,
        tiltToward,
        wind,
        weather,
        readings,
        day,
        field,
        openFixes,
        lotRecord,
        boosterRecord,
        learned,
        suits,
        claims,
        box,
        at,
        nouns);
  }

  /** The same card for another rocket, of which the log knows no altitude. */
  public Card withRocket(Rocket other) {
    return new Card(
        Optional.of(other),
        motors,
        mass,
        device,
        rod,
        tilt,
        tiltToward,
        wind,
        weather,
        readings,
        day,
        field,
        openFixes,
        lotRecord,
        boosterRecord,
        Learned.nothing(),
        Optional.empty(),
        claims,
        box,
        at,
        unread);
  }

  /** The same card with other motors, the topmost from a lot that has done so far as told. */
  public Card withMotors(MotorStack other, Optional<LotRecord> record) {
    return new Card(
        rocket,
        Optional.of(other),
        mass,
        device,
        rod,
        tilt,
        tiltToward,
        wind,
        weather,
        readings,
        day,
        field,
        openFixes,
        record,
        boosterRecord,
        learned,
        suits.filter(own -> own.isFor(other)),
        claims,
        box,
        at,
        unread);
  }

  /** The same card with another parachute or streamer. */
  public Card withDevice(RecoveryDevice other) {
    return new Card(
        rocket,
        motors,
        mass,
        Optional.of(other),
        rod,
        tilt,
        tiltToward,
        wind,
        weather,
        readings,
        day,
        field,
        openFixes,
        lotRecord,
        boosterRecord,
        learned,
        suits,
        claims,
        box,
        at,
        unread);
  }

  /** The same card with the rod leaning otherwise. */
  public Card withTilt(Angle angle, Bearing toward) {
    return new Card(
        rocket,
        motors,
        mass,
        device,
        rod,
        angle,
        Optional.of(toward),
        wind,
        weather,
        readings,
        day,
        field,
        openFixes,
        lotRecord,
        boosterRecord,
        learned,
        suits,
        claims,
        box,
        at,
        unread);
  }

  /** The same card in another wind. */
  public Card withWind(Wind other) {
    return new Card(
        rocket,
        motors,
        mass,
        device,
        rod,
        tilt,
        tiltToward,
        Optional.of(other),
        weather,
        readings,
        day,
        field,
        openFixes,
        lotRecord,
        boosterRecord,
        learned,
        suits,
        claims,
        box,
        at,
        unread);
  }

  /** The same card in other weather. */
  public Card withWeather(Optional<Weather> other) {
    return new Card(
        rocket,
        motors,
        mass,
        device,
        rod,
        tilt,
        tiltToward,
        wind,
        other,
        readings,
        day,
        field,
        openFixes,
        lotRecord,
        boosterRecord,
        learned,
        suits,
        claims,
        box,
        at,
        unread);
  }

  /** The same card with something to choose from. */
  public Card withBox(Box other) {
    return new Card(
        rocket,
        motors,
        mass,
        device,
        rod,
        tilt,
        tiltToward,
        wind,
        weather,
        readings,
        day,
        field,
        openFixes,
        lotRecord,
        boosterRecord,
        learned,
        suits,
        claims,
        other,
        at,
        unread);
  }
}
