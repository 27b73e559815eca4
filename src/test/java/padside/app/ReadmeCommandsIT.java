package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every command the README shows for a shell does what it says, in its order, on the made-up season
 * as somebody's own log.
 */
class ReadmeCommandsIT {
  /** Not run here, by their beginnings, and why. */
  private static final Map<String, String> LEFT_OUT =
      Map.of(
          "sudo apt-get update", "needs root and a network, and opens the screens",
          "sudo apt-get install", "needs root; src/test/sh/deb.sh does it",
          "mvn -B verify", "runs this test",
          "bin/padside sync ssh:", "needs another machine; SyncOverSshIT is its own");

  /** The exit statuses that are an answer: {@code check} tells GO, MARGINAL and NO-GO by them. */
  private static final List<Integer> ANSWERS = List.of(Exit.DONE, Exit.NO_GO);

  private static final Pattern BLOCK =
      Pattern.compile("^```sh\n(.*?)^```", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern WRITTEN = Pattern.compile("--(?:html|to|bundle) (\\S+)");
  private static final String STICK = "/media/stick";

  @TempDir Path folder;

  private static List<String> commands() throws IOException {
    List<String> commands = new ArrayList<>();
    Matcher block = BLOCK.matcher(Files.readString(Path.of("README.md")));
    while (block.find()) {
      commands.addAll(block.group(1).replaceAll("\\\\\n *", "").lines().toList());
    }
    return commands;
  }

  private static Stream<String> reasons(String command) {
    return LEFT_OUT.keySet().stream().filter(command::startsWith);
  }

  @Test
  void every_command_is_run_but_those_that_cannot_be() throws Exception {
    List<String> commands = commands();
    assertThat(LEFT_OUT.keySet())
        .as("what is left out still stands in the README")
        .allSatisfy(begun -> assertThat(commands).anyMatch(each -> each.startsWith(begun)));
    prepare();

    for (String command : commands) {
      if (reasons(command).findAny().isEmpty()) {
        run(command);
      }
    }
  }

  /** What the commands take for granted: a log of one's own, a stick with its backup, a table. */
  private void prepare() throws Exception {
    Files.createDirectories(folder.resolve("bin"));
    Files.createDirectories(folder.resolve("stick"));
    Path program = folder.resolve("bin/padside");
    Files.writeString(
        program, "#!/bin/sh\nexec '" + Path.of("bin/padside").toAbsolutePath() + "' \"$@\"\n");
    Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
    Files.writeString(
        folder.resolve("old-flights.csv"),
        "Date,Rocket,Motor,Peak ft\n13/06/2019,Old Alder,A8-3,230\n");
    run("bin/padside demo --no-screens --log ~/.local/share/padside/log");
    run("bin/padside backup " + STICK);
  }

  private void run(String command) throws Exception {
    Path told = folder.resolve("told");
    ProcessBuilder shell =
        new ProcessBuilder(
                "bash", "-c", "set -o pipefail\n" + command.replace(STICK, folder + "/stick"))
            .directory(folder.toFile())
            .redirectError(told.toFile());
    shell.environment().keySet().removeIf(name -> name.startsWith("XDG_"));
    shell.environment().put("HOME", folder.toString());
    shell.environment().put("LC_ALL", "C.UTF-8");
    Process process = shell.start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int status = process.waitFor();
    String all = command + "\n" + out + Files.readString(told);

    assertThat(status).as(all).isIn(command.contains(" check ") ? ANSWERS : List.of(Exit.DONE));
    assertThat(all).doesNotContain("Exception", "a mistake in the program");
    Matcher written = WRITTEN.matcher(command);
    while (written.find()) {
      assertThat(folder.resolve(written.group(1))).as(all).isNotEmptyFile();
    }
    assertThat(written.reset().find() || !out.isBlank()).as("it told or wrote: " + all).isTrue();
  }
}
