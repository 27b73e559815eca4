package padside.app;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;

/** An input read no faster than any wind meter sends, so that one without end costs little. */
final class PacedInput extends FilterInputStream {
  /** A serial line of 115,200 baud brings 11,520 characters a second. */
  private static final int MOST_A_SECOND = 16_384;

  private static final long SECOND_MILLIS = 1_000;

  private int taken;
  private long since = System.nanoTime();

  PacedInput(InputStream in) {
    super(in);
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    int count = read(one, 0, 1);
    return count < 0 ? count : one[0] & 0xff;
  }

  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    long gone = (System.nanoTime() - since) / 1_000_000;
    if (gone >= SECOND_MILLIS) {
      since = System.nanoTime();
      taken = 0;
    } else if (taken >= MOST_A_SECOND) {
      rest(SECOND_MILLIS - gone);
      since = System.nanoTime();
      taken = 0;
    }
    int count = super.read(into, from, most);
    taken += Math.max(0, count);
    return count;
  }

  /** Sleeps; told to stop it ends the input. */
  static void rest(long millis) throws InterruptedIOException {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("told to stop");
    }
  }
}
