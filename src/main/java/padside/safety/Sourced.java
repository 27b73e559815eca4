package padside.safety;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A rule's value with where it comes from.
 *
 * @param source short name of the source, empty for common practice without one
 * @param note what the reader should know beside it, may be empty
 */
public record Sourced<T>(T value, String source, Status status, String note) {
  /** How sure a value is. */
  public enum Status {
    /** The source's text, or a faithful copy of it, was read. */
    SEEN("seen"),
    /** Recalled, not looked up: unconfirmed. */
    FROM_MEMORY("from memory"),
    /** A rule of thumb that no code contains, or a choice of our own. */
    COMMON_PRACTICE("common practice"),
    /** The flier's own figure. */
    OWN("own");

    private final String words;

    Status(String words) {
      this.words = words;
    }

    /** As rule files say it. */
    public String words() {
      return words;
    }

    static Optional<Status> find(String words) {
      return List.of(values()).stream().filter(value -> value.words.equals(words)).findFirst();
    }
  }

  /** Source and status as they are shown: {@code US high-power code, from memory: unconfirmed}. */
  public String cited() {
    String origin =
        switch (status) {
          case SEEN -> source + ", seen";
          case OWN -> source;
          case FROM_MEMORY -> source + ", from memory: unconfirmed";
          case COMMON_PRACTICE ->
              source.isEmpty() ? "common practice, no source" : source + ", common practice";
        };
    return note.isEmpty() ? origin : origin + "; " + note;
  }

  /** The same with one more thing to know beside it. */
  Sourced<T> noted(String more) {
    return new Sourced<>(value, source, status, note.isEmpty() ? more : note + "; " + more);
  }

  /** Another value from the same source. */
  <U> Sourced<U> map(Function<T, U> change) {
    return new Sourced<>(change.apply(value), source, status, note);
  }
}
