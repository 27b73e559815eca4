package padside.units;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * A kind of quantity with every unit it may be typed in.
 *
 * @param name as objections call it
 * @param chains units that may follow each other in one text, largest first: {@code lb oz}
 * @param belowZero why a value below zero in SI cannot be, empty where it can
 */
record Dimension<T>(
    String name,
    ToDoubleFunction<T> inSi,
    DoubleFunction<T> ofSi,
    List<Unit<T>> units,
    List<List<String>> chains,
    Optional<String> belowZero) {

  static final Dimension<Mass> MASS =
      new Dimension<>(
          "mass",
          Mass::kilograms,
          Mass::new,
          List.of(
              Unit.of("g", Mass::ofGrams, Mass::inGrams, "g", "gram", "grams"),
              Unit.of("kg", Mass::new, Mass::kilograms, "kg", "kilogram", "kilograms"),
              Unit.of("oz", Mass::ofOunces, Mass::inOunces, "oz", "ounce", "ounces"),
              Unit.of("lb", Mass::ofPounds, Mass::inPounds, "lb", "lbs", "pound", "pounds")),
          List.of(List.of("lb", "oz"), List.of("kg", "g")),
          Optional.of("a mass cannot be negative"));

  static final Dimension<Length> LENGTH =
      new Dimension<>(
          "length",
          Length::metres,
          Length::new,
          List.of(
              Unit.of("in", Length::ofInches, Length::inInches, "in", "\"", "''", "inch", "inches"),
              Unit.of("ft", Length::ofFeet, Length::inFeet, "ft", "'", "foot", "feet"),
              Unit.of("yd", Length::ofYards, Length::inYards, "yd", "yds", "yard", "yards"),
              Unit.of("paces", Length::ofPaces, Length::inPaces, "pace", "paces", "p"),
              Unit.of("mi", Length::ofMiles, Length::inMiles, "mi", "mile", "miles"),
              Unit.of("mm", Length::ofMillimetres, Length::inMillimetres, "mm"),
              Unit.of("cm", Length::ofCentimetres, Length::inCentimetres, "cm"),
              Unit.of("m", Length::new, Length::metres, "m", "metre", "metres", "meter", "meters"),
              Unit.of("km", Length::ofKilometres, Length::inKilometres, "km")),
          List.of(List.of("ft", "in"), List.of("m", "cm", "mm")),
          Optional.of("a length cannot be negative"));

  /** A length that may lie below its zero: a field in a polder. */
  static final Dimension<Length> HEIGHT =
      new Dimension<>(
          LENGTH.name, LENGTH.inSi, LENGTH.ofSi, LENGTH.units, LENGTH.chains, Optional.empty());

  static final Dimension<Speed> SPEED =
      new Dimension<>(
          "speed",
          Speed::metresPerSecond,
          Speed::new,
          List.of(
              Unit.of("mph", Speed::ofMph, Speed::inMph, "mph", "mi/h"),
              Unit.of("kt", Speed::ofKnots, Speed::inKnots, "kt", "kts", "kn", "knot", "knots"),
              Unit.of(
                  "km/h",
                  Speed::ofKilometresPerHour,
                  Speed::inKilometresPerHour,
                  "km/h",
                  "kmh",
                  "kph"),
              Unit.of("m/s", Speed::new, Speed::metresPerSecond, "m/s", "mps"),
              Unit.of("ft/s", Speed::ofFeetPerSecond, Speed::inFeetPerSecond, "ft/s", "fps")),
          List.of(),
          Optional.of("a speed cannot be negative"));

  static final Dimension<Temperature> TEMPERATURE =
      new Dimension<>(
          "temperature",
          Temperature::kelvins,
          Temperature::new,
          List.of(
              Unit.of(
                  "°F",
                  Temperature::ofFahrenheit,
                  Temperature::inFahrenheit,
                  "f",
                  "°f",
                  "degf",
                  "fahrenheit"),
              Unit.of(
                  "°C",
                  Temperature::ofCelsius,
                  Temperature::inCelsius,
                  "c",
                  "°c",
                  "degc",
                  "celsius"),
              Unit.of("K", Temperature::new, Temperature::kelvins, "k", "kelvin")),
          List.of(),
          Optional.of("nothing is colder than -459.67F, -273.15C or 0K"));

  static final Dimension<Pressure> PRESSURE =
      new Dimension<>(
          "pressure",
          Pressure::pascals,
          Pressure::new,
          List.of(
              Unit.of(
                  "hPa",
                  Pressure::ofHectopascals,
                  Pressure::inHectopascals,
                  "hpa",
                  "mbar",
                  "mb",
                  "millibar"),
              Unit.of(
                  "inHg", Pressure::ofInchesOfMercury, Pressure::inInchesOfMercury, "inhg", "\"hg"),
              Unit.of("kPa", Pressure::ofKilopascals, Pressure::inKilopascals, "kpa"),
              Unit.of("Pa", Pressure::new, Pressure::pascals, "pa", "pascal", "pascals")),
          List.of(),
          Optional.of("a pressure cannot be negative"));

  static final Dimension<Angle> ANGLE =
      new Dimension<>(
          "angle",
          Angle::radians,
          Angle::new,
          List.of(
              Unit.of("°", Angle::ofDegrees, Angle::inDegrees, "°", "deg", "degree", "degrees")),
          List.of(),
          Optional.empty());

  static final Dimension<TimeSpan> TIME =
      new Dimension<>(
          "time",
          TimeSpan::seconds,
          TimeSpan::new,
          List.of(
              Unit.of(
                  "s", TimeSpan::new, TimeSpan::seconds, "s", "sec", "secs", "second", "seconds"),
              Unit.of(
                  "ms",
                  TimeSpan::ofMilliseconds,
                  TimeSpan::inMilliseconds,
                  "ms",
                  "msec",
                  "millis",
                  "millisecond",
                  "milliseconds"),
              Unit.of(
                  "min",
                  TimeSpan::ofMinutes,
                  TimeSpan::inMinutes,
                  "min",
                  "m",
                  "mins",
                  "minute",
                  "minutes"),
              Unit.of(
                  "h", TimeSpan::ofHours, TimeSpan::inHours, "h", "hr", "hrs", "hour", "hours")),
          List.of(List.of("h", "min", "s")),
          Optional.of("a time cannot be negative"));

  static final Dimension<Impulse> IMPULSE =
      new Dimension<>(
          "impulse",
          Impulse::newtonSeconds,
          Impulse::new,
          List.of(
              Unit.of("N·s", Impulse::new, Impulse::newtonSeconds, "n·s", "ns", "n*s", "n-s"),
              Unit.of(
                  "lbf·s",
                  Impulse::ofPoundForceSeconds,
                  Impulse::inPoundForceSeconds,
                  "lbf·s",
                  "lbfs",
                  "lbf*s",
                  "lbf-s")),
          List.of(),
          Optional.of("an impulse cannot be negative"));

  static final Dimension<Force> FORCE =
      new Dimension<>(
          "force",
          Force::newtons,
          Force::new,
          List.of(
              Unit.of("N", Force::new, Force::newtons, "n", "newton", "newtons"),
              Unit.of("lbf", Force::ofPoundsForce, Force::inPoundsForce, "lbf")),
          List.of(),
          Optional.of("a force cannot be negative"));

  /** A drag coefficient or a ratio: its one unit is none at all. */
  static final Dimension<Double> NUMBER =
      new Dimension<>(
          "number",
          Double::doubleValue,
          Double::valueOf,
          List.of(Unit.of("", Double::valueOf, Double::doubleValue)),
          List.of(),
          Optional.of("this number cannot be negative"));

  /** The row of a symbol that the table has. */
  Unit<T> unit(String symbol) {
    return units.stream().filter(unit -> unit.symbol().equals(symbol)).findFirst().orElseThrow();
  }

  /** The row that a unit typed in lower case without blanks means. */
  Optional<Unit<T>> find(String spelling) {
    return units.stream().filter(unit -> unit.spellings().contains(spelling)).findFirst();
  }

  /** Whether {@code next} may follow {@code first} in one text, as ounces follow pounds. */
  boolean mayFollow(Unit<T> first, Unit<T> next) {
    return chains.stream()
        .filter(chain -> chain.contains(first.symbol()))
        .anyMatch(chain -> chain.indexOf(first.symbol()) < chain.indexOf(next.symbol()));
  }

  /** Every unit by its symbol, for objections. */
  String unitList() {
    return units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
  }
}
