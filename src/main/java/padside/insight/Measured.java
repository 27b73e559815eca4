package padside.insight;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.motor.MotorTable;
import padside.motor.MotorType;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * What the marks of a flight and its altitude come to.
 *
 * @param burnout from lift-off to the end of the last stage's burn, by the motor table
 * @param stamped the delay the motor was sold with; absent when it is plugged
 * @param delay from that burnout to the ejection marked
 * @param descent mean rate from the highest altitude to the ground, the charge taken to fire there
 * @param aloft from lift-off to the touchdown marked
 */
public record Measured(
    Optional<TimeSpan> burnout,
    Optional<TimeSpan> stamped,
    Optional<TimeSpan> delay,
    Optional<Speed> descent,
    Optional<TimeSpan> aloft) {

  /** Of a flight's facts; what they do not give is absent. */
  public static Measured of(Facts flight, MotorTable motors) {
    Optional<MotorStack> stack =
        flight.get(Flight.MOTOR).flatMap(typed -> motors.chooseAll(typed).value());
    Optional<TimeSpan> burnout = stack.flatMap(Measured::burnout);
    Optional<TimeSpan> ejection = flight.get(Flight.EJECTION_MARK);
    Optional<TimeSpan> touchdown = flight.get(Flight.TOUCHDOWN_MARK);
    return new Measured(
        burnout,
        stack.flatMap(Measured::stamped),
        burnout.flatMap(burn -> ejection.flatMap(mark -> between(burn, mark))),
        flight
            .get(Flight.ALTITUDE)
            .filter(altitude -> altitude.metres() > 0)
            .flatMap(
                altitude ->
                    ejection
                        .flatMap(mark -> touchdown.flatMap(down -> between(mark, down)))
                        .filter(time -> time.seconds() > 0)
                        .map(time -> new Speed(altitude.metres() / time.seconds()))),
        touchdown);
  }

  /** Absent when it would run backwards: one of the two is wrong then. */
  private static Optional<TimeSpan> between(TimeSpan earlier, TimeSpan later) {
    double seconds = later.seconds() - earlier.seconds();
    return seconds < 0 ? Optional.empty() : Optional.of(new TimeSpan(seconds));
  }

  /** Stage after stage, each lit at the burnout of the one below. */
  private static Optional<TimeSpan> burnout(MotorStack stack) {
    double seconds = 0;
    for (MotorStack.Stage stage : stack.stages()) {
      Optional<TimeSpan> burn = burn(stage.motor().type());
      if (burn.isEmpty()) {
        return Optional.empty();
      }
      seconds += burn.get().seconds();
    }
    return Optional.of(new TimeSpan(seconds));
  }

  private static Optional<TimeSpan> burn(MotorType type) {
    List<MotorType.CurvePoint> curve = type.facts().get(MotorType.CURVE).orElse(List.of());
    return curve.isEmpty() ? type.burnTime() : Optional.of(curve.get(curve.size() - 1).time());
  }

  private static Optional<TimeSpan> stamped(MotorStack stack) {
    MotorChoice motor = stack.top().motor();
    return motor.delaySeconds().isPresent()
        ? Optional.of(new TimeSpan(motor.delaySeconds().getAsDouble()))
        : Optional.empty();
  }
}
