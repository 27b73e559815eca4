package padside.form;

import java.util.Optional;
import padside.fact.Facts;

/** Doubts a value that could be read: a sentence when it is unlikely, nothing when it is fine. */
@FunctionalInterface
public interface Rule<T> {
  /** The sentence that warns, if any. */
  Optional<String> doubt(T value);

  /**
   * The same where other fields matter.
   *
   * @param form the facts of all fields as they stand
   */
  default Optional<String> doubt(T value, Facts form) {
    return doubt(value);
  }

  /** Doubts nothing. */
  static <T> Rule<T> none() {
    return value -> Optional.empty();
  }
}
