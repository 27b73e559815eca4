package padside.terminal;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;

/**
 * The terminal's bytes, patient where an escape sequence is unfinished. A reader that asks whether
 * more is there waits a moment before it is told no, so that a sequence torn in two on its way
 * stays one key, and Escape alone is still told quickly.
 */
final class LingeringInput extends FilterInputStream {
  /** How long Escape alone waits for more, in milliseconds: no finger is that fast. */
  static final int AFTER_ESCAPE_MS = 25;

  /** How long the inside of a sequence waits: nobody types those by hand. */
  static final int IN_SEQUENCE_MS = 250;

  private SequenceState state = SequenceState.GROUND;

  LingeringInput(InputStream terminal) {
    super(terminal);
  }

  @Override
  public int read() throws IOException {
    int read = in.read();
    state = state.after(read);
    return read;
  }

  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    int count = in.read(bytes, from, length);
    for (int i = 0; i < count; i++) {
      state = state.after(bytes[from + i] & 0xff);
    }
    return count;
  }

  @Override
  public int available() throws IOException {
    int patience =
        switch (state) {
          case GROUND -> 0;
          case ESCAPE -> AFTER_ESCAPE_MS;
          default -> IN_SEQUENCE_MS;
        };
    int there = in.available();
    for (int waited = 0; there == 0 && waited < patience; waited++) {
      sleepOneMillisecond();
      there = in.available();
    }
    if (there == 0) {
      state = SequenceState.GROUND;
    }
    return there;
  }

  private static void sleepOneMillisecond() throws InterruptedIOException {
    try {
      Thread.sleep(1);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while a key was read");
    }
  }
}
