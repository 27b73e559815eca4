package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.flight.Ruling;
import padside.preflight.Answer;
import padside.preflight.Card;

/**
 * The check that follows a card while it is typed. Only the answer to the newest question is
 * current; an older one stays to be looked at until the new one comes, told as out of date.
 *
 * @param screen number of the screen that asks
 * @param asked the card put to the check last
 * @param serial counts the questions
 * @param answered serial of the question that {@code answer} belongs to
 */
record LiveCheck(
    long screen, Optional<Card> asked, long serial, Optional<Answer> answer, long answered) {
  /** A check and the effects it wants. */
  record Asked(LiveCheck check, List<Effect> effects) {}

  static LiveCheck of(long screen) {
    return new LiveCheck(screen, Optional.empty(), 0, Optional.empty(), 0);
  }

  /** Puts a card to the check unless it is the one asked about already. */
  Asked ask(Card card) {
    if (asked.equals(Optional.of(card))) {
      return new Asked(this, List.of());
    }
    LiveCheck next = new LiveCheck(screen, Optional.of(card), serial + 1, answer, answered);
    return new Asked(next, List.of(new Effect.Check(new Ticket(screen, next.serial), card)));
  }

  /**
   * Takes the answer to a question of its own; an older one than it has is left out, and the same
   * one again unless it adds what would help.
   */
  LiveCheck on(Event event) {
    return event instanceof Event.Checked checked && isNews(checked)
        ? new LiveCheck(
            screen, asked, serial, Optional.of(checked.answer()), checked.ticket().serial())
        : this;
  }

  private boolean isNews(Event.Checked checked) {
    Ticket ticket = checked.ticket();
    boolean adds =
        checked.answer().advice().isPresent() && answer.flatMap(Answer::advice).isEmpty();
    return ticket.screen() == screen
        && (ticket.serial() > answered || (ticket.serial() == answered && adds));
  }

  /** The answer, if it is the one to what was asked last. */
  Optional<Answer> current() {
    return answer.filter(any -> answered == serial);
  }

  /** Whether what would help is still being looked for. */
  boolean looksForHelp() {
    return current()
        .filter(given -> given.advice().isEmpty())
        .map(given -> given.ruling().verdict())
        .filter(word -> word == Ruling.Verdict.MARGINAL || word == Ruling.Verdict.NO_GO)
        .isPresent();
  }
}
