package padside.app;

/** The exit statuses of every command. */
final class Exit {
  /** Done; for {@code check}: GO or MARGINAL. */
  static final int DONE = 0;

  /** The outside world failed: disk, folder, log. */
  static final int FAULT = 1;

  /** The command was not understood, or what it was told is impossible. */
  static final int USAGE = 2;

  /** {@code check}: NO-GO. */
  static final int NO_GO = 3;

  /** {@code check}: UNKNOWN, something is missing. */
  static final int UNKNOWN = 4;

  /** A mistake of the program's own. */
  static final int BUG = 70;

  private Exit() {}
}
