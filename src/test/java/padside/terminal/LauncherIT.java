package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code bin/padside} does with a real terminal. */
class LauncherIT {
  private static final String PREPARING = "Preparing a faster start, once ...";

  @TempDir Path folder;
  private MadeUpProject project;
  private Tmux tmux;
  private int starts;

  @BeforeEach
  void open() throws IOException {
    project = new MadeUpProject(folder);
    tmux = new Tmux(folder, 160, 50, project.environment());
  }

  @AfterEach
  void close() {
    tmux.close();
  }

  /** Each start tells its status under a number of its own: the screen may show older ones. */
  private String launch() {
    return launch("sh '" + project.file("bin/padside") + "'");
  }

  private String launch(String command) {
    starts++;
    return command + "; echo " + starts + ": status $?";
  }

  private String status(int status) {
    return starts + ": status " + status;
  }

  /** Starts the program and answers the screen at its end. */
  private List<String> start() {
    return ended(launch());
  }

  private List<String> ended(String launched) {
    tmux.enter("clear; " + launched);
    return tmux.await(
        "a status",
        lines -> lines.stream().anyMatch(line -> line.matches(starts + ": status [0-9]+")));
  }

  @Test
  void the_program_learns_what_terminal_it_has() {
    assertThat(start())
        .contains(
            "-Dpadside.columns=160",
            "-Dpadside.rows=50",
            "-Dpadside.utf8=true",
            "-Dpadside.home=" + project.file(""),
            status(MadeUpProject.STATUS))
        .anySatisfy(line -> assertThat(line).matches("-Dpadside.term=(screen|tmux).*"));
  }

  @Test
  void the_terminal_gives_keys_singly_while_the_program_runs_and_lines_after_it() throws Exception {
    start();
    project.javaDoes("stty -a >\"$PROJECT/modes\"; echo running; read -r line\n");
    tmux.enter("clear; stty -g >\"$PROJECT/before\"; " + launch());
    tmux.await("running");
    tmux.press("Enter");
    tmux.await(status(0));
    tmux.enter("stty -g >\"$PROJECT/after\"; echo o''ver");
    tmux.await("over");

    assertThat(project.file("modes"))
        .content()
        .contains(
            "-icanon", "-echo ", "-isig", "-ixon", "-iexten", " icrnl", "min = 1", "time = 0");
    assertThat(project.file("after")).hasSameTextualContentAs(project.file("before"));
  }

  @Test
  void classes_are_archived_once_and_used_as_long_as_the_archive_is_whole() throws Exception {
    String use = "-XX:SharedArchiveFile=" + project.file("target/classes.jsa");

    assertThat(start()).contains(PREPARING, use);
    assertThat(start()).contains(use).doesNotContain(PREPARING);
    assertThat(project.run("predict").out()).contains(use);

    Files.writeString(project.file("target/classes.jsa"), "cl");
    assertThat(project.run("predict").out()).doesNotContain(use);
    assertThat(start()).contains(PREPARING, use);
  }

  /** XDG base directory specification 0.8: a path that is not absolute is ignored. */
  @Test
  void an_installed_program_archives_in_the_users_cache_until_another_build_is_installed()
      throws Exception {
    Path installed = project.install("aarch64");
    String program = "sh '" + installed.resolve("bin/padside") + "'";
    Path cache = folder.toRealPath().resolve("cache");
    String use = "-XX:SharedArchiveFile=" + cache.resolve("padside/classes.jsa");
    String command = "XDG_CACHE_HOME='" + cache + "' " + program;

    assertThat(ended(launch(command))).contains(PREPARING, use);
    assertThat(ended(launch(command))).contains(use).doesNotContain(PREPARING);
    assertThat(ended(launch("HOME='" + folder + "' XDG_CACHE_HOME=cache " + program)))
        .contains(PREPARING);
    assertThat(folder.resolve(".cache/padside/classes.jsa")).exists();

    Files.writeString(installed.resolve("build-sum"), "0dd\n");
    assertThat(ended(launch(command))).contains(PREPARING, use);
    assertThat(installed.resolve("target")).doesNotExist();
  }

  @Test
  void after_a_crash_the_archive_is_not_trusted_and_the_screen_is_given_back() throws Exception {
    start();
    project.javaDoes("printf '\\033[?1049h\\033[?25l'\nexit 135\n");

    assertThat(start())
        .contains("Padside was ended by force (status 135). Start it again to go on.");
    assertThat(tmux.ask("#{alternate_on} #{cursor_flag}")).isEqualTo("0 1");
    assertThat(project.file("target/classes.jsa")).doesNotExist();
  }

  @Test
  void a_signal_to_the_launcher_ends_the_program_in_good_order() throws Exception {
    start();
    project.javaDoes(
        """
        trap 'echo saved; exit 143' TERM
        echo running
        while :; do sleep 1; done
        """);
    tmux.enter("clear; " + launch());
    tmux.await("running");
    ProcessHandle shell = ProcessHandle.of(Long.parseLong(tmux.ask("#{pane_pid}"))).orElseThrow();
    shell.children().forEach(ProcessHandle::destroy);

    assertThat(tmux.await(status(143))).contains("saved");
  }

  @Test
  void a_terminal_that_cannot_show_screens_is_named() {
    tmux.enter("TERM=dumb; " + launch());

    tmux.await("TERM=dumb, which cannot show screens");
  }
}
