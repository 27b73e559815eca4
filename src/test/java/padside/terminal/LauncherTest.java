package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code bin/padside} in a made-up project, with a Java and a Maven that only say what they got.
 */
class LauncherTest {
  private static final String MAVEN =
      """
      #!/bin/sh
      echo built >>"$PROJECT/maven.calls"
      mkdir -p "$PROJECT/target/lib"
      echo jar >"$PROJECT/target/padside.jar"
      """;
  private static final String BROKEN_MAVEN =
      """
      #!/bin/sh
      echo '[ERROR] Speed.java: cannot find symbol'
      exit 1
      """;
  private static final Instant LONG_AGO = Instant.parse("2020-01-01T00:00:00Z");

  @TempDir Path folder;
  private Path project;
  private Path tools;

  /** What one run said and how it ended. */
  private record Run(int status, List<String> out, String err) {}

  @BeforeEach
  void layOutTheProject() throws IOException {
    project = folder.resolve("a project");
    tools = Files.createDirectories(folder.resolve("tools"));
    Files.createDirectories(project.resolve("bin"));
    Files.copy(Path.of("bin/padside"), project.resolve("bin/padside"));
    write(project.resolve("src/main/Speed.java"), "source");
    write(project.resolve("data/motors.csv"), "motors");
    write(project.resolve("pom.xml"), "pom");
    for (String tool :
        List.of(
            "sh",
            "cat",
            "find",
            "flock",
            "grep",
            "head",
            "mkdir",
            "mv",
            "readlink",
            "rm",
            "sed",
            "stat",
            "tail",
            "touch",
            "sleep",
            "sync")) {
      program(tools.resolve(tool), "#!/bin/sh\nexec " + onPath(tool) + " \"$@\"\n");
    }
    jdk("jdk", "17.0.9");
    program(tools.resolve("mvn"), MAVEN);
  }

  @Test
  void the_first_start_builds_and_says_so_and_later_ones_do_not() throws Exception {
    Run first = run("predict");
    assertThat(first.err()).contains("Building Padside, once").contains("Built.");
    assertThat(first.status()).isEqualTo(7);

    assertThat(run("predict").err()).isEmpty();
    assertThat(project.resolve("maven.calls")).hasContent("built");
  }

  @Test
  void a_changed_source_is_built_again_even_when_the_clock_runs_behind() throws Exception {
    run("predict");
    Path source = project.resolve("src/main/Speed.java");
    Files.setLastModifiedTime(
        source,
        FileTime.from(Files.getLastModifiedTime(source).toInstant().plus(Duration.ofDays(3))));

    assertThat(run("predict").err()).contains("Building Padside");
    assertThat(run("predict").err()).isEmpty();
  }

  @Test
  void a_command_gets_its_arguments_as_typed_and_its_status_is_passed_on() throws Exception {
    Run run = run("predict", "--wind", "6 g 9", "", "it's", "*");

    assertThat(run.out()).endsWith("predict", "--wind", "6 g 9", "", "it's", "*");
    assertThat(run.out())
        .containsSequence("-jar", project.toRealPath().resolve("target/padside.jar").toString())
        .contains("-Dpadside.home=" + project.toRealPath());
    assertThat(run.status()).isEqualTo(7);
  }

  @Test
  void the_project_is_found_through_links() throws Exception {
    Path link = folder.resolve("link to padside");
    Files.createSymbolicLink(link, Path.of("a project/bin/padside"));
    Path second = Files.createSymbolicLink(folder.resolve("again"), link);

    assertThat(run(second, Map.of(), "flights").out())
        .contains("-Dpadside.home=" + project.toRealPath());
  }

  @Test
  void without_maven_a_sentence_names_the_command_that_installs_it() throws Exception {
    Files.delete(tools.resolve("mvn"));
    Run run = run("predict");

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err())
        .contains("Maven (mvn), which builds it, is not installed")
        .contains("sudo apt install default-jdk-headless maven");
  }

  @Test
  void a_java_too_old_is_refused_by_name_and_version() throws Exception {
    Path old = jdk("old", "11.0.2");
    Run run =
        run(project.resolve("bin/padside"), Map.of("PADSIDE_JAVA", old.toString()), "predict");

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).contains("PADSIDE_JAVA=" + old).contains("version 17 or newer");
  }

  @Test
  void a_failed_build_shows_its_last_lines_and_where_the_rest_is() throws Exception {
    program(tools.resolve("mvn"), BROKEN_MAVEN);
    Run run = run("predict");

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("The build failed", "Speed.java: cannot find symbol")
        .contains(project.toRealPath().resolve("target/build.log").toString());
  }

  @Test
  void a_failed_rebuild_starts_what_was_built_before() throws Exception {
    run("predict");
    program(tools.resolve("mvn"), BROKEN_MAVEN);
    Files.setLastModifiedTime(project.resolve("target/padside.jar"), FileTime.from(LONG_AGO));
    Run run = run("predict");

    assertThat(run.err()).contains("The build failed", "as it was built before");
    assertThat(run.out()).endsWith("predict");
    assertThat(run.status()).isEqualTo(7);
  }

  @Test
  void screens_without_a_terminal_are_refused_before_anything_is_built() throws Exception {
    for (String[] arguments : List.of(new String[] {}, new String[] {"demo"})) {
      Run run = run(arguments);
      assertThat(run.status()).isEqualTo(1);
      assertThat(run.err()).contains("The screens need a terminal");
    }
    assertThat(project.resolve("maven.calls")).doesNotExist();
    assertThat(run("demo", "--help").out()).endsWith("demo", "--help");
  }

  private Run run(String... arguments) throws IOException, InterruptedException {
    return run(project.resolve("bin/padside"), Map.of(), arguments);
  }

  private Run run(Path launcher, Map<String, String> settings, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("sh", launcher.toString()));
    command.addAll(List.of(arguments));
    File out = folder.resolve("out").toFile();
    File err = folder.resolve("err").toFile();
    ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out).redirectError(err);
    builder.environment().clear();
    builder.environment().put("PATH", tools.toString());
    builder.environment().put("PROJECT", project.toString());
    builder.environment().put("PADSIDE_JAVA", folder.resolve("jdk/bin/java").toString());
    builder.environment().putAll(settings);
    Process process = builder.start();
    process.getOutputStream().close();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).as("ended within a minute").isTrue();
    return new Run(
        process.exitValue(),
        Files.readAllLines(out.toPath(), StandardCharsets.UTF_8),
        Files.readString(err.toPath(), StandardCharsets.UTF_8));
  }

  /** A Java that prints its arguments, one a line, and ends with status 7. */
  private Path jdk(String name, String version) throws IOException {
    Path java = folder.resolve(name).resolve("bin/java");
    write(folder.resolve(name).resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    program(java, "#!/bin/sh\nprintf '%s\\n' \"$@\"\nexit 7\n");
    program(java.resolveSibling("javac"), "#!/bin/sh\n");
    return java;
  }

  private static void program(Path file, String text) throws IOException {
    write(file, text);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private static Path onPath(String tool) {
    return List.of("/usr/bin", "/bin").stream()
        .map(place -> Path.of(place, tool))
        .filter(Files::exists)
        .findFirst()
        .orElseThrow();
  }
}
