package padside.flight;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.clock.Anchor;
import padside.clock.Moment;
import padside.fact.Column;
import padside.fact.Facts;
import padside.units.TimeSpan;

/**
 * The times that one start of a machine put into the log, as an anchor shows them to be. Each is
 * corrected by its own uptime, so that a jump of the clock between two of them does no harm; what
 * the flier gave himself stays.
 *
 * @param before what was told for clocks earlier, undone or not
 */
record Correction(Anchor anchor, List<Anchor> before) {
  /** What is nearer than this is right already; common practice, no source. */
  private static final Duration LEAST = Duration.ofSeconds(2);

  /** From the key press to the medium; what differs more from the clock the flier gave himself. */
  private static final Duration AT_ONCE = Duration.ofSeconds(5);

  /** A form opened before midnight may be kept after it, and a day planned ahead is tomorrow's. */
  private static final int DAYS_APART = 1;

  private static final List<Place> PLACES =
      List.of(
          new Place(Kind.WEATHER, Weather.AT, Optional.of(new Steady(Weather.UP, Weather.BOOT))),
          new Place(
              Kind.FLIGHT,
              Flight.LIFTOFF_AT,
              Optional.of(new Steady(Flight.LIFTOFF_UP, Flight.LIFTOFF_BOOT))),
          new Place(Kind.ATTEMPT, Attempt.AT, Optional.of(new Steady(Attempt.UP, Attempt.BOOT))),
          new Place(Kind.DAY, Day.DATE, Optional.empty()),
          new Place(Kind.FIX, Fix.DONE_ON, Optional.empty()));

  /** Where the uptime stands that belongs to a time. */
  private record Steady(Column<TimeSpan> up, Column<String> boot) {}

  private record Place(Kind kind, Column<?> column, Optional<Steady> steady) {}

  /** Keeps its own list. */
  Correction {
    before = List.copyOf(before);
  }

  static boolean isOf(Kind kind, String field) {
    return place(kind, field).isPresent();
  }

  private static Optional<Place> place(Kind kind, String field) {
    return PLACES.stream()
        .filter(place -> place.kind == kind && place.column.name().equals(field))
        .findFirst();
  }

  /** The anchor as a new record, and every time that it corrects. */
  Action action(List<FlightLog.Stamp> stamps) {
    List<Action.Change> changes = new ArrayList<>();
    for (FlightLog.Stamp stamp : stamps) {
      right(stamp)
          .filter(cell -> !cell.equals(stamp.shown()))
          .map(cell -> Facts.none().with(stamp.field(), cell))
          .ifPresent(
              facts ->
                  changes.add(new Action.Change(stamp.kind(), Optional.of(stamp.record()), facts)));
    }
    if (anchor.byFlier() || !changes.isEmpty()) {
      changes.add(0, new Action.Change(Kind.CLOCK, Optional.empty(), anchor.facts()));
    }
    return new Action(anchor.how().label(), changes);
  }

  /** What should stand there; absent where it stays as it is. */
  @SuppressWarnings("unchecked") // of the columns those of dates are known
  private Optional<Facts.Cell> right(FlightLog.Stamp stamp) {
    Place place = place(stamp.kind(), stamp.field()).orElseThrow();
    if (stamp.first().typed(place.column).isPresent()) {
      return Optional.empty();
    }
    Facts shown = Facts.none().with(stamp.field(), stamp.shown());
    Optional<?> first = stamp.first().get(place.column);
    Optional<?> now = shown.get(place.column);
    if (first.isEmpty() || now.isEmpty()) {
      return Optional.empty();
    }
    return first.get() instanceof Instant time
        ? time(stamp, place, time)
            .filter(right -> apart(right, (Instant) now.get()).compareTo(LEAST) > 0)
            .map(right -> cell((Column<Instant>) place.column, right))
        : date(stamp, (LocalDate) first.get())
            .map(right -> cell((Column<LocalDate>) place.column, right));
  }

  private static <T> Facts.Cell cell(Column<T> column, T value) {
    return Facts.Cell.of(column.write().apply(value));
  }

  /** By the uptime kept beside it, else shifted as the clock was when it was written. */
  private Optional<Instant> time(FlightLog.Stamp stamp, Place place, Instant first) {
    Optional<Instant> steady =
        place
            .steady
            .filter(beside -> stamp.first().get(beside.boot).equals(Optional.of(anchor.boot())))
            .flatMap(beside -> stamp.first().get(beside.up))
            .map(anchor::timeAt);
    return steady.or(
        () ->
            believed(stamp.written())
                .min(Comparator.comparing(clock -> apart(clock, first)))
                .filter(clock -> apart(clock, first).compareTo(AT_ONCE) <= 0)
                .map(clock -> first.plus(Duration.between(clock, trueTime(stamp)))));
  }

  private Instant trueTime(FlightLog.Stamp stamp) {
    return anchor.timeAt(stamp.written().up());
  }

  private Optional<LocalDate> date(FlightLog.Stamp stamp, LocalDate first) {
    ZoneId zone = stamp.zone();
    LocalDate right = LocalDate.ofInstant(trueTime(stamp), zone);
    return believed(stamp.written())
        .map(clock -> LocalDate.ofInstant(clock, zone))
        .min(Comparator.comparing(clock -> daysApart(clock, first)))
        .filter(clock -> daysApart(clock, first) <= DAYS_APART)
        .map(clock -> first.plusDays(ChronoUnit.DAYS.between(clock, right)));
  }

  /** What the log's time may have been at a moment: as an anchor had it, or the machine's clock. */
  private Stream<Instant> believed(Moment moment) {
    return Stream.concat(
        before.stream()
            .filter(each -> each.boot().equals(moment.boot()))
            .map(each -> each.timeAt(moment.up())),
        Stream.of(moment.wall()));
  }

  private static Duration apart(Instant one, Instant other) {
    return Duration.between(one, other).abs();
  }

  private static long daysApart(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other));
  }
}
