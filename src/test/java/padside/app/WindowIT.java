package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program without a terminal: in a window of its own, or with a sentence. */
class WindowIT {
  private static final String BLACK = "000000";
  private static final String WHITE = "ffffff";
  private static final Path JAR = Path.of("target/padside.jar").toAbsolutePath();
  private static final String JAVA = Path.of(System.getProperty("java.home"), "bin/java") + "";
  private static final int PATIENCE_S = 60;

  @TempDir Path folder;

  private void setting(String line) throws IOException {
    Path settings = folder.resolve("config/padside/settings.properties");
    Files.createDirectories(settings.getParent());
    Files.writeString(settings, line);
  }

  @Test
  void what_is_typed_in_the_window_is_kept_and_its_close_button_leaves() throws Exception {
    setting("clock = trusted");
    try (Desktop desktop = new Desktop(folder)) {
      Process padside = desktop.start(JAVA, "-jar", JAR.toString());
      String window = desktop.window();
      desktop.awaits("title bar and paper", () -> isPaper(desktop, window, WHITE));

      largerLetters(desktop, window);
      desktop.does("key", "F8");
      desktop.awaits("other looks", () -> isPaper(desktop, window, BLACK));

      desktop.does("type", "--delay", "40", "fnPipit");
      desktop.does("key", "Tab");
      desktop.does("type", "--delay", "40", "40g");
      desktop.does("key", "ctrl+alt+Escape"); // evilwm closes a window in order
      assertThat(padside.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
      assertThat(padside.exitValue()).as(said()).isEqualTo(Exit.DONE);
      assertThat(said()).isEmpty();
      assertThat(rockets()).isEqualTo("Pipit|0.04");
      assertThat(folder.resolve("data/padside/log/place.json")).doesNotExist();
    }
  }

  /** Between the title bar and the footer, where no letters are. */
  private static boolean isPaper(Desktop desktop, String window, String colour) {
    return desktop.colour(window, 5, 400).equals(colour)
        && !desktop.colour(window, 5, 5).equals(colour);
  }

  private static void largerLetters(Desktop desktop, String window) {
    String before = desktop.size(window);
    desktop.awaits(
        "a larger window",
        () -> {
          desktop.does("mousemove", "0", "0");
          desktop.does("mousemove", "--window", window, "200", "200", "click", "1");
          desktop.does("key", "ctrl+plus");
          return !desktop.size(window).equals(before);
        });
    desktop.awaits(
        "the window as before",
        () -> {
          desktop.does("key", "ctrl+0");
          return desktop.size(window).equals(before);
        });
  }

  private String said() {
    try {
      return Files.readString(folder.resolve("err.txt"));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private String rockets() throws Exception {
    Process sqlite =
        new ProcessBuilder(
                "sqlite3",
                folder.resolve("data/padside/log/padside.sqlite").toString(),
                "SELECT name, mass_kg FROM rocket")
            .start();
    return new String(sqlite.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
  }

  @Test
  void without_terminal_and_desktop_a_sentence_says_so() throws Exception {
    ProcessBuilder builder = new ProcessBuilder(JAVA, "-jar", JAR.toString(), "--window");
    builder.environment().remove("DISPLAY");
    builder.redirectError(folder.resolve("err.txt").toFile());
    Process padside = builder.start();

    assertThat(padside.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
    assertThat(padside.exitValue()).isEqualTo(Exit.USAGE);
    assertThat(said()).startsWith("padside: The screens need a terminal").hasLineCount(1);
  }

  @Test
  void a_start_in_a_terminal_loads_nothing_of_a_window() throws Exception {
    Path loaded = folder.resolve("loaded.txt");
    try (PadTable pad = new PadTable(folder, 80, 24)) {
      pad.launch("_JAVA_OPTIONS='-Xlog:class+load:file=" + loaded + "'", "");
      pad.sees("No day is open yet.");
      pad.press("f");
      pad.sees("n adds");
      pad.quit();
    }
    List<String> lines = Files.readAllLines(loaded);
    assertThat(lines).anyMatch(line -> line.contains("padside.screen.DayScreen"));
    assertThat(lines)
        .noneMatch(line -> line.contains("java.awt.") || line.contains("javax.swing."));
  }
}
