package padside.app;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Threads that do one kind of work in order and never keep the program from ending. */
final class OwnThread {
  private OwnThread() {}

  /** One thread of that name, started with its first work. */
  static ExecutorService named(String name) {
    return Executors.newSingleThreadExecutor(
        work -> {
          Thread thread = new Thread(work, name);
          thread.setDaemon(true);
          return thread;
        });
  }
}
