package padside.units;

/**
 * The notations of a launch day. A bare number means the unit shown: US customary or metric as the
 * flier's setting says. Motors are spoken of in newtons and seconds everywhere, and so are shown.
 */
public final class Notations {
  private Notations() {}

  /** Ounces or grams: {@code 4.2oz}, {@code 1lb 4oz}, {@code 120g}. */
  public static UnitNotation<Mass> mass(UnitSystem system) {
    return switch (system) {
      case US ->
          UnitNotation.of(Dimension.MASS, "oz", new Digits(3, 2), "4.2oz", "1lb 4oz", "120g");
      case METRIC ->
          UnitNotation.of(Dimension.MASS, "g", new Digits(3, 1), "120g", "0.12kg", "4.2oz");
    };
  }

  /** Parachutes and streamers: inches or centimetres. */
  public static UnitNotation<Length> canopyLength(UnitSystem system) {
    return switch (system) {
      case US -> UnitNotation.of(Dimension.LENGTH, "in", new Digits(4, 3), "18in", "1.5ft", "45cm");
      case METRIC ->
          UnitNotation.of(Dimension.LENGTH, "cm", new Digits(3, 1), "45cm", "0.45m", "18in");
    };
  }

  /** Body tubes and motor mounts: inches or millimetres. */
  public static UnitNotation<Length> bodyLength(UnitSystem system) {
    return switch (system) {
      case US ->
          UnitNotation.of(Dimension.LENGTH, "in", new Digits(4, 3), "1.64in", "1 5/8in", "41.6mm");
      case METRIC ->
          UnitNotation.of(Dimension.LENGTH, "mm", new Digits(4, 1), "41.6mm", "4.2cm", "1.64in");
    };
  }

  /** Rods and rails: inches or centimetres. */
  public static UnitNotation<Length> rodLength(UnitSystem system) {
    return switch (system) {
      case US -> UnitNotation.of(Dimension.LENGTH, "in", new Digits(3, 1), "36in", "3ft", "90cm");
      case METRIC ->
          UnitNotation.of(Dimension.LENGTH, "cm", new Digits(3, 1), "90cm", "0.9m", "36in");
    };
  }

  /** Over the ground: feet or metres. */
  public static UnitNotation<Length> distance(UnitSystem system) {
    return switch (system) {
      case US ->
          UnitNotation.of(Dimension.LENGTH, "ft", new Digits(2, 1), "300ft", "100yd", "150m");
      case METRIC ->
          UnitNotation.of(Dimension.LENGTH, "m", new Digits(2, 1), "150m", "0.3km", "300ft");
    };
  }

  /** Above the pad or the sea, below it when negative: feet or metres. */
  public static UnitNotation<Length> altitude(UnitSystem system) {
    return switch (system) {
      case US -> UnitNotation.of(Dimension.HEIGHT, "ft", new Digits(1, 0), "850ft", "260m");
      case METRIC -> UnitNotation.of(Dimension.HEIGHT, "m", new Digits(1, 0), "260m", "850ft");
    };
  }

  /** Miles per hour or metres per second. */
  public static UnitNotation<Speed> windSpeed(UnitSystem system) {
    return switch (system) {
      case US -> UnitNotation.of(Dimension.SPEED, "mph", new Digits(3, 1), "6mph", "5kt", "2.5m/s");
      case METRIC ->
          UnitNotation.of(Dimension.SPEED, "m/s", new Digits(3, 1), "2.5m/s", "9km/h", "6mph");
    };
  }

  /** Under a parachute or streamer: feet or metres per second. */
  public static UnitNotation<Speed> descentRate(UnitSystem system) {
    return switch (system) {
      case US -> UnitNotation.of(Dimension.SPEED, "ft/s", new Digits(3, 1), "14ft/s", "4.3m/s");
      case METRIC -> UnitNotation.of(Dimension.SPEED, "m/s", new Digits(3, 1), "4.3m/s", "14ft/s");
    };
  }

  /** Leaving the rod, at burnout, at ejection: feet or metres per second, as the codes have it. */
  public static UnitNotation<Speed> flightSpeed(UnitSystem system) {
    return switch (system) {
      case US ->
          UnitNotation.of(Dimension.SPEED, "ft/s", new Digits(3, 1), "44ft/s", "30mph", "13m/s");
      case METRIC ->
          UnitNotation.of(Dimension.SPEED, "m/s", new Digits(3, 1), "13m/s", "47km/h", "44ft/s");
    };
  }

  /** Degrees Fahrenheit or Celsius. */
  public static UnitNotation<Temperature> temperature(UnitSystem system) {
    return switch (system) {
      case US -> UnitNotation.of(Dimension.TEMPERATURE, "°F", new Digits(1, 0), "41F", "5C");
      case METRIC -> UnitNotation.of(Dimension.TEMPERATURE, "°C", new Digits(3, 1), "5C", "41F");
    };
  }

  /** Inches of mercury or hectopascals. */
  public static UnitNotation<Pressure> pressure(UnitSystem system) {
    return switch (system) {
      case US ->
          UnitNotation.of(Dimension.PRESSURE, "inHg", new Digits(4, 2), "29.92inHg", "1013hPa");
      case METRIC ->
          UnitNotation.of(Dimension.PRESSURE, "hPa", new Digits(5, 1), "1013hPa", "29.92inHg");
    };
  }

  /** Degrees. */
  public static UnitNotation<Angle> angle() {
    return UnitNotation.of(Dimension.ANGLE, "°", new Digits(3, 1), "3deg", "3°");
  }

  /** Seconds. */
  public static UnitNotation<TimeSpan> timeSpan() {
    return UnitNotation.of(Dimension.TIME, "s", new Digits(3, 2), "5s", "1m30s", "2min");
  }

  /** Newton seconds. */
  public static UnitNotation<Impulse> impulse() {
    return UnitNotation.of(Dimension.IMPULSE, "N·s", new Digits(3, 2), "8.8Ns", "2lbf·s");
  }

  /** Newtons. */
  public static UnitNotation<Force> force() {
    return UnitNotation.of(Dimension.FORCE, "N", new Digits(3, 1), "14.1N", "3.2lbf");
  }

  /** A number without dimension, not negative: a drag coefficient, a count. */
  public static UnitNotation<Double> number() {
    return UnitNotation.of(Dimension.NUMBER, "", new Digits(3, 3), "0.75", "2");
  }

  /** Degrees clockwise from true north or one of sixteen compass points. */
  public static Notation<Bearing> bearing() {
    return new BearingNotation();
  }

  /** The wind shorthand; see {@link WindNotation}. */
  public static WindNotation wind(UnitSystem system) {
    return new WindNotation(windSpeed(system));
  }
}
