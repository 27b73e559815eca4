package padside.app;

import static java.util.concurrent.TimeUnit.SECONDS;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.terminal.Tmux;

/**
 * A flier at the folding table: the real {@code bin/padside} in a real terminal, with data and
 * settings in a folder of its own. Counts every key pressed.
 */
final class PadTable implements AutoCloseable {
  private static final Path PROGRAM = Path.of("bin", "padside").toAbsolutePath();
  private static final Path HERE = Path.of("").toAbsolutePath();

  private final Path folder;
  private final Map<String, String> environment;
  private final Path socket;
  private final Tmux tmux;
  private int keys;
  private int starts;

  /** What a command answered. */
  record Ran(int status, String out, String err) {}

  PadTable(Path folder, int columns, int rows) throws IOException {
    this.folder = folder;
    this.environment =
        Map.of(
            "HOME", folder.toString(),
            "XDG_DATA_HOME", folder.resolve("data").toString(),
            "XDG_CONFIG_HOME", folder.resolve("config").toString(),
            "LC_ALL", "C.UTF-8");
    // A socket's path may be no longer than about a hundred characters.
    this.socket = Files.createTempDirectory("pad");
    this.tmux = new Tmux(socket, columns, rows, environment);
    // A machine that tests are run on may have no clock that anybody vouches for.
    setting("clock = trusted");
  }

  /** Makes this the only line of the settings, without the guide unless it is named. */
  void setting(String... line) throws IOException {
    Path settings = folder.resolve("config/padside/settings.properties");
    Files.createDirectories(settings.getParent());
    List<String> lines = new ArrayList<>(List.of(line));
    if (lines.stream().noneMatch(each -> each.startsWith("guide"))) {
      lines.add("guide = off");
    }
    Files.write(settings, lines);
  }

  /** The log that opens when none is named. */
  Path log() {
    return folder.resolve("data/padside/log");
  }

  Tmux tmux() {
    return tmux;
  }

  /** Starts the program with these arguments, without waiting for anything. */
  void launch(String arguments) {
    launch("", arguments);
  }

  /** Starts the program with variables such as {@code TERM=linux} set. */
  void launch(String variables, String arguments) {
    launch(PROGRAM, variables, arguments);
  }

  /** Starts another installation of the program. */
  void launch(Path program, String variables, String arguments) {
    starts++;
    tmux.enter(
        "stty sane; clear; "
            + variables
            + " '"
            + program
            + "' "
            + arguments
            + "; echo "
            + starts
            + ": ended $?");
  }

  /** The lines on the screen once the program that was started last has ended with this status. */
  List<String> ended(int status) {
    return tmux.await(starts + ": ended " + status);
  }

  /** Waits until where the flier is has found its way to the medium, a moment after the screen. */
  void placeIs(String part) {
    tmux.await(
        part + " in the place kept",
        lines -> {
          try {
            return Files.readString(log().resolve(PlaceKeeper.NAME)).contains(part);
          } catch (IOException e) {
            return false;
          }
        });
  }

  /** As if the program had been left by hand. */
  void forgetPlace() {
    try {
      Files.deleteIfExists(log().resolve(PlaceKeeper.NAME));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Brings the program back that was put aside, and tells its end as after a start. */
  void bringBack() {
    starts++;
    tmux.enter("clear; fg; echo " + starts + ": ended $?");
  }

  /** Looks whether the shell has the terminal as a shell wants it, and its own screen. */
  void hasTerminalBack() {
    tmux.enter("clear; stty -a; echo l''ooked");
    String modes = String.join(" ", tmux.await("looked")) + " ";
    for (String mode : List.of("icanon", "echo", "isig", "iexten", "icrnl")) {
      if (!modes.contains(" " + mode + " ")) {
        throw new AssertionError("not " + mode + ": " + modes);
      }
    }
    String screen = tmux.ask("#{alternate_on} #{cursor_flag}");
    if (!screen.equals("0 1")) {
      throw new AssertionError("alternate screen and cursor: " + screen);
    }
  }

  /** Presses keys by tmux's names, one after the other. */
  void press(String... names) {
    keys += names.length;
    tmux.press(names);
  }

  /** Presses Escape, and waits as long as a terminal needs to tell it from an arrow key. */
  void escape(String thenSeen) {
    press("Escape");
    tmux.linger();
    sees(thenSeen);
  }

  /** Types a text, a key a character. */
  void type(String text) {
    keys += text.length();
    tmux.type(text);
  }

  /** Types texts into fields one after the other, each ended with Tab. */
  void fields(String... texts) {
    for (String text : texts) {
      type(text);
      press("Tab");
    }
  }

  /** Keys pressed and characters typed so far. */
  int keys() {
    return keys;
  }

  /** Waits until a line of the screen holds the text. */
  List<String> sees(String text) {
    return tmux.await(text);
  }

  /** Waits until a line of the screen holds all of these. */
  List<String> seesLine(String... texts) {
    return tmux.await(
        "a line with " + List.of(texts),
        lines -> lines.stream().anyMatch(line -> List.of(texts).stream().allMatch(line::contains)));
  }

  /** Waits for the card's answer. */
  List<String> seesVerdict(String word) {
    return tmux.await(
        "the verdict " + word,
        lines -> lines.size() > 1 && lines.get(1).matches(".*│ +" + word + " *"));
  }

  /** Leaves the program from anywhere and waits for its end. */
  void quit() {
    press("C-c");
    sees("Leave Padside?");
    press("Enter");
    ended(0);
  }

  /** Types a text and presses a key at once. */
  void typeThen(String text, String key) {
    keys += text.length() + 1;
    if (text.isEmpty()) {
      tmux.press(key);
    } else {
      tmux.type(text, key);
    }
  }

  void typeThenTab(String text) {
    typeThen(text, "Tab");
  }

  /** The Java program that shows the screens. */
  ProcessHandle program() {
    return started().orElseThrow();
  }

  /** The same, once it has been started. */
  Optional<ProcessHandle> started() {
    ProcessHandle shell = ProcessHandle.of(Long.parseLong(tmux.ask("#{pane_pid}"))).orElseThrow();
    return shell
        .descendants()
        .filter(each -> each.info().command().orElse("").endsWith("/java"))
        .findFirst();
  }

  /** Runs a command of the program without a terminal. */
  Ran padside(String... arguments) {
    List<String> command = new ArrayList<>(List.of(PROGRAM.toString()));
    command.addAll(List.of(arguments));
    return run("", command);
  }

  /** Adds records as JSON; answers their ids. */
  List<String> add(String kind, String json) {
    Ran ran = adding(kind, json);
    if (ran.status != 0) {
      throw new AssertionError(ran.err);
    }
    return ran.out.lines().toList();
  }

  /** What comes of adding records as JSON. */
  Ran adding(String kind, String json) {
    return run(json, List.of(PROGRAM.toString(), "add", kind));
  }

  /** What SQLite's own program reads from the log, a line a row, once no other has it open. */
  List<String> sqlite(String sql) {
    String database = log().resolve("padside.sqlite").toString();
    Ran ran = run("", List.of("sqlite3", "-cmd", ".timeout 20000", database, sql));
    if (ran.status != 0) {
      throw new AssertionError(sql + ": " + ran.err);
    }
    return ran.out.lines().toList();
  }

  private Ran run(String input, List<String> command) {
    try {
      ProcessBuilder builder = new ProcessBuilder(command).directory(HERE.toFile());
      builder.environment().putAll(environment);
      Path errors = Files.createTempFile(folder, "errors", ".txt");
      builder.redirectError(errors.toFile());
      Process process = builder.start();
      process.getOutputStream().write(input.getBytes(StandardCharsets.UTF_8));
      process.getOutputStream().close();
      String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return new Ran(process.waitFor(), out, Files.readString(errors));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** Ends the terminal and what was left running in it, which writes until it has ended. */
  @Override
  public void close() {
    Optional<ProcessHandle> left = started();
    tmux.close();
    left.ifPresent(program -> program.onExit().completeOnTimeout(program, 10, SECONDS).join());
    try {
      Files.deleteIfExists(socket.resolve("tmux"));
      Files.delete(socket);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
