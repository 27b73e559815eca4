package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real terminal, tmux, with the smallest program on it. */
class ConsoleIT {
  private static final int TRIES = 150;
  private static final String RAW = "stty -icanon -echo -isig -ixon -iexten icrnl min 1 time 0";

  @TempDir Path folder;

  @BeforeEach
  void start() throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    tmux("-f", "/dev/null", "new-session", "-d", "-x", "80", "-y", "24", "sh");
    type(
        RAW
            + "; clear; "
            + java
            + " -cp '"
            + System.getProperty("java.class.path")
            + "' -Dpadside.columns=80 -Dpadside.rows=24 -Dpadside.term=$TERM -Dpadside.utf8=true"
            + " padside.terminal.EchoProgram; left=$?; stty sane; echo; echo left with $left");
    tmux("send-keys", "Enter");
    await("bottom row");
  }

  @AfterEach
  void end() throws Exception {
    tmux("kill-server");
  }

  @Test
  void keys_arrive_by_name_whatever_a_terminal_usually_does_with_them() throws Exception {
    tmux("send-keys", "Up", "F3", "F12", "BTab", "C-c", "C-z", "C-s", "C-q", "é");
    await("<up> <f3> <f12> <s-tab> <c-c> <c-z> <c-s> <c-q> é");
    tmux("send-keys", "Escape");
    await("é <esc>");
  }

  @Test
  void a_resize_is_told_and_the_whole_of_the_new_size_is_painted() throws Exception {
    assertThat(await("size 80 x 24")).hasSize(24).last().isEqualTo("bottom row");

    tmux("resize-window", "-x", "120", "-y", "40");
    assertThat(await("size 120 x 40")).hasSize(40).last().isEqualTo("bottom row");

    tmux("resize-window", "-x", "60", "-y", "20");
    assertThat(await("size 60 x 20")).hasSize(20).last().isEqualTo("bottom row");
  }

  @Test
  void the_terminal_comes_back_at_the_end() throws Exception {
    tmux("send-keys", "q");
    await("left with 0");
    assertThat(tmux("display-message", "-p", "#{alternate_on} #{cursor_flag}"))
        .containsExactly("0 1");
  }

  @Test
  void the_terminal_comes_back_before_an_exception_is_shown() throws Exception {
    tmux("send-keys", "!");
    assertThat(await("left with 1"))
        .anySatisfy(line -> assertThat(line).contains("thrown on purpose"));
  }

  @Test
  void the_terminal_comes_back_when_the_program_is_told_to_end() throws Exception {
    ProcessHandle program =
        ProcessHandle.allProcesses()
            .filter(process -> process.info().commandLine().orElse("").contains("EchoProgram"))
            .filter(process -> process.info().command().orElse("").endsWith("java"))
            .filter(process -> isBelowTmux(process))
            .findFirst()
            .orElseThrow();
    program.destroy();

    await("left with 143");
    assertThat(tmux("display-message", "-p", "#{alternate_on} #{cursor_flag}"))
        .containsExactly("0 1");
  }

  private boolean isBelowTmux(ProcessHandle process) {
    try {
      String shell = tmux("display-message", "-p", "#{pane_pid}").get(0);
      return process.parent().map(parent -> String.valueOf(parent.pid())).orElse("").equals(shell);
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private void type(String text) throws IOException, InterruptedException {
    tmux("send-keys", "-l", text);
  }

  /** The screen's lines once one of them contains the text. */
  private List<String> await(String text) throws IOException, InterruptedException {
    List<String> lines = List.of();
    for (int i = 0; i < TRIES; i++) {
      lines = tmux("capture-pane", "-p");
      if (lines.stream().anyMatch(line -> line.contains(text))) {
        return lines;
      }
      Thread.sleep(100);
    }
    throw new AssertionError("\"" + text + "\" did not appear:\n" + String.join("\n", lines));
  }

  private List<String> tmux(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("tmux", "-u", "-S", folder + "/tmux"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().remove("TMUX");
    builder.environment().put("LC_ALL", "C.UTF-8");
    Process process = builder.start();
    byte[] answer = process.getInputStream().readAllBytes();
    process.waitFor();
    return new String(answer, StandardCharsets.UTF_8).lines().toList();
  }
}
