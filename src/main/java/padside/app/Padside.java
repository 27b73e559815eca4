package padside.app;

import java.util.Optional;
import padside.terminal.NoTerminalException;

/** Where the program starts. */
public final class Padside {
  private Padside() {}

  /** Runs a command, or the screens when none is named. */
  public static void main(String[] arguments) {
    int status;
    try {
      status =
          arguments.length == 0
              ? ScreensRun.overOwnLog() // without the command line's classes: starts sooner
              : CommandRun.of(arguments);
    } catch (NoTerminalException noTerminal) {
      System.err.println("padside: " + noTerminal.getMessage());
      status = Exit.USAGE;
    } catch (RuntimeException | Error bug) {
      status = CrashFile.write(bug, Optional.empty());
    }
    System.exit(status);
  }
}
