package padside.preflight;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.motor.MotorChoice;
import padside.motor.MotorType;
import padside.units.Length;

/** What lies in the range box and is free to fly: motors by lot, parachutes and streamers. */
public record Box(List<Stock> motors, List<RecoveryDevice> devices) {
  /**
   * Motors of one lot.
   *
   * @param left how many; absent when never counted
   * @param record how the lot has done so far
   */
  public record Stock(MotorChoice motor, Optional<Integer> left, Card.LotRecord record) {}

  /** Nothing to choose from. */
  public static final Box EMPTY = new Box(List.of(), List.of());

  /** Keeps its own lists. */
  public Box {
    motors = List.copyOf(motors);
    devices = List.copyOf(devices);
  }

  /**
   * What a flight could take: motors that meet its rocket's mount and are promised to no other card
   * that waits for its turn, and what rides in no other rocket that waits or has not been
   * debriefed.
   */
  public static Box of(Flight flight, Logbook book, OutcomeTable outcomes) {
    return of(flight, new LotRecords(book, outcomes));
  }

  static Box of(Flight flight, LotRecords records) {
    Logbook book = records.book();
    Promised promised = Promised.besides(flight, book);
    Optional<Length> mount = flight.rocket().flatMap(book::rocket).flatMap(Rocket::mount);
    List<Stock> motors = new ArrayList<>();
    for (Lot lot : book.lots()) {
      Optional<Integer> left =
          book.left(lot).map(count -> count - promised.motors.getOrDefault(lot.id(), 0));
      book.motors()
          .choose(lot.motor())
          .value()
          .filter(motor -> left.orElse(1) > 0)
          .filter(motor -> motor.type().fit(mount) != MotorType.Fit.TOO_WIDE)
          .ifPresent(motor -> motors.add(new Stock(motor, left, records.of(lot))));
    }
    return new Box(
        motors,
        book.devices().stream().filter(each -> !promised.devices.contains(each.id())).toList());
  }

  /** What other cards hold: motors not fired yet, and devices until they are back in the box. */
  private record Promised(Map<RecordId, Integer> motors, Set<RecordId> devices) {
    static Promised besides(Flight own, Logbook book) {
      Promised promised = new Promised(new HashMap<>(), new HashSet<>());
      for (Flight flight : book.flights()) {
        boolean waits = flight.status() == Flight.Status.CARD;
        if (flight.id().equals(own.id()) || !(waits || flight.awaitsDebrief())) {
          continue;
        }
        flight.device().ifPresent(promised.devices::add);
        if (waits) {
          flight.fired().forEach((lot, count) -> promised.motors.merge(lot, count, Integer::sum));
        }
      }
      return promised;
    }
  }
}
