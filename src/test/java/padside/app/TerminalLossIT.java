package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The terminal taken from the program, or the program from the terminal, in mid-form. */
class TerminalLossIT {
  private static final int BY_FORCE = 128 + 9;

  /** As a shell tells a program stopped by SIGTSTP, which is 20 on Linux. */
  private static final int STOPPED = 128 + 20;

  private static final String BACK = "You are back where Padside was cut off";

  @TempDir Path folder;
  private PadTable pad;

  @BeforeEach
  void sitDown() throws IOException {
    pad = new PadTable(folder, 80, 24);
  }

  @AfterEach
  void packUp() {
    pad.close();
  }

  /** A new rocket in the fleet, its name left and its mass half typed and kept in the pause. */
  private void typeRocket() {
    pad.launch("");
    pad.sees("No day is open yet.");
    pad.press("f");
    pad.sees("n adds");
    pad.press("n");
    pad.seesLine("> Name");
    pad.fields("Pipit");
    pad.type("40");
    pad.seesLine("> Bare mass", "40");
    pad.sees("all kept");
  }

  private void seesRocket() {
    pad.seesLine("Rocket: Pipit");
    pad.seesLine("Name", "Pipit");
    pad.seesLine("> Bare mass", "40");
  }

  @Test
  void killed_in_the_form_of_a_list_it_goes_on_there_and_typing_too() {
    typeRocket();
    pad.placeIs("\"at\":\"mass_kg\",\"typing\":true");
    pad.program().destroyForcibly();
    pad.ended(BY_FORCE);
    pad.hasTerminalBack();

    pad.launch("");
    pad.sees(BACK);
    seesRocket();
    pad.type("5g");
    pad.press("F2");
    pad.seesLine("> Pipit");
    pad.escape("No day is open yet.");
    pad.quit();
    assertThat(pad.sqlite("SELECT name, round(mass_kg, 3) FROM rocket"))
        .containsExactly("Pipit|0.405");

    pad.launch("");
    assertThat(pad.sees("No day is open yet.")).noneMatch(line -> line.contains("cut off"));
  }

  @Test
  void control_z_gives_the_shell_its_terminal_and_fg_brings_the_form_back() {
    typeRocket();
    pad.press("C-z");
    pad.ended(STOPPED);
    pad.hasTerminalBack();

    pad.bringBack();
    seesRocket();
    assertThat(pad.tmux().ask("#{alternate_on}")).isEqualTo("1");
    pad.type("5g");
    pad.seesLine("> Bare mass", "405g");

    pad.press("C-z");
    pad.tmux().await("the shell", lines -> lines.stream().noneMatch(l -> l.contains("Pipit")));
    pad.tmux().resize(60, 20);
    pad.bringBack();
    assertThat(pad.seesLine("> Bare mass", "405g")).hasSize(20);
    pad.tmux().resize(100, 30);
    pad.tmux().await("the whole of the new size", lines -> lines.get(29).contains("F1 keys"));
    pad.seesLine("> Bare mass", "405g");
    pad.quit();
    pad.hasTerminalBack();
  }

  @Test
  void a_mistake_of_the_program_gives_the_terminal_back_and_loses_nothing() throws Exception {
    Path damaged = withoutHelp();
    pad.launch(damaged, "", "");
    pad.sees("No day is open yet.");
    pad.press("f", "n");
    pad.seesLine("> Name");
    pad.fields("Pipit");
    pad.type("40");
    pad.press("F1");
    assertThat(String.join(" ", pad.ended(Exit.BUG)))
        .contains("padside: a mistake in the program stopped it; start it again")
        .doesNotContain("Exception", "Error", "\tat ");
    pad.hasTerminalBack();
    assertThat(Files.readString(folder.resolve("data/padside/crash.txt")))
        .contains("java.lang.NoClassDefFoundError", "at padside.screen.Session.")
        .contains("terminal 80 x 24", "Java 17", "Linux")
        .doesNotContain("Pipit", folder.toString(), "/");

    pad.launch("");
    pad.sees(BACK);
    seesRocket();
  }

  /** The program as a bad disk may leave it: one class of it is missing. */
  private Path withoutHelp() throws IOException {
    Path built = Path.of("target").toAbsolutePath();
    Path target = Files.createDirectories(folder.resolve("project/target"));
    Path bin = Files.createDirectories(folder.resolve("project/bin"));
    Files.createSymbolicLink(target.resolve("lib"), built.resolve("lib"));
    Path jar = Files.copy(built.resolve("padside.jar"), target.resolve("padside.jar"));
    try (FileSystem inside = FileSystems.newFileSystem(jar)) {
      Files.delete(inside.getPath("padside/screen/HelpScreen.class"));
    }
    return Files.copy(Path.of("bin/padside"), bin.resolve("padside"));
  }
}
