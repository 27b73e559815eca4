package padside.app;

import padside.form.Coordinate;
import padside.form.Share;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Pressure;
import padside.units.Reading;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.UnitSystem;
import padside.units.Wind;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How quantities are written as options: always with their unit, whatever the settings say. */
abstract class Written<T> implements ITypeConverter<T> {
  private final Notation<T> notation;

  private Written(Notation<T> notation) {
    this.notation = notation;
  }

  @Override
  public T convert(String text) {
    return value(notation.read(text));
  }

  static <T> T value(Reading<T> reading) {
    return reading
        .value()
        .orElseThrow(() -> new TypeConversionException(reading.objection().orElseThrow()));
  }

  /** A mass. */
  static final class OfMass extends Written<Mass> {
    OfMass() {
      super(Notations.mass(UnitSystem.METRIC).withUnitRequired());
    }
  }

  /** A size of a rocket, rod or canopy. */
  static final class OfSize extends Written<Length> {
    OfSize() {
      super(Notations.bodyLength(UnitSystem.METRIC).withUnitRequired());
    }
  }

  /** A distance over the ground. */
  static final class OfDistance extends Written<Length> {
    OfDistance() {
      super(Notations.distance(UnitSystem.METRIC).withUnitRequired());
    }
  }

  /** A height above the sea, below it when negative. */
  static final class OfAltitude extends Written<Length> {
    OfAltitude() {
      super(Notations.altitude(UnitSystem.METRIC).withUnitRequired());
    }
  }

  /** A wind in the shorthand. */
  static final class OfWind extends Written<Wind> {
    OfWind() {
      super(Notations.wind(UnitSystem.METRIC).withUnitRequired());
    }
  }

  /** A wind speed. */
  static final class OfSpeed extends Written<Speed> {
    OfSpeed() {
      super(Notations.windSpeed(UnitSystem.METRIC).withUnitRequired());
    }
  }

  /** A temperature. */
  static final class OfTemperature extends Written<Temperature> {
    OfTemperature() {
      super(Notations.temperature(UnitSystem.METRIC).withUnitRequired());
    }
  }

  /** A pressure. */
  static final class OfPressure extends Written<Pressure> {
    OfPressure() {
      super(Notations.pressure(UnitSystem.METRIC).withUnitRequired());
    }
  }

  /** An angle. */
  static final class OfAngle extends Written<Angle> {
    OfAngle() {
      super(Notations.angle().withUnitRequired());
    }
  }

  /** A share of the whole. */
  static final class OfShare extends Written<Double> {
    OfShare() {
      super(new Share());
    }
  }

  /** Degrees north of the equator. */
  static final class OfLatitude extends Written<Double> {
    OfLatitude() {
      super(Coordinate.LATITUDE);
    }
  }

  /** Degrees east of Greenwich. */
  static final class OfLongitude extends Written<Double> {
    OfLongitude() {
      super(Coordinate.LONGITUDE);
    }
  }

  /** A compass bearing, which needs no unit. */
  static final class OfBearing extends Written<Bearing> {
    OfBearing() {
      super(Notations.bearing());
    }
  }
}
