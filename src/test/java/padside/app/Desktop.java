package padside.app;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * A desktop nobody sees, with a small window manager: Xvfb keeps its picture in a file, in the form
 * of the X Window Dump (X11/XWDFile.h). Keys are pressed by xdotool.
 */
final class Desktop implements AutoCloseable {
  private static final long PATIENCE_MS = 60_000;
  private static final int COLOURS_WORD = 19;
  private static final int LINE_WORD = 12;
  private static final int COLOUR_BYTES = 12;

  private final Path folder;
  private final Process server;
  private final String display;
  private final Process manager;

  Desktop(Path folder) throws IOException {
    for (String tool : List.of("Xvfb", "xdotool", "evilwm")) {
      assumeTrue(isThere(tool), tool + " is not installed: xvfb, xdotool and evilwm have them");
    }
    Path library = Path.of(System.getProperty("java.home"), "lib", "libawt_xawt.so");
    assumeTrue(Files.exists(library), "this Java opens no windows: openjdk-17-jre does");
    this.folder = folder;
    this.server =
        new ProcessBuilder(
                "Xvfb",
                "-displayfd",
                "1",
                "-screen",
                "0",
                "1400x900x24",
                "-fbdir",
                folder.toString())
            .redirectError(folder.resolve("xvfb.txt").toFile())
            .start();
    try (BufferedReader number = server.inputReader(StandardCharsets.US_ASCII)) {
      this.display = ":" + number.readLine();
    }
    this.manager = start("evilwm", "-fn", "fixed"); // every X server has that font
  }

  private static boolean isThere(String tool) {
    return Stream.of(System.getenv("PATH").split(":", -1))
        .anyMatch(place -> Files.isExecutable(Path.of(place, tool)));
  }

  /** Starts a program there, without a terminal, with data and settings in the folder. */
  Process start(String... line) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.environment().put("DISPLAY", display);
    builder.environment().put("HOME", folder.toString());
    builder.environment().put("XDG_DATA_HOME", folder.resolve("data").toString());
    builder.environment().put("XDG_CONFIG_HOME", folder.resolve("config").toString());
    return builder
        .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
        .redirectOutput(folder.resolve("out.txt").toFile())
        .redirectError(folder.resolve("err.txt").toFile())
        .start();
  }

  /** Has xdotool do something; what it answers. */
  String does(String... line) {
    List<String> all = new ArrayList<>(List.of("xdotool"));
    all.addAll(List.of(line));
    try {
      ProcessBuilder builder = new ProcessBuilder(all).redirectErrorStream(true);
      builder.environment().put("DISPLAY", display);
      Process process = builder.start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      process.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS);
      return said.strip();
    } catch (IOException e) {
      throw new AssertionError(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  /** The window of the program, once it is seen. */
  String window() {
    awaits("a window", () -> !windows().isEmpty());
    return windows();
  }

  private String windows() {
    return does("search", "--onlyvisible", "--name", "^Padside$");
  }

  /** Width and height of a window in pixels. */
  String size(String window) {
    return does("getwindowgeometry", window).replaceAll("(?s).*Geometry: ", "");
  }

  /** The colour of one spot of a window, as {@code rrggbb}. */
  String colour(String window, int right, int down) {
    String[] corner =
        does("getwindowgeometry", window)
            .replaceAll("(?s).*Position: (\\d+,\\d+) .*", "$1")
            .split(",", -1);
    int x = Integer.parseInt(corner[0]) + right;
    int y = Integer.parseInt(corner[1]) + down;
    try {
      ByteBuffer dump = ByteBuffer.wrap(Files.readAllBytes(folder.resolve("Xvfb_screen0")));
      int pixels = dump.getInt(0) + dump.getInt(4 * COLOURS_WORD) * COLOUR_BYTES;
      int at = pixels + y * dump.getInt(4 * LINE_WORD) + 4 * x;
      int colour = Integer.reverseBytes(dump.getInt(at)) & 0xffffff; // as a PC keeps it
      return String.format("%06x", colour);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Waits until it is so. */
  void awaits(String what, BooleanSupplier isSo) {
    long end = System.currentTimeMillis() + PATIENCE_MS;
    while (!isSo.getAsBoolean()) {
      if (System.currentTimeMillis() > end) {
        throw new AssertionError("waited in vain for " + what);
      }
      try {
        Thread.sleep(100);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new AssertionError(e);
      }
    }
  }

  @Override
  public void close() {
    manager.destroy();
    server.destroy();
  }
}
