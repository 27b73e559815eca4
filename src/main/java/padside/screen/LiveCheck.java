package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.preflight.Advice;
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
 * @param heard what would help, as told last; out of date while it is looked for anew
 */
record LiveCheck(
    long screen,
    Optional<Card> asked,
    long serial,
    Optional<Answer> answer,
    long answered,
    Optional<Advice> heard) {
  /** A check and the effects it wants. */
  record Asked(LiveCheck check, List<Effect> effects) {}

  static LiveCheck of(long screen) {
    return new LiveCheck(screen, Optional.empty(), 0, Optional.empty(), 0, Optional.empty());
  }

  /** A question and its answer, where nothing more is to come. */
  static LiveCheck answered(Card card, Answer answer) {
    return new LiveCheck(0, Optional.of(card), 1, Optional.of(answer), 1, answer.advice());
  }

  /** Puts a card to the check unless it is the one asked about already. */
  Asked ask(Card card) {
    if (asked.equals(Optional.of(card))) {
      return new Asked(this, List.of());
    }
    LiveCheck next = new LiveCheck(screen, Optional.of(card), serial + 1, answer, answered, heard);
    return new Asked(next, List.of(new Effect.Check(new Ticket(screen, next.serial), card)));
  }

  /**
   * Takes the answer to a question of its own; an older one than it has is left out, and the same
   * one again unless it adds what would help.
   */
  LiveCheck on(Event event) {
    return event instanceof Event.Checked checked && isNews(checked)
        ? with(checked.answer(), checked.ticket().serial())
        : this;
  }

  private LiveCheck with(Answer given, long to) {
    Optional<Advice> help = given.wantsAdvice() ? heard : given.advice();
    return new LiveCheck(screen, asked, serial, Optional.of(given), to, help);
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
}
