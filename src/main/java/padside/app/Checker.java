package padside.app;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import padside.preflight.Advice;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.Preflight;
import padside.screen.Effect;
import padside.screen.Event;

/**
 * The thread that checks cards. Of cards that wait only the newest is looked at, and what is being
 * worked out for an older one is abandoned. The verdict is told first; where something might help
 * it is told once more with what would help, if no newer card has come meanwhile.
 */
final class Checker {
  /** Gives the verdict; ends early with a {@link CancellationException}. */
  interface Answering {
    Answer answer(Card card, BooleanSupplier abandoned);
  }

  /** Looks for what would help; ends early likewise. */
  interface Advising {
    Advice advise(Card card, Answer answer, BooleanSupplier abandoned);
  }

  /** What is asked on this thread. */
  record Check(Answering answering, Advising advising) {
    static Check of(Preflight preflight) {
      return new Check(preflight::answer, preflight::advise);
    }
  }

  private final Inbox inbox;
  private final AtomicReference<Effect.Check> newest = new AtomicReference<>();
  private final OwnThread thread;

  // Only the check's own thread touches these.
  private Supplier<Check> made;
  private Optional<Check> check = Optional.empty();

  /**
   * Starts nothing yet.
   *
   * @param made makes the check, once and on this thread, so that reading the rules holds up no
   *     screen
   */
  Checker(Supplier<Check> made, Inbox inbox) {
    this.made = made;
    this.inbox = inbox;
    this.thread = OwnThread.named("check", inbox::failed);
  }

  /** Makes the check in good time, so that the first card does not wait for it. */
  void prepare() {
    thread.execute(this::made);
  }

  /** Goes by another check, for the cards that are asked about from now on. */
  void use(Supplier<Check> other) {
    thread.execute(
        () -> {
          made = other;
          check = Optional.empty();
        });
  }

  void check(Effect.Check check) {
    if (newest.getAndSet(check) == null) {
      thread.execute(this::answerNewest);
    }
  }

  private Check made() {
    Check once = check.orElseGet(made);
    check = Optional.of(once);
    return once;
  }

  private void answerNewest() {
    Effect.Check asked = newest.getAndSet(null);
    try {
      answer(asked, () -> newest.get() != null);
    } catch (CancellationException newerWaits) {
      return; // it has its own turn
    }
  }

  private void answer(Effect.Check asked, BooleanSupplier abandoned) {
    Answer answer = made().answering().answer(asked.card(), abandoned);
    inbox.answer(new Event.Checked(asked.ticket(), answer));
    if (answer.wantsAdvice() && !abandoned.getAsBoolean()) {
      Advice advice = made().advising().advise(asked.card(), answer, abandoned);
      inbox.answer(new Event.Checked(asked.ticket(), answer.with(advice)));
    }
  }
}
