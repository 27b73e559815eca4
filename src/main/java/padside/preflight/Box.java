package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.flight.RecoveryDevice;
import padside.motor.MotorChoice;

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
}
