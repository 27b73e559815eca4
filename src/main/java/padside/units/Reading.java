package padside.units;

import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading a typed text: a value, or an objection in one sentence with an example of
 * right input. Exactly one of the two is present.
 */
public record Reading<T>(Optional<T> value, Optional<String> objection) {
  /** Refuses a reading that is both or neither. */
  public Reading {
    if (value.isPresent() == objection.isPresent()) {
      throw new IllegalArgumentException("a reading is a value or an objection");
    }
  }

  public static <T> Reading<T> of(T value) {
    return new Reading<>(Optional.of(value), Optional.empty());
  }

  public static <T> Reading<T> refused(String objection) {
    return new Reading<>(Optional.empty(), Optional.of(objection));
  }

  /** Another value read from the same text; an objection stays as it is. */
  public <U> Reading<U> map(Function<T, U> change) {
    return new Reading<>(value.map(change), objection);
  }

  /** A typed text in quotes as an objection may repeat it: short, nothing a terminal obeys. */
  public static String echo(String typed) {
    return Typed.echo(typed);
  }
}
