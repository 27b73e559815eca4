package padside.sync;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Reads lines one by one; of one longer than allowed only the beginning. */
final class LineInput {
  private final InputStream in;
  private final byte[] block = new byte[1 << 16];
  private final ByteArrayOutputStream line = new ByteArrayOutputStream();
  private int at;
  private int end;
  private long read;
  private boolean torn;

  LineInput(InputStream in) {
    this.in = in;
  }

  /**
   * The next line without its end; nothing at the end of the input.
   *
   * @param most bytes it may have; of a longer one comes one more
   */
  Optional<byte[]> next(int most) throws IOException {
    line.reset();
    boolean any = false;
    while (fill()) {
      any = true;
      int from = at;
      while (at < end && block[at] != '\n') {
        at++;
      }
      line.write(block, from, Math.max(0, Math.min(at - from, most + 1 - line.size())));
      read += at - from;
      if (at < end) {
        at++;
        read++;
        return Optional.of(line.toByteArray());
      }
    }
    torn = any;
    return any ? Optional.of(line.toByteArray()) : Optional.empty();
  }

  private boolean fill() throws IOException {
    if (at == end) {
      at = 0;
      end = Math.max(0, in.read(block));
    }
    return end > 0;
  }

  /** Bytes read so far. */
  long read() {
    return read;
  }

  /** Whether the last line had no end. */
  boolean torn() {
    return torn;
  }
}
