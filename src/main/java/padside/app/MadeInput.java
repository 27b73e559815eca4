package padside.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import padside.wire.MadeWind;

/** A made-up wind meter's lines, one a second. */
final class MadeInput extends InputStream {
  private static final long LINE_MILLIS = 1_000;
  private static final long SEED = 1;

  private final MadeWind wind = new MadeWind(SEED);
  private byte[] line = {};
  private int at;

  @Override
  public int read() throws IOException {
    if (at == line.length) {
      PacedInput.rest(LINE_MILLIS);
      line = (wind.next() + "\n").getBytes(StandardCharsets.US_ASCII);
      at = 0;
    }
    return line[at++];
  }

  /** No more than is there, so that a line is had as soon as it is sent. */
  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    into[from] = (byte) read();
    int more = Math.min(most - 1, line.length - at);
    System.arraycopy(line, at, into, from + 1, more);
    at += more;
    return 1 + more;
  }
}
