package padside.sync;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import padside.fact.Fault;

/**
 * Two streams that are given up when nothing moves in them for too long, and the bytes that moved.
 * A read of a pipe cannot be called off, so it happens on a thread the program does not wait for.
 */
final class Patience {
  private static final int BLOCK = 1 << 13;
  private static final long MOMENT_MILLIS = 200;

  private final InputStream in;
  private final OutputStream out;
  private final Duration idle;
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread made = new Thread(work, "sync");
            made.setDaemon(true);
            return made;
          });
  private Going going = () -> {};
  private long bytesIn;
  private long bytesOut;

  /** Asked every moment while nothing moves. */
  interface Going {
    void on() throws Fault;
  }

  /** Given up for a reason of this side. */
  static final class CalledOff extends IOException {
    private static final long serialVersionUID = 1L;

    private final Fault why;

    CalledOff(Fault why) {
      super(why);
      this.why = why;
    }

    Fault why() {
      return why;
    }
  }

  /** Nothing moved for too long. */
  static final class Silence extends IOException {
    private static final long serialVersionUID = 1L;

    Silence(Duration idle) {
      super("nothing came for " + idle.toSeconds() + " s");
    }
  }

  Patience(Talk.Streams streams) {
    this.in = streams.in();
    this.out = streams.out();
    this.idle = streams.patience();
  }

  /** Asks from now on whether to go on waiting. */
  void whileGoing(Going asked) {
    going = asked;
  }

  InputStream in() {
    return new InputStream() {
      @Override
      public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
      }

      @Override
      public int read(byte[] into, int from, int most) throws IOException {
        // Not into the caller's array: a read given up may still end some time.
        byte[] block = new byte[Math.min(most, BLOCK)];
        int count = within(() -> in.read(block));
        if (count > 0) {
          System.arraycopy(block, 0, into, from, count);
          bytesIn += count;
        }
        return count;
      }
    };
  }

  OutputStream out() {
    return new OutputStream() {
      @Override
      public void write(int value) throws IOException {
        write(new byte[] {(byte) value}, 0, 1);
      }

      @Override
      public void write(byte[] bytes, int from, int count) throws IOException {
        for (int at = 0; at < count; at += BLOCK) {
          int begin = from + at;
          int some = Math.min(BLOCK, count - at);
          within(() -> written(bytes, begin, some));
          bytesOut += some;
        }
      }
    };
  }

  private Void written(byte[] bytes, int from, int count) throws IOException {
    out.write(bytes, from, count);
    out.flush();
    return null;
  }

  private <T> T within(Callable<T> work) throws IOException {
    Future<T> working = thread.submit(work);
    try {
      for (long waited = 0; waited < idle.toMillis(); waited += MOMENT_MILLIS) {
        try {
          return working.get(MOMENT_MILLIS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
          goOn();
        }
      }
      throw new Silence(idle);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("called off");
    } catch (ExecutionException e) {
      throw e.getCause() instanceof IOException failed ? failed : new IOException(e.getCause());
    }
  }

  private void goOn() throws CalledOff {
    try {
      going.on();
    } catch (Fault fault) {
      throw new CalledOff(fault);
    }
  }

  long bytesIn() {
    return bytesIn;
  }

  long bytesOut() {
    return bytesOut;
  }

  void end() {
    thread.shutdownNow();
  }
}
