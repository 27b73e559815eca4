package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.flight.Rocket;
import padside.motor.MotorStack;
import padside.motor.MotorType;
import padside.physics.Motor;
import padside.physics.Stage;
import padside.physics.ThrustCurve;
import padside.units.Mass;

/** Makes of the motors on a card the stages that the flight model burns. */
record Stages(Missing missing) {
  /** The stages from the ground up; fewer than there are motors when something is missing. */
  List<Stage> of(MotorStack stack, Optional<Rocket> rocket) {
    List<Stage> stages = new ArrayList<>();
    for (MotorStack.Stage stage : stack.stages()) {
      boolean lowest = stages.isEmpty();
      Optional<Mass> dropped =
          lowest && !stack.boosters().isEmpty() ? booster(rocket) : Optional.of(new Mass(0));
      motor(stage.motor().type())
          .flatMap(motor -> dropped.map(mass -> new Stage(motor, stage.count(), mass)))
          .ifPresent(stages::add);
    }
    return stages;
  }

  /** All that falls off is taken to fall with the lowest stage. */
  private Optional<Mass> booster(Optional<Rocket> rocket) {
    String name = rocket.map(Rocket::name).orElse("the rocket");
    return missing.needed("mass of the booster of " + name, rocket.flatMap(Rocket::boosterMass));
  }

  private Optional<Motor> motor(MotorType type) {
    Optional<Mass> total = missing.needed("mass of motor " + type.designation(), type.totalMass());
    Optional<Mass> propellant =
        missing.needed("propellant mass of motor " + type.designation(), type.propellantMass());
    return curve(type)
        .flatMap(curve -> total.flatMap(t -> propellant.map(p -> new Motor(curve, t, p))));
  }

  private Optional<ThrustCurve> curve(MotorType type) {
    Optional<List<MotorType.CurvePoint>> entered = type.facts().get(MotorType.CURVE);
    if (entered.isPresent()) {
      return entered.map(
          points ->
              ThrustCurve.ofPoints(
                  points.stream()
                      .map(point -> new ThrustCurve.Point(point.time(), point.thrust()))
                      .toList()));
    }
    if (type.totalImpulse().isEmpty() || type.burnTime().isEmpty()) {
      return missing.needed(
          "impulse and burn time of motor " + type.designation(), Optional.<ThrustCurve>empty());
    }
    Optional<ThrustCurve.Peak> peak =
        ThrustCurve.Peak.of(
            type.facts().get(MotorType.PEAK_THRUST),
            type.facts().get(MotorType.TIME_TO_PEAK),
            type.facts().get(MotorType.TIME_TO_SUSTAIN));
    return Optional.of(ThrustCurve.of(type.totalImpulse().get(), type.burnTime().get(), peak));
  }
}
