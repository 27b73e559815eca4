package padside.app;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicReference;
import padside.preflight.Preflight;
import padside.preflight.Settings;
import padside.screen.Effect;
import padside.screen.Event;

/** The thread that checks cards. Of cards that wait only the newest is looked at. */
final class Checker {
  private final Settings settings;
  private final Inbox inbox;
  private final AtomicReference<Effect.Check> newest = new AtomicReference<>();
  private final ExecutorService thread = OwnThread.named("check");

  // Only the check's own thread touches this.
  private Optional<Preflight> preflight = Optional.empty();

  Checker(Settings settings, Inbox inbox) {
    this.settings = settings;
    this.inbox = inbox;
  }

  /** Reads the rules in good time, so that the first card does not wait for them. */
  void prepare() {
    thread.execute(this::preflight);
  }

  void check(Effect.Check check) {
    if (newest.getAndSet(check) == null) {
      thread.execute(this::answerNewest);
    }
  }

  /** Made on this thread, so that reading the rules holds up no screen. */
  private Preflight preflight() {
    Preflight made = preflight.orElseGet(() -> new Preflight(settings));
    preflight = Optional.of(made);
    return made;
  }

  private void answerNewest() {
    Effect.Check check = newest.getAndSet(null);
    if (check != null) {
      inbox.answer(new Event.Checked(check.ticket(), preflight().answer(check.card())));
    }
  }
}
