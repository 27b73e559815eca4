package padside.safety;

import java.util.List;
import java.util.Optional;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Ruling;
import padside.motor.MotorStack;
import padside.units.Angle;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.TimeSpan;
import padside.units.Wind;

/**
 * The facts of one flight card that rules are held against. What is not known is absent.
 *
 * @param missing what the card lacks besides what can be seen here, in the flier's words: {@code
 *     rod length}, {@code recovery device}; {@link #FIELD} stands for its edges as well
 * @param further findings of others, ruled on together with those of the rules
 */
public record Case(
    Craft craft,
    Predicted predicted,
    Ground ground,
    Sky sky,
    List<String> missing,
    List<Ruling.Finding> further) {

  /** As {@link #missing} names a card without any field. */
  public static final String FIELD = "field";

  /**
   * What flies.
   *
   * @param motors absent when none is chosen
   * @param liftoffMass with motors
   * @param upperMass what is left when the topmost stage's motors light, those included; absent of
   *     one stage, and where it is not known
   * @param propellantMass of all motors
   * @param totalImpulse installed, all motors together
   * @param tilt of the rod from vertical
   * @param own the flier's own limits for it
   */
  public record Craft(
      Optional<MotorStack> motors,
      Optional<Mass> liftoffMass,
      Optional<Mass> upperMass,
      Optional<Mass> propellantMass,
      Optional<Impulse> totalImpulse,
      Angle tilt,
      OwnLimits own,
      List<Fix> openFixes) {
    /** Keeps its own lists. */
    public Craft {
      openFixes = List.copyOf(openFixes);
    }
  }

  /**
   * How it is predicted to fly.
   *
   * @param thrustToWeight average thrust over lift-off weight
   * @param rodExitSpeed zero when it does not leave the rod
   * @param apogee of the free flight, above the pad
   * @param firing absent when no charge fires before the ground
   */
  public record Predicted(
      Optional<Double> thrustToWeight,
      Optional<Speed> rodExitSpeed,
      Optional<Length> apogee,
      Optional<Firing> firing,
      Optional<Touchdown> touchdown) {
    /** Nothing could be predicted. */
    public static Predicted nothing() {
      return new Predicted(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
  }

  /**
   * The ejection charge firing.
   *
   * @param error ejection minus apogee: negative is early
   * @param airspeed through the air at that moment
   */
  public record Firing(TimeSpan error, Speed airspeed) {}

  /**
   * Coming down.
   *
   * @param speed downward at the ground
   * @param opened whether anything was open by then
   */
  public record Touchdown(Speed speed, boolean opened) {}

  /**
   * Where it flies.
   *
   * @param smallestSide of the field
   * @param limit the largest wind with which nine of ten landings stay inside
   * @param permission the owner of the land has allowed it
   */
  public record Ground(
      Optional<Length> smallestSide,
      Optional<FieldLimit> limit,
      Optional<Boolean> permission,
      Optional<Boolean> fireBan) {}

  /**
   * The largest wind with which nine of ten landings stay inside the field.
   *
   * @param wind zero when not even calm air keeps so many inside
   * @param bound what landings are lost to above it, absent when nothing was up to that wind
   */
  public record FieldLimit(Speed wind, Optional<Field.Bound> bound) {}

  /**
   * The air.
   *
   * @param wind at pad height
   * @param cloudBase above the pad
   * @param temperature in the shade
   */
  public record Sky(
      Optional<Wind> wind, Optional<Length> cloudBase, Optional<Temperature> temperature) {}

  /** Keeps its own lists. */
  public Case {
    missing = List.copyOf(missing);
    further = List.copyOf(further);
  }
}
