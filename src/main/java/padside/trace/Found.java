package padside.trace;

import java.util.Optional;

/**
 * Something looked for in a trace: its value and how far it may be off, one standard deviation; or
 * why it is not to be found.
 */
public record Found<T>(Optional<T> value, Optional<T> within, String why) {
  public static <T> Found<T> of(T value, T within) {
    return new Found<>(Optional.of(value), Optional.of(within), "");
  }

  public static <T> Found<T> absent(String why) {
    return new Found<>(Optional.empty(), Optional.empty(), why);
  }
}
