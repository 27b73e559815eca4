package padside.preflight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import padside.flight.RecoveryDevice;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.physics.RefusedInput;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Impulse;
import padside.units.Notations;

/**
 * What could be done otherwise than a card says: what its box holds, and how the rod leans.
 *
 * @param mostTilt the largest angle of the rod the code allows; where none is known it stays
 */
record Alternatives(Card card, Optional<Angle> mostTilt) {
  private static final int TILT_STEP_DEG = 5;

  /** In pairs the rod leans no further than this. */
  private static final int PAIRED_TILT_DEG = 10;

  private static final double ROUNDING_DEG = 1e-6;

  /** Every single change, the smallest first. */
  List<Change> single() {
    return Stream.of(lots(), tilts(), motors(), devices())
        .flatMap(List::stream)
        .sorted(Change::compare)
        .toList();
  }

  /** Two changes at once, the smallest first. */
  List<Change> pairs() {
    List<Change> small =
        tilts().stream().filter(tilt -> tilt.amount() <= PAIRED_TILT_DEG + ROUNDING_DEG).toList();
    List<Change> pairs = new ArrayList<>();
    for (Change tilt : small) {
      motors().forEach(motor -> pairs.add(tilt.and(motor)));
      devices().forEach(device -> pairs.add(tilt.and(device)));
    }
    for (Change motor : motors()) {
      boolean delay = motor.kinds().contains(Change.Kind.DELAY);
      devices().forEach(device -> pairs.add(delay ? motor.and(device) : device.and(motor)));
    }
    return pairs.stream().sorted(Change::compare).toList();
  }

  /** Leaning into the wind or across it, and upright where it leans. */
  private List<Change> tilts() {
    List<Change> tilts = new ArrayList<>();
    double most = mostTilt.map(Angle::inDegrees).orElse(0.0);
    if (card.tilt().radians() != 0) {
      tilts.add(
          Change.of(
              Change.Kind.TILT,
              "with the rod upright",
              Math.abs(card.tilt().inDegrees()),
              it -> it.withTilt(new Angle(0), new Bearing(0))));
    }
    Optional<Bearing> from = card.wind().flatMap(wind -> wind.from());
    for (int degrees = TILT_STEP_DEG; degrees <= most + ROUNDING_DEG; degrees += TILT_STEP_DEG) {
      Angle angle = Angle.ofDegrees(degrees);
      from.ifPresent(
          wind -> {
            tilts.add(tilt(angle, wind, "into the wind"));
            tilts.add(tilt(angle, new Bearing(wind.degrees() - 90), "across the wind"));
            tilts.add(tilt(angle, new Bearing(wind.degrees() + 90), "across the wind"));
          });
    }
    return tilts.stream().filter(tilt -> tilt.amount() > ROUNDING_DEG).toList();
  }

  private Change tilt(Angle angle, Bearing toward, String way) {
    String words =
        "with the rod leaning "
            + Notations.angle().show(angle)
            + " toward "
            + toward.compassPoint()
            + ", "
            + way;
    return Change.of(
        Change.Kind.TILT, words, turned(angle, toward), it -> it.withTilt(angle, toward));
  }

  /** Degrees between how the rod leans and how it would. */
  private double turned(Angle angle, Bearing toward) {
    double now = card.tilt().radians();
    double bearings = Math.toRadians(card.tiltToward().map(it -> it.degreesTo(toward)).orElse(0.0));
    double cosine =
        Math.cos(now) * Math.cos(angle.radians())
            + Math.sin(now) * Math.sin(angle.radians()) * Math.cos(bearings);
    return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
  }

  /** The same motors of a lot that nothing is told against, where the card's own is marked. */
  private List<Change> lots() {
    if (card.motors().isEmpty() || card.lotRecord().filter(Card.LotRecord::isMarked).isEmpty()) {
      return List.of();
    }
    MotorStack motors = card.motors().get();
    return enough(motors)
        .filter(stock -> stock.motor().equals(motors.top().motor()))
        .filter(stock -> !stock.record().isMarked())
        .limit(1)
        .map(stock -> Change.motors(Change.Kind.LOT, motors, stock, 0))
        .toList();
  }

  /** Other delays and other motors at the top, each from the lot that has done best. */
  private List<Change> motors() {
    if (card.motors().isEmpty()) {
      return List.of();
    }
    MotorStack now = card.motors().get();
    MotorChoice own = now.top().motor();
    Map<MotorChoice, Box.Stock> best = new LinkedHashMap<>();
    enough(now)
        .filter(stock -> !stock.motor().equals(own) && stock.motor().delaySeconds().isPresent())
        .sorted(Comparator.comparingInt(stock -> stock.record().burns().failed()))
        .forEach(stock -> best.putIfAbsent(stock.motor(), stock));
    return best.values().stream().map(stock -> motor(now, stock)).toList();
  }

  private static Change motor(MotorStack now, Box.Stock stock) {
    MotorChoice own = now.top().motor();
    boolean delay = stock.motor().type().equals(own.type());
    double amount =
        delay
            ? Math.abs(seconds(stock.motor()) - seconds(own))
            : Math.abs(newtonSeconds(stock.motor()) - newtonSeconds(own));
    Change.Kind kind = delay ? Change.Kind.DELAY : Change.Kind.MOTOR;
    return Change.motors(kind, now.withTop(stock.motor()), stock, amount);
  }

  private static double seconds(MotorChoice motor) {
    return motor.delaySeconds().orElse(0);
  }

  private static double newtonSeconds(MotorChoice motor) {
    return motor.type().totalImpulse().map(Impulse::newtonSeconds).orElse(0.0);
  }

  private Stream<Box.Stock> enough(MotorStack motors) {
    int count = motors.top().count();
    return card.box().motors().stream().filter(each -> each.left().orElse(count) >= count);
  }

  private List<Change> devices() {
    if (card.device().isEmpty()) {
      return List.of();
    }
    RecoveryDevice own = card.device().get();
    Optional<Double> now = dragAreaM2(own);
    List<Change> changes = new ArrayList<>();
    for (RecoveryDevice device : card.box().devices()) {
      dragAreaM2(device)
          .filter(area -> !device.id().equals(own.id()))
          .ifPresent(area -> changes.add(Change.device(device, ratio(area, now.orElse(area)))));
    }
    return changes;
  }

  private static Optional<Double> dragAreaM2(RecoveryDevice device) {
    try {
      return Launches.canopy(device).map(canopy -> canopy.dragCoefficient() * canopy.areaM2());
    } catch (RefusedInput unusable) {
      return Optional.empty();
    }
  }

  /** How many times the one is the other, as a logarithm, whichever is the larger. */
  private static double ratio(double one, double other) {
    return Math.abs(Math.log(one / other));
  }
}
