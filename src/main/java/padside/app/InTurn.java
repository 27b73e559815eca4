package padside.app;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.RejectedExecutionException;
import padside.fact.Fault;

/** Has something done on the log's thread once what was handed over before is done. */
record InTurn(OwnThread thread) {
  /** What is to be done there. */
  interface Doing<T> {
    T done() throws Fault;
  }

  /** Waits for it; not for the thread of the screens. */
  <T> T ask(Doing<T> doing) throws Fault {
    CompletableFuture<T> answer = new CompletableFuture<>();
    try {
      thread.execute(() -> answer(doing, answer));
      return answer.get();
    } catch (RejectedExecutionException e) {
      throw new Fault("log-closed", "The log is being closed.", "Start Padside again.");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Fault fault) {
        throw fault;
      }
      throw new IllegalStateException("asking the log failed", e.getCause());
    } catch (InterruptedException e) {
      throw new IllegalStateException("nothing interrupts the threads that ask the log", e);
    }
  }

  private static <T> void answer(Doing<T> doing, CompletableFuture<T> answer) {
    try {
      answer.complete(doing.done());
    } catch (Fault | RuntimeException | Error e) {
      answer.completeExceptionally(e);
    }
  }
}
