package padside.terminal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A real terminal for end-to-end tests: a tmux server of its own with one shell in one window.
 * Nothing waits a fixed time; what should appear is looked for until it does.
 */
public final class Tmux implements AutoCloseable {
  private static final long LOOK_EVERY_MS = 50;
  private static final long ESCAPE_MS = 400;
  private static final int LOOKS = 1200;
  private static final String SHELL = "PS1='$ ' sh";

  private final Path socket;
  private final Map<String, String> environment;

  /**
   * Opens the window.
   *
   * @param folder where the server's socket lies
   * @param environment added to the environment of the shell
   */
  public Tmux(Path folder, int columns, int rows, Map<String, String> environment) {
    this.socket = folder.resolve("tmux");
    this.environment = environment;
    tmux("-f", "/dev/null", "new-session", "-d", "-x", "" + columns, "-y", "" + rows, SHELL);
  }

  /** Types text as it is and ends it with Enter. */
  public void enter(String text) {
    type(text);
    press("Enter");
  }

  /** Types text as it is. */
  public void type(String text) {
    tmux("send-keys", "-l", "--", text);
  }

  /** Presses keys by tmux's names, such as {@code Up}, {@code C-c}, {@code BTab}. */
  public void press(String... keys) {
    for (String key : keys) {
      tmux("send-keys", "--", key);
    }
  }

  /** Types text and presses a key, at once. */
  public void type(String text, String key) {
    tmux("send-keys", "-l", "--", text, ";", "send-keys", "--", key);
  }

  /** From now on also keeps every byte the window's program writes. */
  public void record(Path file) {
    tmux("pipe-pane", "cat >'" + file + "'");
  }

  /** Closes the window on the program in it, as a lost connection does; a new one stands then. */
  public void hangUp() {
    tmux("new-window", SHELL);
    tmux("kill-window", "-t", ":0");
  }

  /** Changes the size of the window. */
  public void resize(int columns, int rows) {
    tmux("resize-window", "-x", "" + columns, "-y", "" + rows);
  }

  /** The screen's lines once one of them contains the text; fails when none ever does. */
  public List<String> await(String text) {
    return await(
        "\"" + text + "\" on the screen",
        lines -> lines.stream().anyMatch(line -> line.contains(text)));
  }

  /** The screen's lines once they are as wanted; fails when they never are. */
  public List<String> await(String wanted, Predicate<List<String>> isWanted) {
    List<String> lines = lines();
    for (int i = 0; i < LOOKS && !isWanted.test(lines); i++) {
      pause(LOOK_EVERY_MS);
      lines = lines();
    }
    if (!isWanted.test(lines)) {
      throw new AssertionError("never seen: " + wanted + "; but:\n" + String.join("\n", lines));
    }
    return lines;
  }

  /** The screen's lines as they are now. */
  public List<String> lines() {
    return tmux("capture-pane", "-p");
  }

  /** What tmux knows of the window, by the names of its format variables. */
  public String ask(String format) {
    return String.join("\n", tmux("display-message", "-p", format));
  }

  @Override
  public void close() {
    tmux("kill-server");
  }

  /** Lets a terminal see that no more of a sequence follows an Escape. */
  public void linger() {
    pause(ESCAPE_MS);
  }

  private static void pause(long milliseconds) {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private List<String> tmux(String... arguments) {
    List<String> command = new ArrayList<>(List.of("tmux", "-u", "-S", socket.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().remove("TMUX");
    builder.environment().put("LC_ALL", "C.UTF-8");
    builder.environment().putAll(environment);
    try {
      Process process = builder.start();
      byte[] answer = process.getInputStream().readAllBytes();
      int status = process.waitFor();
      String text = new String(answer, StandardCharsets.UTF_8);
      if (status != 0) {
        throw new AssertionError(String.join(" ", command) + " ended with " + status + ": " + text);
      }
      return text.lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }
}
