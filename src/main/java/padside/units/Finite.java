package padside.units;

/** The one thing every quantity asks of its number. */
final class Finite {
  private Finite() {}

  static void require(double value, String unit) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number of " + unit + ": " + value);
    }
  }
}
