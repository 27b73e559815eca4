package padside.safety;

/** Comparisons with a rule's bound: what equals it to the rounding of a conversion keeps it. */
final class Bounds {
  private static final double ROUNDING = 1e-9;

  private Bounds() {}

  static boolean over(double value, double bound) {
    return value > bound + ROUNDING * Math.abs(bound);
  }

  static boolean under(double value, double bound) {
    return value < bound - ROUNDING * Math.abs(bound);
  }
}
