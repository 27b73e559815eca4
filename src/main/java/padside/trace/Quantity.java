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
  TIME("time t elapsed timestamp clock", "s sec secs second seconds ms msec millis milliseconds"),
  HEIGHT("altitude alt height h agl asl msl", "ft feet m metres meters"),
  PRESSURE("pressure press pres baro barometer p", "pa hpa kpa mbar inhg");

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

  private final String names;
  private final String bare;

  Quantity(String names, String bare) {
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
        && (words.stream().anyMatch(word -> isIn(names, word))
            || (words.size() == 1 && isIn(bare, words.get(0))));
  }

  private static boolean isIn(String words, String word) {
    return (" " + words + " ").contains(" " + word + " ");
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
