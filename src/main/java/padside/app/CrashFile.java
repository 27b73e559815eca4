package padside.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.screen.Size;
import padside.units.PrintableText;

/**
 * What is left of a mistake of the program's own: where in the code, and nothing of the flier's.
 */
final class CrashFile {
  /** A recursion without end is told in its first lines. */
  private static final int MOST = 500;

  private CrashFile() {}

  /**
   * Writes the file and says so in a sentence; returns the exit status.
   *
   * @param size of the terminal, where screens were shown
   */
  static int write(Throwable bug, Optional<Size> size) {
    Path file = Folders.of(System.getenv()).data().resolve("crash.txt");
    String again = size.isPresent() ? "; start it again to go on where you were" : "";
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, String.join("\n", lines(bug, size)) + "\n", StandardCharsets.UTF_8);
      System.err.println(
          "padside: a mistake in the program stopped it"
              + again
              + ". To have it mended send "
              + PrintableText.of(file.toString())
              + ", which tells where in the program it happened and nothing of yours.");
    } catch (IOException e) {
      System.err.println("padside: a mistake in the program stopped it" + again + ".");
    }
    return Exit.BUG;
  }

  /** Kinds of exceptions and places in the code; messages could quote what was typed. */
  static List<String> lines(Throwable bug, Optional<Size> size) {
    List<String> lines = new ArrayList<>();
    lines.add("Padside " + Version.text());
    lines.add("Java " + Runtime.version());
    lines.add(System.getProperty("os.name") + " " + System.getProperty("os.arch"));
    size.ifPresent(each -> lines.add("terminal " + each.columns() + " x " + each.rows()));
    tell(bug, lines);
    return lines;
  }

  private static void tell(Throwable bug, List<String> lines) {
    for (Throwable cause = bug; cause != null && lines.size() < MOST; cause = cause.getCause()) {
      lines.add(cause.getClass().getName());
      for (StackTraceElement place : cause.getStackTrace()) {
        lines.add("  at " + place.getClassName() + "." + place.getMethodName() + line(place));
      }
      for (Throwable beside : cause.getSuppressed()) {
        lines.add("and beside it");
        tell(beside, lines);
      }
    }
  }

  private static String line(StackTraceElement place) {
    return place.getLineNumber() > 0 ? ":" + place.getLineNumber() : "";
  }
}
