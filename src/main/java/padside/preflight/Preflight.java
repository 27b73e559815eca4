package padside.preflight;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * The check: one card put to flight model, field and rules. The same card and settings always get
 * the same answer.
 */
public final class Preflight {
  private final Settings settings;
  private final Check check;

  /** The check under these settings; with an unknown rule set every answer is UNKNOWN. */
  public Preflight(Settings settings) {
    this(settings, Scattering.shipped());
  }

  /** With other draws than the program's own. */
  Preflight(Settings settings, Scattering scattering) {
    this.settings = settings;
    this.check = new Check(settings, scattering);
  }

  /** Checks a card. */
  public Answer answer(Card card) {
    return answer(card, () -> false);
  }

  /**
   * Checks a card.
   *
   * @param abandoned asked again and again on the way
   * @throws CancellationException soon after {@code abandoned} answers true
   */
  public Answer answer(Card card, BooleanSupplier abandoned) {
    Check.Checked checked = check.whole(card, abandoned);
    return new Answer(
        checked.ruling(),
        Headline.of(checked.ruling(), card, settings.units()),
        check.outlook(checked),
        check.reminders(),
        Optional.empty());
  }

  /**
   * Looks for the smallest changes that would make a card GO, or better than it is.
   *
   * @param answer the check's to this card
   * @param abandoned asked again and again on the way
   * @throws CancellationException soon after {@code abandoned} answers true
   */
  public Advice advise(Card card, Answer answer, BooleanSupplier abandoned) {
    return new Adviser(check, settings.units(), abandoned).on(card, answer.ruling());
  }

  /** Checks a card and looks for what would help it, if anything has to. */
  public Answer advised(Card card) {
    Answer answer = answer(card);
    return answer.wantsAdvice() ? answer.with(advise(card, answer, () -> false)) : answer;
  }
}
