package padside.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import padside.screen.Bookmark;
import padside.store.WholeFile;

/**
 * Keeps where the flier is, so that a start after an end nobody asked for goes on there. Written on
 * a thread of its own and only when the place changes, of several places the newest alone. A place
 * that cannot be written is of no account: what was typed is in the log.
 */
final class PlaceKeeper {
  static final String NAME = "place.json";

  private static final long CLOSING_SECONDS = 5;

  private final WholeFile file;
  private final OwnThread thread;
  private final AtomicReference<List<Bookmark>> newest = new AtomicReference<>(List.of());

  // Only the screens' thread touches these.
  private List<Bookmark> handedOver = List.of();
  private boolean left;

  // Only the own thread touches this.
  private List<Bookmark> written = List.of();

  /**
   * The keeper of a log's folder.
   *
   * @param bug is told a mistake of the program's own
   */
  PlaceKeeper(Path folder, Consumer<Throwable> bug) {
    this.file = new WholeFile(folder, NAME);
    this.thread = OwnThread.named("place", bug);
  }

  /** Where the flier was when the program ended last without being left; else nothing. */
  List<Bookmark> read() {
    return file.read().map(PlaceText::read).orElse(List.of());
  }

  /** The flier is here now. */
  void keep(List<Bookmark> marks) {
    if (left || marks.equals(handedOver)) {
      return;
    }
    handedOver = marks;
    newest.set(marks);
    thread.execute(this::write);
  }

  /** The flier leaves: the next start begins as any other. */
  void forget() {
    left = true;
    thread.execute(
        () -> {
          try {
            file.remove();
          } catch (IOException e) {
            return; // then the next start goes on here
          }
        });
  }

  /** Waits for what is being written. */
  void close() {
    try {
      thread.finish(CLOSING_SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void write() {
    List<Bookmark> now = newest.get();
    if (now.equals(written)) {
      return;
    }
    written = now;
    try {
      file.write(PlaceText.of(now));
      if (newest.get().equals(now)) {
        file.force(); // not before a newer place, which would only wait for it
      }
    } catch (IOException e) {
      return; // the next change tries again
    }
  }
}
