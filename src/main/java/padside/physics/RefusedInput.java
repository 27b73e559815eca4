package padside.physics;

import java.util.function.Supplier;

/**
 * Input that describes no possible flight. The message is one sentence for the flier: what is
 * wrong, the value seen, what to do.
 */
public final class RefusedInput extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Refuses with a whole sentence. */
  public RefusedInput(String sentence) {
    super(sentence);
  }

  /** Refuses unless {@code holds}. */
  static void unless(boolean holds, String sentence) {
    unless(holds, () -> sentence);
  }

  /** The same with a sentence that is made only where it is said. */
  static void unless(boolean holds, Supplier<String> sentence) {
    if (!holds) {
      throw new RefusedInput(sentence.get());
    }
  }
}
