package padside.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.function.IntSupplier;
import padside.terminal.Window;

/**
 * What is said on the error output while the screens stand in a window of their own: there may be
 * no terminal to show it, so it is said in a window too once theirs is closed.
 */
final class ToldInWindow {
  private ToldInWindow() {}

  /** Runs the screens; returns the exit status. */
  static int during(ScreensRun.Where where, IntSupplier screens) {
    if (where == ScreensRun.Where.TERMINAL) {
      return screens.getAsInt();
    }
    PrintStream before = System.err;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
    int status;
    try {
      status = screens.getAsInt();
    } finally {
      System.setErr(before);
      before.print(said.toString(StandardCharsets.UTF_8));
      before.flush();
    }
    String text = said.toString(StandardCharsets.UTF_8);
    if (!text.isBlank()) {
      Window.tell(text);
    }
    return status;
  }
}
