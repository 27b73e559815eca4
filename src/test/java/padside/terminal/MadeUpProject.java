package padside.terminal;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * {@code bin/padside} in a made-up project, with a Java and a Maven that only note what they got,
 * and no program besides them but those the launcher may count on.
 */
final class MadeUpProject {
  /** How the made-up Java ends. */
  static final int STATUS = 7;

  private static final List<String> EVERY_SYSTEM_HAS =
      List.of(
          "sh",
          "cat",
          "clear",
          "find",
          "flock",
          "grep",
          "mkdir",
          "mv",
          "readlink",
          "rm",
          "sed",
          "sleep",
          "stat",
          "stty",
          "sync",
          "tail",
          "touch");
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
  private static final String JAVA =
      """
      #!/bin/sh
      for argument in "$@"; do
        printf '%s\\n' "$argument"
        case $argument in
          -XX:ArchiveClassesAtExit=*) echo classes >"${argument#*=}" ;;
        esac
      done
      exit 7
      """;

  private final Path folder;
  private final Path project;
  private final Path tools;

  /** What one run said and how it ended. */
  record Run(int status, List<String> out, String err) {}

  MadeUpProject(Path folder) throws IOException {
    this.folder = folder.toRealPath();
    this.project = this.folder.resolve("a project");
    this.tools = this.folder.resolve("tools");
    write(file("bin/padside"), Files.readString(Path.of("bin/padside")));
    write(file("src/main/Speed.java"), "source");
    write(file("data/motors.csv"), "motors");
    write(file("pom.xml"), "pom");
    for (String tool : EVERY_SYSTEM_HAS) {
      program(tools.resolve(tool), "#!/bin/sh\nexec " + onPath(tool) + " \"$@\"\n");
    }
    jdk("jdk", "17.0.9");
    program(tools.resolve("mvn"), MAVEN);
  }

  Path file(String name) {
    return project.resolve(name);
  }

  void breakMaven() throws IOException {
    program(tools.resolve("mvn"), BROKEN_MAVEN);
  }

  void removeMaven() throws IOException {
    Files.delete(tools.resolve("mvn"));
  }

  /** As a package lays the program down: built, without sources or anything to build with. */
  Path install(String system) throws IOException {
    Path installed = folder.resolve("usr/lib/padside");
    write(installed.resolve("bin/padside"), Files.readString(Path.of("bin/padside")));
    write(installed.resolve("padside.jar"), "jar");
    write(installed.resolve("build-sum"), "5eed\n");
    for (String machine : List.of("x86_64", "aarch64", "armv6")) {
      write(installed.resolve("native/" + machine + "/libsqlitejdbc.so"), "SQLite");
    }
    Files.writeString(
        folder.resolve("jdk/release"),
        "OS_ARCH=\"" + system + "\"\n",
        java.nio.file.StandardOpenOption.APPEND);
    removeMaven();
    return installed;
  }

  /** A Java that prints its arguments, one a line, and archives classes when asked. */
  Path jdk(String name, String version) throws IOException {
    Path home = folder.resolve(name);
    write(
        home.resolve("release"),
        "JAVA_VERSION=\"" + version + "\"\nJAVA_RUNTIME_VERSION=\"" + version + "+9\"\n");
    program(home.resolve("bin/javac"), "#!/bin/sh\n");
    program(home.resolve("bin/java"), JAVA);
    return home.resolve("bin/java");
  }

  /** Lets the project's Java do something else. */
  void javaDoes(String script) throws IOException {
    program(folder.resolve("jdk/bin/java"), "#!/bin/sh\n" + script);
  }

  Map<String, String> environment() {
    return Map.of(
        "PATH", tools.toString(),
        "PROJECT", project.toString(),
        "PADSIDE_JAVA", folder.resolve("jdk/bin/java").toString());
  }

  Run run(String... arguments) throws IOException, InterruptedException {
    return run(file("bin/padside"), Map.of(), arguments);
  }

  Run run(Path launcher, Map<String, String> settings, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("sh", launcher.toString()));
    command.addAll(List.of(arguments));
    File out = folder.resolve("out").toFile();
    File err = folder.resolve("err").toFile();
    Map<String, String> environment = new HashMap<>(environment());
    environment.putAll(settings);
    ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out).redirectError(err);
    builder.environment().clear();
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      throw new AssertionError("not ended within a minute");
    }
    return new Run(
        process.exitValue(),
        Files.readAllLines(out.toPath(), StandardCharsets.UTF_8),
        Files.readString(err.toPath(), StandardCharsets.UTF_8));
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
        .orElseThrow(() -> new UncheckedIOException(new IOException("no " + tool + " here")));
  }
}
