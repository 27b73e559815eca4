package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.flight.Ruling;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * What would help a card that is not GO, the smallest change first.
 *
 * @param helps each makes the answer better by itself
 * @param remark one sentence where that is not all: why nothing helps, or that no change makes it
 *     GO
 */
public record Advice(List<Help> helps, Optional<String> remark) {
  /**
   * One change and what comes of it.
   *
   * @param change in words, as one would say it: {@code with the 15in chute}
   * @param limit the largest wind then
   * @param binds what makes that limit, in words
   * @param apogee of the free flight then
   * @param delayError ejection minus apogee then: negative is early; absent without a charge
   */
  public record Help(
      String change,
      Ruling.Verdict verdict,
      Optional<Speed> limit,
      String binds,
      Optional<Length> apogee,
      Optional<TimeSpan> delayError) {}

  /** Keeps its own list. */
  public Advice {
    helps = List.copyOf(helps);
  }
}
