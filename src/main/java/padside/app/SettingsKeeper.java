package padside.app;

import java.nio.file.Path;
import java.util.function.Consumer;
import padside.fact.Fault;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Ticket;

/** Reads and writes the settings file on a thread of its own. */
final class SettingsKeeper implements AutoCloseable {
  private static final long CLOSING_SECONDS = 5;

  private final Path file;
  private final Consumer<SettingsFile> changed;
  private final Inbox inbox;
  private final OwnThread thread;

  /**
   * Of a file that need not be there.
   *
   * @param changed is told the settings as they are after each change, before the screens are
   */
  SettingsKeeper(Path file, Consumer<SettingsFile> changed, Inbox inbox) {
    this.file = file;
    this.changed = changed;
    this.inbox = inbox;
    this.thread = OwnThread.named("settings", inbox::failed);
  }

  /** Starts what is to be done with settings; leaves alone what has nothing to do with them. */
  void does(Effect effect) {
    if (effect instanceof Effect.ReadSettings read) {
      thread.execute(() -> inbox.answer(read(read.ticket())));
    } else if (effect instanceof Effect.KeepSettings keep) {
      thread.execute(() -> inbox.answer(kept(keep)));
    }
  }

  private Event kept(Effect.KeepSettings keep) {
    try {
      SettingsFile.keep(file, keep.changed());
    } catch (Fault fault) {
      return new Event.NotRead(keep.ticket(), fault);
    }
    SettingsFile now = SettingsFile.read(file);
    changed.accept(now);
    return new Event.SettingsKept(keep.ticket(), now.settings(), now.ease());
  }

  private Event read(Ticket ticket) {
    SettingsFile now = SettingsFile.read(file);
    return new Event.SettingsRead(ticket, now.texts(), now.told());
  }

  /** Waits for what is being written. */
  @Override
  public void close() {
    try {
      thread.finish(CLOSING_SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
