package padside.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where this flier's files lie, by the XDG base directory specification 0.8. */
record Folders(Path data, Path config) {
  /** Reads the environment; without a home the working folder must do. */
  static Folders of(Map<String, String> environment) {
    Path home = home(environment);
    return new Folders(
        set(environment, "XDG_DATA_HOME").orElse(home.resolve(".local/share")).resolve("padside"),
        set(environment, "XDG_CONFIG_HOME").orElse(home.resolve(".config")).resolve("padside"));
  }

  /** The log that is opened when none is named. */
  Path log() {
    return data.resolve("log");
  }

  /** The log of the made-up season. */
  Path demo() {
    return data.resolve("demo");
  }

  /** Where pages are put that are written from the screens. */
  Path pages() {
    return data.resolve("pages");
  }

  Path settings() {
    return config.resolve("settings.properties");
  }

  /** Where a copy may lie for as long as the program runs. */
  static Path temporary() {
    return Path.of(System.getProperty("java.io.tmpdir"));
  }

  /** Where what could not be written to the log is put when the program ends, the first first. */
  static List<Path> ofLastResort() {
    String unsaved = "padside-unsaved";
    return List.of(home().resolve(unsaved), temporary().resolve(unsaved));
  }

  /** A folder as typed: a tilde stands for the home folder. */
  static Path typed(String text) {
    boolean atHome = text.equals("~") || text.startsWith("~/");
    return atHome ? home().resolve(text.substring(Math.min(2, text.length()))) : Path.of(text);
  }

  private static Path home() {
    return home(System.getenv());
  }

  private static Path home(Map<String, String> environment) {
    return Path.of(environment.getOrDefault("HOME", "."));
  }

  /** The specification has relative paths ignored. */
  private static Optional<Path> set(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name))
        .filter(value -> !value.isBlank())
        .map(Path::of)
        .filter(Path::isAbsolute);
  }
}
