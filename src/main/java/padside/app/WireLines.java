package padside.app;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import padside.wire.WireLine;

/** A wind meter's lines as they come, each cut behind what no reading is as long as. */
final class WireLines implements AutoCloseable {
  private final InputStream in;

  WireLines(InputStream in) {
    this.in = new BufferedInputStream(in);
  }

  /** Waits for the next line; empty at the end. */
  Optional<String> next() throws IOException {
    StringBuilder line = new StringBuilder();
    int next = in.read();
    if (next < 0) {
      return Optional.empty();
    }
    for (; next >= 0 && next != '\n'; next = in.read()) {
      if (line.length() <= WireLine.LONGEST) {
        line.append((char) next);
      }
    }
    return Optional.of(line.toString());
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
