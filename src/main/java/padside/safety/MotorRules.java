package padside.safety;

import java.util.Optional;
import java.util.stream.Stream;
import padside.flight.Ruling.Verdict;
import padside.motor.MotorStack;
import padside.motor.MotorType;
import padside.units.Impulse;
import padside.units.Mass;
import padside.units.Notations;

/** Rules about the motor and the mass it lifts. */
record MotorRules(Basis basis) {
  private static final String MASS_LIMIT = "motor mass limit";
  private static final String LIFTOFF_MASS = "lift-off mass";
  private static final String UPPER_MASS = "mass above the booster";
  private static final String NO_SOURCE = "common practice, no source";

  void on(Case flown, Findings out) {
    Case.Craft craft = flown.craft();
    motorLimit(craft, out);
    mass(craft, out);
    impulse(craft, out);
    thrustToWeight(flown, out);
    craft.motors().stream()
        .flatMap(motors -> motors.stages().stream())
        .map(stage -> stage.motor().type())
        .distinct()
        .forEach(
            type ->
                out.told(
                    "motor data", type.designation() + ": " + type.provenance(), "motor table"));
  }

  /**
   * The largest lift-off mass their makers give the motors: the lowest against the whole rocket,
   * the topmost against what is left of it.
   */
  private void motorLimit(Case.Craft craft, Findings out) {
    if (craft.motors().isEmpty() || craft.liftoffMass().isEmpty()) {
      return;
    }
    MotorStack motors = craft.motors().get();
    lifts(new Lift(LIFTOFF_MASS, motors.stages().get(0), craft.liftoffMass().get()), out);
    if (motors.isStaged()) {
      craft
          .upperMass()
          .ifPresentOrElse(
              mass -> lifts(new Lift(UPPER_MASS, motors.top(), mass), out),
              () -> out.unknown(MASS_LIMIT, UPPER_MASS + " is not known", NO_SOURCE));
    }
  }

  /** A mass and the motors that lift it. */
  private record Lift(String words, MotorStack.Stage stage, Mass mass) {}

  private void lifts(Lift lift, Findings out) {
    MotorType type = lift.stage().motor().type();
    Optional<Mass> most = type.maxLiftoffMass(lift.stage().motor().delay());
    if (most.isEmpty()) {
      String motor = lift.stage().motor().designation();
      out.told(MASS_LIMIT, "no largest lift-off mass is known for " + motor, data(type));
      return;
    }
    double kilograms = lift.mass().kilograms();
    double bound = lift.stage().count() * most.get().kilograms();
    out.add(
        MASS_LIMIT,
        Bounds.over(kilograms, bound) ? Verdict.NO_GO : Verdict.GO,
        "%s %s, at most %s for %s"
            .formatted(
                lift.words(),
                Bounds.beside(kilograms, bound, this::mass),
                mass(bound),
                lift.stage().designation()),
        data(type) + stretched(lift));
  }

  /** The maker's figure is for one motor alone that lifts a rocket off the ground. */
  private static String stretched(Lift lift) {
    int count = lift.stage().count();
    String cluster = count > 1 ? "; " + count + " times that of one motor: " + NO_SOURCE : "";
    return lift.words().equals(UPPER_MASS)
        ? cluster + "; held against an upper stage: " + NO_SOURCE
        : cluster;
  }

  private void mass(Case.Craft craft, Findings out) {
    Optional<Mass> liftoff = craft.liftoffMass();
    basis
        .code()
        .liftoffMass()
        .map(most -> most.map(Mass::kilograms))
        .ifPresent(
            most ->
                liftoff.ifPresentOrElse(
                    mass -> out.atMost(LIFTOFF_MASS, mass.kilograms(), most, this::mass),
                    () -> out.unknown(LIFTOFF_MASS, "lift-off mass is not known", most.cited())));
    basis
        .code()
        .propellantMass()
        .map(most -> most.map(Mass::kilograms))
        .ifPresent(most -> propellant(craft, most, out));
  }

  /** Where the propellant is not known, the whole rocket may settle it: it weighs more. */
  private void propellant(Case.Craft craft, Sourced<Double> most, Findings out) {
    double bound = most.value();
    Optional<Mass> propellant = craft.propellantMass();
    if (propellant.isPresent()) {
      out.atMost("propellant", propellant.get().kilograms(), most, this::mass);
    } else if (craft.liftoffMass().filter(m -> !Bounds.over(m.kilograms(), bound)).isPresent()) {
      String sentence = "propellant at most " + mass(bound) + ": the whole rocket weighs less";
      out.told("propellant", sentence, most.cited());
    } else {
      out.unknown("propellant", "propellant mass is not known", most.cited());
    }
  }

  private void impulse(Case.Craft craft, Findings out) {
    basis
        .code()
        .totalImpulse()
        .map(most -> most.map(Impulse::newtonSeconds))
        .ifPresent(
            most ->
                craft
                    .totalImpulse()
                    .ifPresentOrElse(
                        impulse ->
                            out.atMost(
                                "total impulse",
                                impulse.newtonSeconds(),
                                most,
                                ns -> Notations.impulse().show(new Impulse(ns))),
                        () ->
                            out.unknown(
                                "total impulse", "total impulse is not known", most.cited())));
  }

  /** The largest of the code's, the house's and the flier's own floor. */
  private void thrustToWeight(Case flown, Findings out) {
    Sourced<Double> house = basis.house().sourced(Figure.LEAST_THRUST_TO_WEIGHT);
    Sourced<Double> least =
        Stream.concat(basis.code().leastThrustToWeight().stream(), Stream.of(house))
            .reduce((a, b) -> a.value() >= b.value() ? a : b)
            .orElseThrow();
    Sourced<Double> advised = basis.house().sourced(Figure.ADVISED_THRUST_TO_WEIGHT);
    out.atLeast(
        new Findings.Floor("thrust-to-weight", least, advised)
            .raised(flown.craft().own().thrustToWeight().map(OwnLimits::sourced)),
        flown.predicted().thrustToWeight(),
        Shown::ratio);
  }

  private String mass(double kilograms) {
    return basis.shown().mass(new Mass(kilograms));
  }

  private static String data(MotorType type) {
    return "motor table: " + type.provenance();
  }
}
