package padside.flight;

import java.util.List;
import java.util.Optional;
import padside.units.Speed;

/**
 * The answer to "may this card fly now": a word, the binding reason, every limit and every finding.
 * It advises; the flier decides.
 *
 * @param limit the largest wind of {@link #limits}, absent when none could be worked out
 * @param reason the one thing that decides, in words
 */
public record Ruling(
    Verdict verdict,
    Optional<Speed> limit,
    String reason,
    List<Limit> limits,
    List<Finding> findings) {

  /** The four answers, from best to worst. */
  public enum Verdict {
    GO("GO"),
    MARGINAL("MARGINAL"),
    UNKNOWN("UNKNOWN"),
    NO_GO("NO-GO");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    /** As it is said and stored. */
    public String word() {
      return word;
    }

    public static Optional<Verdict> find(String word) {
      return List.of(values()).stream().filter(value -> value.word.equals(word)).findFirst();
    }

    /** The worse of two answers. NO-GO beats UNKNOWN: what is known to fail stays failed. */
    public Verdict or(Verdict other) {
      return compareTo(other) >= 0 ? this : other;
    }
  }

  /**
   * One rule's largest permitted wind for this card, held against the larger of mean and gust.
   *
   * @param rule short name: code, own, rod, field
   * @param past the verdict when the wind is above it
   * @param words what binds, for the answer line, such as {@code field edge NE 280 ft}
   * @param source where the rule comes from and how sure that is
   */
  public record Limit(String rule, Speed wind, Verdict past, String words, String source) {}

  /**
   * One rule that is not about wind.
   *
   * @param rule short name, such as {@code thrust-to-weight}
   * @param sentence what was found, with the numbers
   * @param source where the rule comes from and how sure that is
   */
  public record Finding(String rule, Verdict verdict, String sentence, String source) {}

  /** Keeps own lists. */
  public Ruling {
    limits = List.copyOf(limits);
    findings = List.copyOf(findings);
  }
}
