package padside.terminal;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import padside.screen.Size;

/** The terminal's line modes and size, set and asked for by {@code stty} as the launcher does. */
final class LineModes {
  /** Keys come singly, none is taken for a signal or shown by itself; the launcher's words. */
  private static final String KEYS_SINGLY =
      "stty -icanon -echo -isig -ixon -iexten icrnl min 1 time 0";

  /** All that belongs to the program stops here, the launcher too, until the shell goes on. */
  private static final String STOP = "stty \"$1\"; kill -TSTP 0";

  private static final String SIZE = "stty size";

  private static final long PATIENCE_S = 2;
  private static final long AS_LONG_AS_IT_TAKES_S = 1L << 32;

  private LineModes() {}

  /** The size as it is now. */
  static Optional<Size> size() throws InterruptedException {
    return run(List.of("stty", "size"), PATIENCE_S);
  }

  /** Takes the terminal again from whoever had it; answers its size. */
  static Optional<Size> takeAgain() throws InterruptedException {
    return run(List.of("sh", "-c", KEYS_SINGLY + "; " + SIZE), PATIENCE_S);
  }

  /**
   * Gives the terminal back in its former modes and stops the program; returns once it was brought
   * back, with the size of then. Where no shell could bring it back the system does not stop it.
   */
  static Optional<Size> putAside(String modes) throws InterruptedException {
    String script = STOP + "; " + KEYS_SINGLY + "; " + SIZE;
    return run(List.of("sh", "-c", script, "sh", modes), AS_LONG_AS_IT_TAKES_S);
  }

  private static Optional<Size> run(List<String> command, long seconds)
      throws InterruptedException {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectInput(new File("/dev/tty"))
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return Optional.empty();
      }
      byte[] answer = process.getInputStream().readAllBytes();
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
