package padside.units;

/** An impulse in newton seconds. */
public record Impulse(double newtonSeconds) {
  /** Refuses what is not a finite number. */
  public Impulse {
    Finite.require(newtonSeconds, "newton seconds");
  }

  /** Exact: pound-force of 4.4482216152605 N for a second. */
  public static Impulse ofPoundForceSeconds(double poundForceSeconds) {
    return new Impulse(poundForceSeconds * 4.4482216152605);
  }

  /** Exact: pound-force of 4.4482216152605 N for a second. */
  public double inPoundForceSeconds() {
    return newtonSeconds / 4.4482216152605;
  }
}
