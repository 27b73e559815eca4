package padside.safety;

import java.util.Optional;
import java.util.stream.Stream;
import padside.flight.MotorChoice;
import padside.flight.MotorType;
import padside.flight.Ruling.Verdict;
import padside.units.Impulse;
import padside.units.Mass;
import padside.units.Notations;

/** Rules about the motor and the mass it lifts. */
record MotorRules(Basis basis) {
  void on(Case flown, Findings out) {
    Case.Craft craft = flown.craft();
    motorLimit(craft, out);
    mass(craft, out);
    impulse(craft, out);
    thrustToWeight(flown, out);
    craft.motors().stream()
        .map(MotorChoice::type)
        .distinct()
        .forEach(
            type ->
                out.told(
                    "motor data", type.designation() + ": " + type.provenance(), "motor table"));
  }

  /** The largest lift-off mass its maker gives a motor, which holds for one motor alone. */
  private void motorLimit(Case.Craft craft, Findings out) {
    if (craft.motors().size() != 1 || craft.liftoffMass().isEmpty()) {
      return;
    }
    MotorChoice motor = craft.motors().get(0);
    Optional<Mass> most = motor.type().maxLiftoffMass(motor.delay());
    if (most.isEmpty()) {
      String sentence = "no largest lift-off mass is known for " + motor.designation();
      out.told("motor mass limit", sentence, data(motor.type()));
      return;
    }
    double kilograms = craft.liftoffMass().get().kilograms();
    double bound = most.get().kilograms();
    out.add(
        "motor mass limit",
        Bounds.over(kilograms, bound) ? Verdict.NO_GO : Verdict.GO,
        "lift-off mass %s, at most %s for %s"
            .formatted(
                Bounds.beside(kilograms, bound, this::mass), mass(bound), motor.designation()),
        data(motor.type()));
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
                    mass -> out.atMost("lift-off mass", mass.kilograms(), most, this::mass),
                    () ->
                        out.unknown("lift-off mass", "lift-off mass is not known", most.cited())));
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

  /** The larger of the code's and the house's floor. */
  private void thrustToWeight(Case flown, Findings out) {
    Sourced<Double> house = basis.house().sourced(Figure.LEAST_THRUST_TO_WEIGHT);
    Sourced<Double> least =
        Stream.concat(basis.code().leastThrustToWeight().stream(), Stream.of(house))
            .reduce((a, b) -> a.value() >= b.value() ? a : b)
            .orElseThrow();
    Sourced<Double> advised = basis.house().sourced(Figure.ADVISED_THRUST_TO_WEIGHT);
    out.atLeast(
        new Findings.Floor("thrust-to-weight", least, advised),
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
