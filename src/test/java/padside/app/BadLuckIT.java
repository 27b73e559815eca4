package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes wrong on a folding table: power, windows, folders, a finger on the wrong key. */
class BadLuckIT {
  private static final int BY_FORCE = 128 + 9;
  private static final int TERMINATED = 128 + 15;

  @TempDir static Path prepared;
  @TempDir Path folder;
  private PadTable pad;

  /** A log with a rocket, a parachute and a day of today without weather. */
  @BeforeAll
  static void prepareLog() throws IOException {
    try (PadTable home = new PadTable(prepared, 80, 24)) {
      home.add(
          "device", "{\"name\": \"12 in nylon\", \"shape\": \"parachute\", \"diameter_m\": 0.3}");
      home.add(
          "rocket",
          "{\"name\": \"Sparrow\", \"mass_kg\": 0.036, \"diameter_m\": 0.0248, \"rod_m\": 0.9}");
      home.add("day", "{\"date\": \"" + LocalDate.now(ZoneId.systemDefault()) + "\"}");
    }
  }

  @BeforeEach
  void sitDown() throws IOException {
    try (Stream<Path> files = Files.walk(prepared.resolve("data"))) {
      for (Path from : files.sorted().toList()) {
        Files.copy(from, folder.resolve(prepared.relativize(from)));
      }
    }
    pad = new PadTable(folder, 80, 24);
  }

  @AfterEach
  void packUp() {
    pad.close();
  }

  /** A card begun: rocket and motor finished, the cursor in the bare mass the rocket brought. */
  private void beginCard() {
    pad.launch("");
    pad.sees("No card yet.");
    pad.press("n");
    pad.seesLine("> Sparrow");
    pad.press("Enter");
    pad.seesLine("> Motor");
    pad.fields("A8-3", "");
    pad.seesLine("> Recovery");
    pad.press("Tab", "Tab");
    pad.seesLine("> Bare mass");
    pad.seesLine("draft kept");
  }

  private void startAgainAndOpenTheDraft() {
    pad.launch("");
    pad.seesLine("Sparrow", "A8-3", "draft");
    pad.press("Enter");
    pad.seesLine("Rocket", "Sparrow");
    pad.seesLine("Motor", "A8-3");
  }

  /** The same field of the same card, without a key pressed. */
  private void startAgainWhereItWas() {
    pad.launch("");
    pad.sees("You are back where Padside was cut off");
    pad.seesLine("Rocket", "Sparrow");
    pad.seesLine("Motor", "A8-3");
  }

  @Test
  void a_window_too_small_is_told_so_and_is_shown_the_day_once_it_is_larger() throws IOException {
    Path own = Files.createDirectory(folder.resolve("small"));
    try (PadTable small = new PadTable(own, 50, 15)) {
      small.launch("");
      small.sees("This terminal is 50 × 15; Padside needs 60 × 20.");
      small.tmux().resize(80, 24);
      small.sees("No day is open yet.");
    }
  }

  @Test
  void a_log_of_a_newer_version_is_refused_and_left_as_it_is() {
    pad.sqlite("PRAGMA user_version = 99; UPDATE meta SET value = '99' WHERE key = 'version'");

    pad.launch("");
    assertThat(String.join(" ", pad.ended(Exit.FAULT))).contains("newer Padside", "99");
    assertThat(pad.sqlite("PRAGMA user_version")).containsExactly("99");
    assertThat(pad.padside("flights"))
        .satisfies(ran -> assertThat(ran.status()).isEqualTo(Exit.FAULT))
        .satisfies(ran -> assertThat(ran.err()).contains("newer Padside").doesNotContain("\tat "));
  }

  @Test
  void a_folder_that_cannot_be_made_is_named() throws IOException {
    Path file = Files.createFile(folder.resolve("regular"));

    pad.launch("--log '" + file.resolve("log") + "'");
    assertThat(String.join("", pad.ended(Exit.FAULT))).contains("regular/log");
  }

  @Test
  void a_second_program_on_a_log_is_told_which_one_has_it() {
    pad.launch("");
    pad.sees("No card yet.");

    String holder = "in use by process " + pad.program().pid();
    assertThat(pad.adding("rocket", "{\"name\": \"Marmalade\"}"))
        .satisfies(ran -> assertThat(ran.status()).isEqualTo(Exit.FAULT))
        .satisfies(ran -> assertThat(ran.err()).contains(holder, "Quit the other"));
    assertThat(pad.padside("flights"))
        .as("reading goes on beside it")
        .satisfies(ran -> assertThat(ran.status()).isEqualTo(Exit.DONE))
        .satisfies(ran -> assertThat(ran.err()).contains(holder, "only read"));
  }

  @Test
  void a_program_killed_outright_loses_no_finished_field() {
    beginCard();
    pad.type("1.7oz");
    pad.press("Tab");
    pad.seesLine("> Rod length");
    pad.seesLine("draft kept");
    pad.type("4");
    pad.seesLine("draft kept but for this field");
    pad.program().destroyForcibly();
    pad.ended(BY_FORCE);
    pad.hasTerminalBack();

    startAgainWhereItWas();
    pad.seesLine("Bare mass", "1.7oz");
    pad.seesLine("> Rod length");
  }

  @Test
  void a_program_told_to_end_keeps_even_the_field_half_typed() {
    beginCard();
    pad.type("1.9o");
    pad.seesLine("draft kept but for this field");
    pad.program().destroy();
    pad.ended(TERMINATED);
    pad.hasTerminalBack();

    startAgainWhereItWas();
    pad.seesLine("! Bare mass", "1.9o");
  }

  @Test
  void a_window_closed_on_the_program_keeps_even_the_field_half_typed() throws Exception {
    beginCard();
    pad.type("1.8oz");
    pad.seesLine("draft kept but for this field");
    ProcessHandle program = pad.program();
    pad.tmux().hangUp();
    program.onExit().get(30, TimeUnit.SECONDS);

    startAgainWhereItWas();
    pad.seesLine("> Bare mass", "1.8oz");
  }

  @Test
  void text_in_the_middle_of_a_field_stays_through_escape_and_through_quitting() {
    beginCard();
    pad.type("1.6oz");
    pad.escape("Flown 0");
    pad.seesLine("Sparrow", "A8-3", "draft");
    pad.press("Enter");
    pad.seesLine("Bare mass", "1.6oz");
    pad.seesLine("> Recovery");
    pad.press("Tab", "Tab", "Tab", "Tab", "Tab", "Tab", "Tab");
    pad.seesLine("> Note");
    pad.type("Ada's, mind the fin");
    pad.quit();

    startAgainAndOpenTheDraft();
    pad.seesLine("Bare mass", "1.6oz");
    pad.seesLine("Note", "Ada's, mind the fin");
  }

  @Test
  void text_that_cannot_be_read_comes_back_as_it_was_typed() {
    beginCard();
    pad.type("heavy");
    pad.press("Tab");
    pad.seesLine("! Bare mass", "heavy");
    pad.quit();

    startAgainAndOpenTheDraft();
    pad.seesLine("! Bare mass", "heavy");
    pad.press("Tab", "Tab");
    pad.seesLine("\"heavy\"");
  }

  /** What Debian's console fonts hold, by a look into them: no arrows ►◄, no ✓ ⚠, no braille. */
  @Test
  void a_text_console_is_shown_only_what_its_font_holds() {
    String safe = "─│┌┐└┘├┤┬┴┼█░▒←↑→↓▲▼●■•…–°±µ×²½≤≥·÷";
    pad.launch("TERM=linux", "");
    pad.sees("No card yet.");
    assertOnly(safe, pad.tmux().lines());
    pad.press("n");
    pad.seesVerdict("UNKNOWN");
    assertOnly(safe, pad.tmux().lines());
    pad.press("F1");
    pad.sees("Help: Card");
    assertOnly(safe, pad.tmux().lines());
  }

  @Test
  void a_terminal_without_utf_8_is_shown_ascii_alone() {
    pad.launch("LC_ALL=C", "");
    pad.sees("No card yet.");
    pad.press("n");
    pad.sees("UNKNOWN");
    assertOnly("", pad.tmux().lines());
  }

  private static void assertOnly(String safe, List<String> lines) {
    assertThat(lines)
        .allSatisfy(
            line ->
                assertThat(line.codePoints().filter(c -> c > 126 && safe.indexOf(c) < 0))
                    .as(line)
                    .isEmpty());
  }

  /** Select graphic rendition, ECMA-48 8.3.117: 30 to 49 are colours, 90 to 107 bright ones. */
  @Test
  void no_color_keeps_every_colour_code_from_the_terminal() throws Exception {
    assertThat(coloursWritten("NO_COLOR=1")).isEmpty();
    assertThat(coloursWritten("NO_COLOR=")).isNotEmpty();
  }

  private List<String> coloursWritten(String variable) throws IOException {
    Path bytes = folder.resolve(variable + ".bytes");
    pad.tmux().record(bytes);
    pad.launch(variable, "");
    pad.sees("No card yet.");
    pad.press("n");
    pad.seesVerdict("UNKNOWN");
    pad.press("Escape");
    pad.sees("Flown 0");
    pad.quit();
    pad.tmux().record(Path.of("/dev/null"));
    return java.util.regex.Pattern.compile("\033\\[([0-9;]*)m")
        .matcher(Files.readString(bytes))
        .results()
        .flatMap(code -> Stream.of(code.group(1).split(";")))
        .filter(code -> code.matches("[34][0-8]|9[0-7]|10[0-7]"))
        .toList();
  }
}
