package padside.app;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import padside.preflight.Preflight;
import padside.preflight.Settings;
import padside.screen.Effect;
import padside.screen.Event;

/** The thread that checks cards. Of cards that wait only the newest is looked at. */
final class Checker {
  private final Preflight preflight;
  private final Inbox inbox;
  private final AtomicReference<Effect.Check> newest = new AtomicReference<>();
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread named = new Thread(work, "check");
            named.setDaemon(true);
            return named;
          });

  Checker(Settings settings, Inbox inbox) {
    this.preflight = new Preflight(settings);
    this.inbox = inbox;
  }

  void check(Effect.Check check) {
    if (newest.getAndSet(check) == null) {
      thread.execute(this::answerNewest);
    }
  }

  private void answerNewest() {
    Effect.Check check = newest.getAndSet(null);
    if (check != null) {
      inbox.answer(new Event.Checked(check.ticket(), preflight.answer(check.card())));
    }
  }
}
