package padside.units;

/** A thermodynamic temperature in kelvins. */
public record Temperature(double kelvins) {
  /** Refuses what is not a finite number. */
  public Temperature {
    Finite.require(kelvins, "kelvins");
  }

  /** Exact: 0 °C is 273.15 K (SI brochure). */
  public static Temperature ofCelsius(double celsius) {
    return new Temperature(celsius + 273.15);
  }

  /** Exact: 0 °C is 273.15 K (SI brochure). */
  public double inCelsius() {
    return kelvins - 273.15;
  }

  /** Exact: degree of 5/9 K, 32 °F at 273.15 K. */
  public static Temperature ofFahrenheit(double fahrenheit) {
    return new Temperature((fahrenheit + 459.67) * 5.0 / 9.0);
  }

  /** Exact: degree of 5/9 K, 32 °F at 273.15 K. */
  public double inFahrenheit() {
    return kelvins * 9.0 / 5.0 - 459.67;
  }
}
