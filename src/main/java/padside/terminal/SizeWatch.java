package padside.terminal;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import padside.screen.Size;

/**
 * Learns of the terminal's size changes: the system's WINCH signal says that there was one, then
 * {@code stty size} says which. Both happen on a thread of their own, however fast a window is
 * dragged.
 */
final class SizeWatch {
  private static final long FIRST_LOOK_MS = 500;
  private static final long PATIENCE_S = 2;

  private final Semaphore changes = new Semaphore(0);
  private final Consumer<Size> changed;

  private SizeWatch(Consumer<Size> changed) {
    this.changed = changed;
  }

  /** Starts watching. The size is read once unasked, should it have changed since the launch. */
  static void start(Consumer<Size> changed) {
    SizeWatch watch = new SizeWatch(changed);
    watch.listenForSignal();
    Thread thread = new Thread(watch::run, "padside terminal size");
    thread.setDaemon(true);
    thread.start();
  }

  private void run() {
    try {
      boolean signalled = changes.tryAcquire(FIRST_LOOK_MS, TimeUnit.MILLISECONDS);
      while (true) {
        if (signalled) {
          changes.drainPermits();
        }
        ask().ifPresent(changed);
        changes.acquire();
        signalled = true;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Signals have no public interface in Java; this one is in every JDK for Unix, reached by name.
   * Without it sizes stay as they were at the start.
   */
  private void listenForSignal() {
    try {
      Class<?> signal = Class.forName("sun.misc.Signal");
      Class<?> handler = Class.forName("sun.misc.SignalHandler");
      InvocationHandler onSignal =
          (proxy, method, arguments) -> {
            changes.release();
            return null;
          };
      signal
          .getMethod("handle", signal, handler)
          .invoke(
              null,
              signal.getConstructor(String.class).newInstance("WINCH"),
              Proxy.newProxyInstance(
                  SizeWatch.class.getClassLoader(), new Class<?>[] {handler}, onSignal));
    } catch (ReflectiveOperationException | IllegalArgumentException e) {
      changes.drainPermits();
    }
  }

  private static Optional<Size> ask() throws InterruptedException {
    try {
      Process stty =
          new ProcessBuilder("stty", "size")
              .redirectInput(new File("/dev/tty"))
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!stty.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
        stty.destroyForcibly();
        return Optional.empty();
      }
      byte[] answer = stty.getInputStream().readAllBytes();
      return parse(new String(answer, StandardCharsets.US_ASCII));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Reads {@code rows columns}; zeroes mean that the terminal does not know. */
  static Optional<Size> parse(String answer) {
    String[] parts = answer.strip().split(" ", -1);
    boolean sized =
        parts.length == 2
            && parts[0].matches("[1-9][0-9]{0,3}")
            && parts[1].matches("[1-9][0-9]{0,3}");
    return sized
        ? Optional.of(new Size(Integer.parseInt(parts[1]), Integer.parseInt(parts[0])))
        : Optional.empty();
  }
}
