package padside.units;

/** A mass in kilograms. */
public record Mass(double kilograms) {
  /** Refuses what is not a finite number. */
  public Mass {
    Finite.require(kilograms, "kilograms");
  }

  /** Exact: the gram is 1/1000 kg (SI brochure). */
  public static Mass ofGrams(double grams) {
    return new Mass(grams / 1000.0);
  }

  /** Exact: the gram is 1/1000 kg (SI brochure). */
  public double inGrams() {
    return kilograms * 1000.0;
  }

  /** Exact: international yard and pound agreement 1959. */
  public static Mass ofPounds(double pounds) {
    return new Mass(pounds * 0.45359237);
  }

  /** Exact: international yard and pound agreement 1959. */
  public double inPounds() {
    return kilograms / 0.45359237;
  }

  /** Exact: 1/16 of the avoirdupois pound of 0.45359237 kg. */
  public static Mass ofOunces(double ounces) {
    return new Mass(ounces * 0.028349523125);
  }

  /** Exact: 1/16 of the avoirdupois pound of 0.45359237 kg. */
  public double inOunces() {
    return kilograms / 0.028349523125;
  }
}
