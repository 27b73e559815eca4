package padside.safety;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Ruling.Finding;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.motor.MotorTable;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.TimeSpan;
import padside.units.Wind;

/** A card that is well in every way, to be spoilt in one. */
final class Draft {
  static final MotorChoice C6_5 = table().choose("C6-5").value().orElseThrow();

  Optional<MotorStack> motors = motors("C6-5");
  Optional<Mass> liftoffMass = Optional.of(new Mass(0.08));
  Optional<Mass> upperMass = Optional.empty();
  Optional<Mass> propellantMass = Optional.of(new Mass(0.0108));
  Optional<Impulse> impulse = Optional.of(new Impulse(8.82));
  Angle tilt = Angle.ofDegrees(3);
  OwnLimits own = OwnLimits.none();
  List<Fix> fixes = List.of();
  Optional<Double> thrustToWeight = Optional.of(6.0);
  Optional<Speed> rodExit = Optional.of(new Speed(30));
  Optional<Length> apogee = Optional.of(new Length(250));
  Optional<Case.Firing> firing = Optional.of(new Case.Firing(new TimeSpan(-0.4), new Speed(6)));
  Optional<Case.Touchdown> touchdown = Optional.of(new Case.Touchdown(new Speed(4), true));
  Optional<Length> smallestSide = Optional.of(new Length(150));
  Optional<Case.FieldLimit> fieldLimit =
      Optional.of(
          new Case.FieldLimit(
              Speed.ofMph(13),
              Optional.of(new Field.Edge(new Bearing(40), Length.ofFeet(280), "lane", "road"))));
  Optional<Boolean> permission = Optional.of(true);
  Optional<Boolean> fireBan = Optional.of(false);
  Optional<Wind> wind = wind(6, 9);
  Optional<Length> cloudBase = Optional.of(new Length(600));
  Optional<Temperature> temperature = Optional.of(Temperature.ofCelsius(15));
  List<Finding> further = List.of();

  Case built() {
    return new Case(
        new Case.Craft(motors, liftoffMass, upperMass, propellantMass, impulse, tilt, own, fixes),
        new Case.Predicted(thrustToWeight, rodExit, apogee, firing, touchdown),
        new Case.Ground(smallestSide, fieldLimit, permission, fireBan),
        new Case.Sky(wind, cloudBase, temperature),
        List.of(),
        further);
  }

  /** One with this or that unknown or out of bounds. */
  static Draft random(Random random) {
    Draft draft = new Draft();
    draft.rodExit = maybe(random, new Speed(40 * random.nextDouble()));
    draft.thrustToWeight = maybe(random, 12 * random.nextDouble());
    draft.liftoffMass = maybe(random, new Mass(0.3 * random.nextDouble()));
    draft.own = draft.own.withWind(maybe(random, new Speed(15 * random.nextDouble())));
    draft.fieldLimit =
        maybe(random, new Case.FieldLimit(new Speed(15 * random.nextDouble()), Optional.empty()));
    draft.smallestSide = maybe(random, new Length(500 * random.nextDouble()));
    return draft;
  }

  static <T> Optional<T> maybe(Random random, T value) {
    return random.nextInt(8) == 0 ? Optional.empty() : Optional.of(value);
  }

  static Optional<Wind> wind(double meanMph, double gustMph) {
    return Optional.of(new Wind(Speed.ofMph(meanMph), Speed.ofMph(gustMph), Optional.empty()));
  }

  static Optional<MotorStack> motors(String line) {
    return Optional.of(table().chooseAll(line).value().orElseThrow());
  }

  private static MotorTable table() {
    try (var table = Files.newBufferedReader(Path.of("data/motors.csv"))) {
      return new MotorTable(MotorTable.read(table, "motors.csv").types());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
