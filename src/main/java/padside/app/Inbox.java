package padside.app;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import padside.screen.Event;
import padside.terminal.Input;
import padside.units.TimeSpan;

/** Everything that waits for the screens' thread, in the order it came. */
final class Inbox {
  private final BlockingQueue<Item> waiting = new LinkedBlockingQueue<>();
  private final CompletableFuture<LogKeeper.Opened> opened = new CompletableFuture<>();

  /** One thing that came. */
  sealed interface Item permits FromTerminal, Answered, Tick, Settled, Failed, Gone {}

  /** A key, a resize or a hang-up. */
  record FromTerminal(Input input) implements Item {}

  /** An effect was done. */
  record Answered(Event event) implements Item {}

  /** Nothing came for as long as was to be waited. */
  record Tick() implements Item {}

  /** Everything is kept; the terminal may be put aside. */
  record Settled() implements Item {}

  /** A thread came upon a mistake of the program's own. */
  record Failed(Throwable bug) implements Item {}

  /** Everything is kept; the program may end. */
  record Gone() implements Item {}

  void input(Input input) {
    waiting.add(new FromTerminal(input));
  }

  void answer(Event event) {
    waiting.add(new Answered(event));
  }

  void settled() {
    waiting.add(new Settled());
  }

  void gone() {
    waiting.add(new Gone());
  }

  void failed(Throwable bug) {
    waiting.add(new Failed(bug));
    opened.completeExceptionally(bug);
  }

  void opened(LogKeeper.Opened result) {
    opened.complete(result);
  }

  /** Waits for the log; keys pressed meanwhile stay in the queue. */
  LogKeeper.Opened awaitOpened() {
    return opened.join();
  }

  /** Waits for something, so long at most, and takes all that has come. */
  List<Item> take(TimeSpan longest) {
    try {
      Item first = waiting.poll(Math.round(longest.seconds() * 1000), TimeUnit.MILLISECONDS);
      List<Item> items = new ArrayList<>();
      items.add(first == null ? new Tick() : first);
      waiting.drainTo(items);
      return items;
    } catch (InterruptedException e) {
      throw new IllegalStateException("nothing interrupts the screens' thread", e);
    }
  }
}
