package padside.app;

import java.util.Optional;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.motor.MotorType;
import padside.preflight.Card;
import padside.preflight.Forecasts;
import padside.preflight.Outlook;
import padside.units.Force;
import padside.units.Impulse;

/**
 * What a flight really was like, where it differs from what its flier knows.
 *
 * @param dragCoefficient of the rocket
 * @param impulseFactor delivered over nominal impulse
 * @param delayFactor burned over nominal delay; empty when the charge never fires
 * @param canopyShare how much of the recovery device opens
 */
record DemoTruth(
    double dragCoefficient,
    double impulseFactor,
    Optional<Double> delayFactor,
    double canopyShare) {

  /** The flight as it went by the flight model. */
  Outlook flown(Card card) {
    Card truly =
        card.withRocket(rocket(card.rocket().orElseThrow()))
            .withMotors(motors(card.motors().orElseThrow()), card.lotRecord())
            .withDevice(device(card.device().orElseThrow()));
    return Forecasts.of(truly).outlook().orElseThrow();
  }

  /** Burnout to ejection in seconds. */
  Optional<Double> delayS(MotorChoice motor) {
    return delayFactor
        .filter(factor -> motor.delaySeconds().isPresent())
        .map(factor -> motor.delaySeconds().getAsDouble() * factor);
  }

  private Rocket rocket(Rocket known) {
    return new Rocket(known.id(), known.facts().with(Rocket.DRAG_COEFFICIENT, dragCoefficient));
  }

  /** All motors of a flight stray alike; the delay is the topmost stage's. */
  private MotorStack motors(MotorStack known) {
    MotorChoice top = known.top().motor();
    String delay = delayS(top).map(String::valueOf).orElse(MotorType.PLUGGED);
    return new MotorStack(
            known.stages().stream()
                .map(stage -> new MotorStack.Stage(stage.count(), motor(stage.motor())))
                .toList())
        .withTop(new MotorChoice(motor(top).type(), delay));
  }

  private MotorChoice motor(MotorChoice known) {
    MotorType type = known.type();
    Optional<Impulse> impulse =
        type.totalImpulse().map(each -> new Impulse(each.newtonSeconds() * impulseFactor));
    Optional<Force> peak =
        type.facts()
            .get(MotorType.PEAK_THRUST)
            .map(each -> new Force(each.newtons() * impulseFactor));
    return new MotorChoice(
        new MotorType(
            type.id(),
            type.facts().with(MotorType.TOTAL_IMPULSE, impulse).with(MotorType.PEAK_THRUST, peak)),
        known.delay());
  }

  private RecoveryDevice device(RecoveryDevice known) {
    double whole = known.dragCoefficient().orElseThrow();
    return new RecoveryDevice(
        known.id(), known.facts().with(RecoveryDevice.DRAG_COEFFICIENT, whole * canopyShare));
  }
}
