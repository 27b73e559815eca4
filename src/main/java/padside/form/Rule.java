package padside.form;

import java.util.Optional;

/** Doubts a value that could be read: a sentence when it is unlikely, nothing when it is fine. */
@FunctionalInterface
public interface Rule<T> {
  /** The sentence that warns, if any. */
  Optional<String> doubt(T value);

  /** Doubts nothing. */
  static <T> Rule<T> none() {
    return value -> Optional.empty();
  }
}
