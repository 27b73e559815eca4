package padside.physics;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.units.Impulse;
import padside.units.Mass;
import padside.units.TimeSpan;

/**
 * One rocket on its motors on one rod in one air: all that decides a flight.
 *
 * @param airframe the whole rocket without motors, boosters that drop on the way included
 * @param stages the motors, lowest first; each stage lights at the burnout of the one below
 * @param delay burnout of the last stage to ejection; empty for a plugged motor, which never ejects
 * @param recovery what opens at ejection; empty when nothing does
 * @param delaysOnSale the delays the last stage's motor is sold with, each answered in the delay
 *     table
 */
public record Launch(
    Airframe airframe,
    List<Stage> stages,
    Rod rod,
    Air air,
    WindProfile wind,
    Optional<TimeSpan> delay,
    Optional<CanopyDrag> recovery,
    List<TimeSpan> delaysOnSale) {
  /** More are not flown on model motors; common practice, no source. */
  static final int MOST_STAGES = 4;

  /** Refuses negative delays and stages that leave no rocket to fly on. */
  public Launch {
    stages = List.copyOf(stages);
    delaysOnSale = List.copyOf(delaysOnSale);
    requireStages(airframe, stages);
    delay.ifPresent(Launch::requireDelay);
    delaysOnSale.forEach(Launch::requireDelay);
  }

  /** Rocket and motors together at ignition. */
  public Mass liftoffMass() {
    double motorsKg = stages.stream().mapToDouble(Stage::motorsKg).sum();
    return new Mass(airframe.massWithoutMotor().kilograms() + motorsKg);
  }

  /** Total impulse of all motors of all stages. */
  public Impulse totalImpulse() {
    return new Impulse(stages.stream().mapToDouble(s -> s.impulse().newtonSeconds()).sum());
  }

  /** Propellant of all motors of all stages. */
  public Mass propellantMass() {
    return new Mass(stages.stream().mapToDouble(Stage::propellantKg).sum());
  }

  /** How good the worst of the thrust curves is. */
  public ThrustCurve.Quality curveQuality() {
    return stages.stream()
        .map(stage -> stage.motor().curve().quality())
        .max(ThrustCurve.Quality::compareTo)
        .orElseThrow();
  }

  /** The same launch of a rocket with another drag coefficient. */
  public Launch withDrag(double coefficient) {
    return with(airframe.withDrag(coefficient), delay);
  }

  /** The same launch with the charge firing so long after burnout, or never. */
  public Launch withDelay(Optional<TimeSpan> other) {
    return with(airframe, other);
  }

  private Launch with(Airframe rocket, Optional<TimeSpan> charge) {
    return new Launch(rocket, stages, rod, air, wind, charge, recovery, delaysOnSale);
  }

  /** The same launch in another wind. */
  public Launch withWind(WindProfile other) {
    return new Launch(airframe, stages, rod, air, other, delay, recovery, delaysOnSale);
  }

  /** The same launch from another rod. */
  public Launch withRod(Rod other) {
    return new Launch(airframe, stages, other, air, wind, delay, recovery, delaysOnSale);
  }

  private static void requireStages(Airframe airframe, List<Stage> stages) {
    RefusedInput.unless(!stages.isEmpty(), "The rocket has no motor; choose one.");
    RefusedInput.unless(
        stages.size() <= MOST_STAGES,
        () -> "%d stages given, %d at most can be flown.".formatted(stages.size(), MOST_STAGES));
    RefusedInput.unless(
        stages.get(stages.size() - 1).dropped().kilograms() == 0,
        "The last stage drops nothing at burnout; enter the dropped mass at the stage below.");
    double droppedG = stages.stream().mapToDouble(stage -> stage.dropped().inGrams()).sum();
    double airframeG = airframe.massWithoutMotor().inGrams();
    RefusedInput.unless(
        droppedG < airframeG,
        () ->
            String.format(
                Locale.ROOT,
                "The dropped stages weigh %.2f g, but the whole rocket %.2f g; check both masses,"
                    + " the rocket's includes its booster.",
                droppedG,
                airframeG));
  }

  private static void requireDelay(TimeSpan delay) {
    RefusedInput.unless(
        delay.seconds() >= 0 && delay.seconds() <= 60,
        () ->
            String.format(
                Locale.ROOT, "Delay %.1f s is outside 0 to 60 s after burnout.", delay.seconds()));
  }
}
