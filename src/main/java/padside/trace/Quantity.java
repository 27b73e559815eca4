package padside.trace;

import java.util.List;
import java.util.OptionalDouble;
import padside.units.Length;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Pressure;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** What a column of a trace holds. */
public enum Quantity {
  TIME(
      List.of("time", "t", "elapsed", "timestamp", "clock"),
      List.of("s", "sec", "secs", "second", "seconds", "ms", "msec", "millis", "milliseconds")),
  HEIGHT(
      List.of("altitude", "alt", "height", "h", "agl", "asl", "msl"),
      List.of("ft", "feet", "m", "metres", "meters")),
  PRESSURE(
      List.of("pressure", "press", "pres", "baro", "barometer", "p"),
      List.of("pa", "hpa", "kpa", "mbar", "inhg"));

  /** A column with one of these in its name is of something else. */
  private static final List<String> OTHER =
      List.of(
          "speed",
          "velocity",
          "vel",
          "rate",
          "accel",
          "acceleration",
          "acc",
          "temp",
          "temperature",
          "max",
          "maximum",
          "min",
          "minimum",
          "volt",
          "voltage",
          "battery",
          "gps",
          "date",
          "rise",
          "error",
          "noise");

  private static final Notation<TimeSpan> TIMES = Notations.timeSpan();
  private static final Notation<Length> HEIGHTS = Notations.altitude(UnitSystem.METRIC);
  private static final Notation<Pressure> PRESSURES = Notations.pressure(UnitSystem.METRIC);

  private final List<String> names;
  private final List<String> bare;

  Quantity(List<String> names, List<String> bare) {
    this.names = names;
    this.bare = bare;
  }

  /** As options and sentences call it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Whether a column whose name has these words is of this. */
  boolean isNamedBy(List<String> words) {
    return words.stream().noneMatch(OTHER::contains)
        && (words.stream().anyMatch(names::contains)
            || (words.size() == 1 && bare.contains(words.get(0))));
  }

  /** What one of a unit is in SI; empty where it is no unit of this. */
  OptionalDouble inSi(String unit) {
    if (unit.isBlank()
        || unit.chars().noneMatch(Character::isLetter)
        || unit.matches(".*[0-9].*")) {
      return OptionalDouble.empty();
    }
    String one = "1" + unit.strip();
    return switch (this) {
      case TIME -> of(TIMES.read(one).value().map(TimeSpan::seconds));
      case HEIGHT -> of(HEIGHTS.read(one).value().map(Length::metres));
      case PRESSURE -> of(PRESSURES.read(one).value().map(Pressure::pascals));
    };
  }

  private static OptionalDouble of(java.util.Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
