package padside.units;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/** One row of a unit table: how it is shown, how else it is typed, and the conversion both ways. */
record Unit<T>(
    String symbol, List<String> spellings, DoubleFunction<T> of, ToDoubleFunction<T> in) {
  Unit {
    spellings = List.copyOf(spellings);
  }

  /** The spellings are lower case without blanks. */
  static <T> Unit<T> of(
      String symbol, DoubleFunction<T> of, ToDoubleFunction<T> in, String... spellings) {
    return new Unit<>(symbol, List.of(spellings), of, in);
  }
}
