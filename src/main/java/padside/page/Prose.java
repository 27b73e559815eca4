package padside.page;

/**
 * A paragraph.
 *
 * @param weight whether it must not be overlooked
 */
public record Prose(String text, Weight weight) implements Block {
  /** How much a paragraph matters. */
  public enum Weight {
    PLAIN,
    NOTICE
  }

  public static Prose of(String text) {
    return new Prose(text, Weight.PLAIN);
  }

  /** A caution, set apart. */
  public static Prose notice(String text) {
    return new Prose(text, Weight.NOTICE);
  }
}
