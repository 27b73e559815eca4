package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.screen.Setting;
import padside.store.LogFolder;

/** A machine SQLite's library was not made for: played by a name no machine of today has. */
class NoLibraryTest {
  @TempDir Path folder;

  @Test
  void it_is_said_and_the_log_is_left_as_it_was() throws Exception {
    Path log = folder.resolve("log");
    try (LogFolder made = LogFolder.open(log, new ThisMachine(Setting.Clock.TRUSTED))) {
      made.save(Action.create("", Kind.ROCKET, Facts.none().with(Rocket.NAME, "Plum")));
    }
    Map<Path, byte[]> before = files(log);

    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dos.arch=vax",
                "-cp",
                System.getProperty("java.class.path"),
                Padside.class.getName(),
                "--log",
                log.toString(),
                "flights")
            .start();
    String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor()).isEqualTo(Exit.FAULT);
    assertThat(said.lines())
        .containsExactly(
            "padside: SQLite, which keeps the log in "
                + log
                + ", cannot be loaded on this machine.",
            "Start Padside by bin/padside; by java -jar, name with -Djava.io.tmpdir= a folder where"
                + " programs may be run. The log is as it was.");
    assertThat(files(log)).usingRecursiveComparison().isEqualTo(before);
  }

  private static Map<Path, byte[]> files(Path folder) throws IOException {
    Map<Path, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file), Files.readAllBytes(file));
      }
    }
    return files;
  }
}
