package padside.page;

/** Round numbers for scales and axes: one, two or five times a power of ten. */
public final class RoundStep {
  private RoundStep() {}

  /** The largest round number that is not above. */
  public static double atMost(double value) {
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    double digits = value / power;
    return power * (digits >= 5 ? 5 : digits >= 2 ? 2 : 1);
  }

  /** The smallest round number that is not below. */
  public static double atLeast(double value) {
    double below = atMost(value);
    if (below >= value) {
      return below;
    }
    double digit = Math.round(below / Math.pow(10, Math.floor(Math.log10(below) + 1e-9)));
    return below * (digit == 2 ? 2.5 : 2);
  }
}
