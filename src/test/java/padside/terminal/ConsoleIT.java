package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The smallest program on a real terminal. */
class ConsoleIT {
  private static final String GIVEN_BACK = "0 1";

  @TempDir Path folder;
  private Tmux tmux;

  @BeforeEach
  void start() {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    tmux = new Tmux(folder, 80, 24, Map.of("CLASSPATH", System.getProperty("java.class.path")));
    tmux.enter(
        "stty -icanon -echo -isig -ixon -iexten icrnl min 1 time 0; clear; "
            + java
            + " -Dpadside.columns=80 -Dpadside.rows=24 -Dpadside.term=$TERM -Dpadside.utf8=true"
            + " padside.terminal.EchoProgram; left=$?; stty sane; echo; echo left with $left");
    tmux.await("bottom row");
  }

  @AfterEach
  void end() {
    tmux.close();
  }

  private String screenAndCursor() {
    return tmux.ask("#{alternate_on} #{cursor_flag}");
  }

  @Test
  void keys_arrive_by_name_whatever_a_terminal_usually_does_with_them() {
    tmux.press("Up", "F3", "F12", "BTab", "C-c", "C-z", "C-s", "C-q", "é");
    tmux.await("<up> <f3> <f12> <s-tab> <c-c> <c-z> <c-s> <c-q> é");
    tmux.press("Escape");
    tmux.await("é <esc>");
  }

  @Test
  void a_resize_is_told_and_the_whole_of_the_new_size_is_painted() {
    assertThat(tmux.await("size 80 x 24")).hasSize(24).last().isEqualTo("bottom row");

    tmux.resize(120, 40);
    assertThat(tmux.await("size 120 x 40")).hasSize(40).last().isEqualTo("bottom row");

    tmux.resize(60, 20);
    assertThat(tmux.await("size 60 x 20")).hasSize(20).last().isEqualTo("bottom row");
  }

  @Test
  void the_terminal_comes_back_at_the_end() {
    assertThat(screenAndCursor()).startsWith("1");
    tmux.press("q");

    tmux.await("left with 0");
    assertThat(screenAndCursor()).isEqualTo(GIVEN_BACK);
  }

  @Test
  void the_terminal_comes_back_before_an_exception_is_shown() {
    tmux.press("!");

    assertThat(tmux.await("left with 1"))
        .anySatisfy(line -> assertThat(line).contains("thrown on purpose"));
    assertThat(screenAndCursor()).isEqualTo(GIVEN_BACK);
  }

  @Test
  void the_terminal_comes_back_when_the_program_is_told_to_end() {
    ProcessHandle shell = ProcessHandle.of(Long.parseLong(tmux.ask("#{pane_pid}"))).orElseThrow();
    shell.children().forEach(ProcessHandle::destroy);

    tmux.await("left with 143");
    assertThat(screenAndCursor()).isEqualTo(GIVEN_BACK);
  }
}
