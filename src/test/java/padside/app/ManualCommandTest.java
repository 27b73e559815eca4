package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The manual page and the completion, as man, bash and zsh take them. */
class ManualCommandTest {
  private static final CommandSpec ROOT = new CommandLine(new RootCommand()).getCommandSpec();

  @TempDir Path folder;

  private Path written(String... option) throws IOException {
    Ran ran =
        Ran.of("", Stream.concat(Stream.of("manual"), Stream.of(option)).toArray(String[]::new));
    assertThat(ran.status()).isEqualTo(Exit.DONE);
    return Files.writeString(folder.resolve("manual"), ran.out());
  }

  /** What a program of this machine prints, its objections among it; skips where it is missing. */
  private static String printed(String... command) throws IOException, InterruptedException {
    assumeTrue(
        Stream.of(System.getenv("PATH").split(":", -1))
            .anyMatch(place -> Files.isExecutable(Path.of(place, command[0]))),
        command[0] + " is not here");
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("LC_ALL", "C.UTF-8");
    builder.environment().put("MANWIDTH", "200");
    Process process = builder.start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(out).isZero();
    return out;
  }

  private static List<CommandSpec> commands() {
    return ROOT.subcommands().values().stream().map(CommandLine::getCommandSpec).toList();
  }

  @Test
  void man_shows_every_command_and_option_and_has_no_objection() throws Exception {
    String page = printed("man", "--warnings", "-l", written().toString());

    assertThat(page).doesNotContain("warning", "error:").doesNotContain("\\");
    assertThat(page).contains("Padside " + Version.text(), "the flier decides", "PADSIDE_JAVA");
    for (CommandSpec command : commands()) {
      String part = page.substring(page.indexOf("   padside " + command.name()));
      for (var option : Told.own(command)) {
        assertThat(part).as(command.name()).contains(option.names());
      }
    }
    assertThat(page).contains("65%;").contains("'C6-0 then C6-7'").contains("~/.config/padside");
  }

  @Test
  void bash_reads_the_completion_and_it_has_every_command_and_option() throws Exception {
    Path script = written("--bash");

    assertThat(printed("bash", "-n", script.toString())).isEmpty();
    String offered = completed(script, "padside", "");
    for (CommandSpec command : commands()) {
      assertThat(offered.split("\\s+")).contains(command.name());
      String options = completed(script, "padside", command.name(), "--");
      for (var option : Told.own(command)) {
        assertThat(options.split("\\s+")).as(command.name()).contains(option.longestName());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"rep,report", "dem,demo", "do,doctor"})
  void bash_completes_what_was_begun(String begun, String whole) throws Exception {
    assertThat(completed(written("--bash"), "padside", begun).strip()).isEqualTo(whole);
  }

  /** What bash's own function offers for the last of these words. */
  private static String completed(Path script, String... words) throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                "bash",
                "-c",
                "compopt() { :; }; source \"$0\"; COMP_WORDS=(\"$@\"); COMP_CWORD=$(($# - 1)); COMP_LINE=\"$*\";"
                    + " COMP_POINT=${#COMP_LINE}; _complete_padside; echo \"${COMPREPLY[@]}\"",
                script.toString()));
    command.addAll(List.of(words));
    return printed(command.toArray(String[]::new));
  }

  @Test
  void zsh_reads_the_completion_and_it_has_every_command_and_option() throws Exception {
    Path script = written("--zsh");
    String text = Files.readString(script);

    assertThat(text).startsWith("#compdef padside\n");
    for (CommandSpec command : commands()) {
      assertThat(text).contains("    '" + command.name() + ":");
      String from = text.substring(text.indexOf("  " + command.name() + ") _arguments"));
      String part = from.substring(0, from.indexOf(";;"));
      for (var option : Told.own(command)) {
        for (String name : option.names()) {
          assertThat(part).as(command.name()).containsPattern("'\\*?" + name + "=?\\[");
        }
      }
    }
    assertThat(printed("zsh", "-n", script.toString())).isEmpty();
  }

  @Test
  void only_one_shell_is_asked_for() {
    Ran ran = Ran.of("", "manual", "--bash", "--zsh");

    assertThat(ran.status()).isEqualTo(Exit.USAGE);
    assertThat(ran.err().toLowerCase(Locale.ROOT)).contains("--bash", "mutually exclusive");
  }
}
