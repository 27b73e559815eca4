package padside.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.RecoveryDevice;

/**
 * The way through a first card: what comes next is told by what the log has by now, so nothing of
 * it is kept but whether it is wanted.
 *
 * @param flown how many flights were debriefed when it began; one more ends it
 */
record Guide(boolean wanted, int flown) {
  /** What there is to be before the next; in the order that takes the fewest keys. */
  enum Stage {
    FIELD,
    ROCKET,
    RECOVERY,
    DAY,
    CARD,
    PAD,
    DEBRIEF;

    /** Where it stands among all: {@code 2/7}. */
    String of() {
      return List.of(values()).indexOf(this) + 1 + "/" + values().length;
    }
  }

  /** Nobody is led. */
  static Guide off() {
    return new Guide(false, 0);
  }

  /** Where wanted, until the first flight of a log is debriefed. */
  static Guide first(boolean wanted) {
    return new Guide(wanted, 0);
  }

  /** Off where it leads now, else on for one card more. */
  Guide turned(World world) {
    return leads(world) ? off() : new Guide(true, (int) debriefed(world).count());
  }

  /** Whether there is a way to lead yet. Looks at no more flights of a long log than it needs. */
  boolean leads(World world) {
    return wanted && debriefed(world).skip(flown).findAny().isEmpty();
  }

  private static Stream<Flight> debriefed(World world) {
    return world.log().flights().stream().filter(Guide::isDebriefed);
  }

  private static boolean isDebriefed(Flight flight) {
    return flight.status() == Flight.Status.FLOWN && !flight.awaitsDebrief();
  }

  /** The first thing that is not there yet. */
  static Stage stage(World world) {
    if (world.log().fields().stream().noneMatch(Guide::isPaced)) {
      return Stage.FIELD;
    }
    if (world.log().rockets().stream().noneMatch(r -> both(r.mass(), r.diameter()))) {
      return Stage.ROCKET;
    }
    if (world.log().devices().stream().noneMatch(Guide::isMeasured)) {
      return Stage.RECOVERY;
    }
    if (DayScreen.day(world)
        .filter(day -> day.date().equals(Optional.of(DayScreen.today(world))))
        .isEmpty()) {
      return Stage.DAY;
    }
    List<Flight> flights = DayScreen.flights(world);
    if (flights.stream().anyMatch(Flight::awaitsDebrief)) {
      return Stage.DEBRIEF;
    }
    return flights.stream().anyMatch(flight -> flight.status() == Flight.Status.CARD)
        ? Stage.PAD
        : Stage.CARD;
  }

  private static boolean isPaced(Field field) {
    return !field.edges().isEmpty() || field.smallestSide().isPresent();
  }

  private static boolean isMeasured(RecoveryDevice device) {
    return device.diameter().isPresent() || both(device.width(), device.length());
  }

  private static boolean both(Optional<?> first, Optional<?> second) {
    return first.isPresent() && second.isPresent();
  }
}
