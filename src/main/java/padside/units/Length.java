package padside.units;

/** A length, height or distance in metres. */
public record Length(double metres) {
  /** Refuses what is not a finite number. */
  public Length {
    Finite.require(metres, "metres");
  }

  /** Exact: SI prefix. */
  public static Length ofMillimetres(double millimetres) {
    return new Length(millimetres / 1000.0);
  }

  /** Exact: SI prefix. */
  public double inMillimetres() {
    return metres * 1000.0;
  }

  /** Exact: SI prefix. */
  public static Length ofCentimetres(double centimetres) {
    return new Length(centimetres / 100.0);
  }

  /** Exact: SI prefix. */
  public double inCentimetres() {
    return metres * 100.0;
  }

  /** Exact: SI prefix. */
  public static Length ofKilometres(double kilometres) {
    return new Length(kilometres * 1000.0);
  }

  /** Exact: SI prefix. */
  public double inKilometres() {
    return metres / 1000.0;
  }

  /** Exact: international inch, 1959. */
  public static Length ofInches(double inches) {
    return new Length(inches * 0.0254);
  }

  /** Exact: international inch, 1959. */
  public double inInches() {
    return metres / 0.0254;
  }

  /** Exact: international foot, 1959. */
  public static Length ofFeet(double feet) {
    return new Length(feet * 0.3048);
  }

  /** Exact: international foot, 1959. */
  public double inFeet() {
    return metres / 0.3048;
  }

  /** Exact: international yard, 1959. */
  public static Length ofYards(double yards) {
    return new Length(yards * 0.9144);
  }

  /** Exact: international yard, 1959. */
  public double inYards() {
    return metres / 0.9144;
  }

  /** The pace of 30 inches, US Army drill step, FM 3-21.5, from memory. */
  public static Length ofPaces(double paces) {
    return ofInches(30 * paces);
  }

  /** The pace of 30 inches, US Army drill step, FM 3-21.5, from memory. */
  public double inPaces() {
    return inInches() / 30;
  }

  /** Exact: statute mile of 5280 international feet. */
  public static Length ofMiles(double miles) {
    return new Length(miles * 1609.344);
  }

  /** Exact: statute mile of 5280 international feet. */
  public double inMiles() {
    return metres / 1609.344;
  }
}
