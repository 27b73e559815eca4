package padside.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What is left of a mistake of the program's own: where in the code, and nothing of the flier's.
 */
final class CrashFile {
  private CrashFile() {}

  /** Writes the file and says so in a sentence; returns the exit status. */
  static int write(Throwable bug) {
    Path file = Folders.of(System.getenv()).data().resolve("crash.txt");
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, String.join("\n", lines(bug)) + "\n", StandardCharsets.UTF_8);
      System.err.println(
          "padside: a mistake in the program stopped it. What was kept is in the log. Where it"
              + " happened is in "
              + file
              + "; nothing personal is in that file.");
    } catch (IOException e) {
      System.err.println(
          "padside: a mistake in the program stopped it. What was kept is in the log.");
    }
    return Exit.BUG;
  }

  /** Kinds of exceptions and places in the code; messages could quote what was typed. */
  static List<String> lines(Throwable bug) {
    List<String> lines = new ArrayList<>();
    lines.add("Padside " + Version.text() + ", Java " + Runtime.version());
    for (Throwable cause = bug; cause != null && lines.size() < 500; cause = cause.getCause()) {
      lines.add(cause.getClass().getName());
      for (StackTraceElement place : cause.getStackTrace()) {
        lines.add("  at " + place);
      }
    }
    return lines;
  }
}
