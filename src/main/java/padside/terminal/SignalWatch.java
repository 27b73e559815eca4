package padside.terminal;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import padside.screen.Size;

/**
 * Hears the two signals that concern the terminal: WINCH, its size has changed, and CONT, the
 * program was stopped and goes on. What is asked of the terminal then is asked on a thread of its
 * own, however fast a window is dragged.
 */
final class SignalWatch {
  private static final long FIRST_LOOK_MS = 500;

  private final BlockingQueue<Heard> heard = new LinkedBlockingQueue<>();
  private final Consumer<Size> changed;
  private final Runnable broughtBack;

  private enum Heard {
    SIZE,
    BROUGHT_BACK
  }

  private SignalWatch(Consumer<Size> changed, Runnable broughtBack) {
    this.changed = changed;
    this.broughtBack = broughtBack;
  }

  /**
   * Starts watching, not at once: to be called by a signal takes the JVM as long as a good part of
   * a first screen. The size is read once unasked, should it have changed since the launch.
   */
  static void start(Consumer<Size> changed, Runnable broughtBack) {
    SignalWatch watch = new SignalWatch(changed, broughtBack);
    Thread thread = new Thread(watch::run, "padside terminal signals");
    thread.setDaemon(true);
    thread.start();
  }

  private void run() {
    try {
      TimeUnit.MILLISECONDS.sleep(FIRST_LOOK_MS);
      listen("WINCH", Heard.SIZE);
      listen("CONT", Heard.BROUGHT_BACK);
      answer(Heard.SIZE);
      while (true) {
        answer(heard.take());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** However often the same was heard meanwhile, it is answered once. */
  private void answer(Heard one) throws InterruptedException {
    heard.removeIf(one::equals);
    if (one == Heard.SIZE) {
      LineModes.size().ifPresent(changed);
    } else {
      LineModes.takeAgain().ifPresent(changed);
      broughtBack.run();
    }
  }

  /**
   * Signals have no public interface in Java; this one is in every JDK for Unix, reached by name.
   * Without it sizes stay as they were at the start, and Control-L paints anew.
   */
  private void listen(String name, Heard meaning) {
    try {
      Class<?> signal = Class.forName("sun.misc.Signal");
      Class<?> handler = Class.forName("sun.misc.SignalHandler");
      InvocationHandler onSignal =
          (proxy, method, arguments) -> {
            heard.add(meaning);
            return null;
          };
      signal
          .getMethod("handle", signal, handler)
          .invoke(
              null,
              signal.getConstructor(String.class).newInstance(name),
              Proxy.newProxyInstance(
                  SignalWatch.class.getClassLoader(), new Class<?>[] {handler}, onSignal));
    } catch (ReflectiveOperationException | IllegalArgumentException e) {
      heard.removeIf(meaning::equals);
    }
  }
}
