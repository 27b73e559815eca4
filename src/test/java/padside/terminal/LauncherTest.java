package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code bin/padside} does and says where no terminal is needed. */
class LauncherTest {
  private static final Instant LONG_AGO = Instant.parse("2020-01-01T00:00:00Z");

  @TempDir Path folder;
  private MadeUpProject project;

  @BeforeEach
  void layOutTheProject() throws IOException {
    project = new MadeUpProject(folder);
  }

  @Test
  void the_first_start_builds_and_says_so_and_later_ones_do_not() throws Exception {
    MadeUpProject.Run first = project.run("predict");
    assertThat(first.err()).contains("Building Padside, once").contains("Built.");
    assertThat(first.status()).isEqualTo(MadeUpProject.STATUS);

    assertThat(project.run("predict").err()).isEmpty();
    assertThat(project.file("maven.calls")).hasContent("built");
  }

  @Test
  void a_changed_source_is_built_again_even_when_the_clock_runs_behind() throws Exception {
    project.run("predict");
    Path source = project.file("src/main/Speed.java");
    Files.setLastModifiedTime(
        source,
        FileTime.from(Files.getLastModifiedTime(source).toInstant().plus(Duration.ofDays(3))));

    assertThat(project.run("predict").err()).contains("Building Padside");
    assertThat(project.run("predict").err()).isEmpty();
  }

  @Test
  void a_command_gets_its_arguments_as_typed_and_its_status_is_passed_on() throws Exception {
    MadeUpProject.Run run = project.run("predict", "--wind", "6 g 9", "", "it's", "*");

    assertThat(run.out()).endsWith("predict", "--wind", "6 g 9", "", "it's", "*");
    assertThat(run.out())
        .containsSequence("-jar", project.file("target/padside.jar").toString())
        .contains("-Dpadside.home=" + project.file(""));
    assertThat(run.status()).isEqualTo(MadeUpProject.STATUS);
  }

  @Test
  void the_project_is_found_through_links() throws Exception {
    Path link = folder.resolve("link to padside");
    Files.createSymbolicLink(link, Path.of("a project/bin/padside"));
    Path second = Files.createSymbolicLink(folder.resolve("again"), link);

    assertThat(project.run(second, Map.of(), "flights").out())
        .contains("-Dpadside.home=" + project.file(""));
  }

  @Test
  void without_maven_a_sentence_names_the_command_that_installs_it() throws Exception {
    project.removeMaven();
    MadeUpProject.Run run = project.run("predict");

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err())
        .contains("Maven (mvn), which builds it, is not installed")
        .contains("sudo apt install default-jdk-headless maven");
  }

  @Test
  void a_java_too_old_is_refused_by_name_and_version() throws Exception {
    Path old = project.jdk("old", "11.0.2");
    MadeUpProject.Run run =
        project.run(project.file("bin/padside"), Map.of("PADSIDE_JAVA", old.toString()), "predict");

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).contains("PADSIDE_JAVA=" + old).contains("version 17 or newer");
  }

  @Test
  void a_failed_build_shows_its_last_lines_and_where_the_rest_is() throws Exception {
    project.breakMaven();
    MadeUpProject.Run run = project.run("predict");

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("The build failed", "Speed.java: cannot find symbol")
        .contains(project.file("target/build.log").toString());
  }

  @Test
  void a_failed_rebuild_starts_what_was_built_before() throws Exception {
    project.run("predict");
    project.breakMaven();
    Files.setLastModifiedTime(project.file("target/padside.jar"), FileTime.from(LONG_AGO));
    MadeUpProject.Run run = project.run("predict");

    assertThat(run.err()).contains("The build failed", "as it was built before");
    assertThat(run.out()).endsWith("predict");
    assertThat(run.status()).isEqualTo(MadeUpProject.STATUS);
  }

  @Test
  void screens_without_a_terminal_are_refused_before_anything_is_built() throws Exception {
    for (String[] arguments : List.of(new String[] {}, new String[] {"demo"})) {
      MadeUpProject.Run run = project.run(arguments);
      assertThat(run.status()).isEqualTo(1);
      assertThat(run.err()).contains("The screens need a terminal");
    }
    assertThat(project.file("maven.calls")).doesNotExist();
    assertThat(project.run("demo", "--help").out()).endsWith("demo", "--help");
  }

  @ParameterizedTest
  @CsvSource({"amd64,x86_64", "x86_64,x86_64", "aarch64,aarch64", "arm,armv6"})
  void an_installed_program_is_never_built_and_has_sqlite_for_its_machine(
      String system, String library) throws Exception {
    Path installed = project.install(system);
    MadeUpProject.Run run = project.run(installed.resolve("bin/padside"), Map.of(), "predict");

    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("-Dorg.sqlite.lib.path=" + installed.resolve("native").resolve(library))
        .containsSequence("-jar", installed.resolve("padside.jar").toString(), "predict");
    assertThat(installed.resolve("target")).doesNotExist();
  }

  @Test
  void a_machine_the_package_has_no_sqlite_for_is_told_so() throws Exception {
    Path installed = project.install("riscv64");
    MadeUpProject.Run run = project.run(installed.resolve("bin/padside"), Map.of(), "predict");

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err())
        .contains("brings SQLite for amd64, arm64 and armhf", "is for riscv64", "from its sources");
  }
}
