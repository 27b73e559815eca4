package padside.app;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * A thread that does one kind of work in order and never keeps the program from ending. Whatever
 * its work fails with is a mistake of the program's own: it is told, and the next work is done.
 */
final class OwnThread {
  private final ExecutorService thread;
  private final Consumer<Throwable> bug;

  private OwnThread(ExecutorService thread, Consumer<Throwable> bug) {
    this.thread = thread;
    this.bug = bug;
  }

  /**
   * One thread of that name, started with its first work.
   *
   * @param bug is told, on that thread, what a work failed with
   */
  static OwnThread named(String name, Consumer<Throwable> bug) {
    ExecutorService thread =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread own = new Thread(work, name);
              own.setDaemon(true);
              return own;
            });
    return new OwnThread(thread, bug);
  }

  void execute(Runnable work) {
    thread.execute(
        () -> {
          try {
            work.run();
          } catch (RuntimeException | Error failed) {
            bug.accept(failed);
          }
        });
  }

  /** Takes no more work and waits for what was handed over; false when that takes longer. */
  boolean finish(long seconds) throws InterruptedException {
    thread.shutdown();
    return thread.awaitTermination(seconds, TimeUnit.SECONDS);
  }
}
