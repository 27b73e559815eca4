package padside.terminal;

/** There is no terminal the screens could be shown on; the message says so and what to do. */
public final class NoTerminalException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  NoTerminalException(String sentence) {
    super(sentence);
  }
}
