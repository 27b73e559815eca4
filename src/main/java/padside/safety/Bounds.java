package padside.safety;

import java.util.function.DoubleFunction;

/** Comparisons with a rule's bound: what equals it to the rounding of a conversion keeps it. */
final class Bounds {
  private static final double ROUNDING = 1e-9;

  private Bounds() {}

  static boolean over(double value, double bound) {
    return value > bound + ROUNDING * Math.abs(bound);
  }

  /** A value in words; it never reads like the bound that it misses. */
  static String beside(double value, double bound, DoubleFunction<String> show) {
    String shown = show.apply(bound);
    boolean misses = over(value, bound) || under(value, bound);
    return misses && show.apply(value).equals(shown)
        ? (value > bound ? "just over " : "just under ") + shown
        : show.apply(value);
  }

  static boolean under(double value, double bound) {
    return value < bound - ROUNDING * Math.abs(bound);
  }
}
