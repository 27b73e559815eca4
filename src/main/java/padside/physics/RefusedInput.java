package padside.physics;

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
    if (!holds) {
      throw new RefusedInput(sentence);
    }
  }
}
