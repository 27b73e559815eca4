package padside.app;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import padside.fact.Fault;
import padside.insight.Confidence;
import padside.preflight.Settings;
import padside.safety.OwnLimits;
import padside.screen.Ease;
import padside.screen.Setting;
import padside.store.WholeFile;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Reading;
import padside.units.UnitSystem;

/**
 * The settings as the flier's file has them ({@link SettingsText}). What cannot be read is told and
 * the usual setting stands.
 *
 * @param texts what is set, by name, as its setting keeps it
 * @param told a sentence for every line that was not taken
 */
record SettingsFile(Map<String, String> texts, List<String> told) {
  /** Keeps its own. */
  SettingsFile {
    texts = Map.copyOf(texts);
    told = List.copyOf(told);
  }

  /** The flier's, from where the environment says they are kept. */
  static SettingsFile own() {
    return read(Folders.of(System.getenv()).settings());
  }

  /** Reads the file; no file means the usual settings. */
  static SettingsFile read(Path file) {
    try {
      return isThere(file)
          ? read(file, text(file).values())
          : new SettingsFile(Map.of(), List.of());
    } catch (Fault unread) {
      return new SettingsFile(
          Map.of(), List.of(unread.sentence() + " The usual settings stand. " + unread.nextStep()));
    }
  }

  /** What the file says, or a fresh one would where there is none. */
  private static SettingsText text(Path file) throws Fault {
    if (!isThere(file)) {
      return SettingsText.fresh();
    }
    try {
      SettingsText text = new SettingsText(Files.readString(file));
      text.values(); // refused here, so that nobody changes what is not understood
      return text;
    } catch (IOException | IllegalArgumentException e) {
      throw new Fault(
          "settings-not-read",
          "The settings file " + file + " cannot be read: " + why(file, e) + ".",
          "Mend it or take it away; nothing of it was changed.");
    }
  }

  private static boolean isThere(Path file) {
    return !Files.notExists(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static String why(Path file, Exception e) {
    if (e instanceof IllegalArgumentException) {
      return "a \\u in it stands without its four hexadecimal digits";
    }
    if (e instanceof CharacterCodingException) {
      return "it is no UTF-8 text";
    }
    if (e instanceof AccessDeniedException) {
      return "you have no leave to read it";
    }
    if (e instanceof NoSuchFileException) {
      return "it is a link to a file that is not there";
    }
    return Files.isDirectory(file) ? "it is a folder" : "its medium failed";
  }

  private static SettingsFile read(Path file, Map<String, String> lines) {
    Map<String, String> texts = new TreeMap<>();
    List<String> told = new ArrayList<>();
    Optional<String> units = Optional.ofNullable(lines.get(Setting.UNITS.name()));
    UnitSystem system =
        units(units.flatMap(text -> Setting.UNITS.read(text, UnitSystem.US).value()));
    lines.forEach(
        (name, value) -> {
          Reading<String> read =
              Setting.find(name)
                  .map(setting -> setting.read(value, system))
                  .orElseGet(() -> Reading.refused("It is no setting; known are " + known() + "."));
          read.value().ifPresent(text -> texts.put(name, text));
          read.objection()
              .ifPresent(
                  objection ->
                      told.add("Settings file " + file + ": " + name + " not taken. " + objection));
        });
    return new SettingsFile(texts, told);
  }

  private static String known() {
    return Setting.ALL.stream().map(Setting::name).collect(Collectors.joining(", "));
  }

  /**
   * Sets some settings, by name, and leaves the rest of the file as it is; a blank text unsets one.
   * What is given their notations have taken.
   */
  static void keep(Path file, Map<String, String> changed) throws Fault {
    SettingsText text = text(file);
    for (Map.Entry<String, String> each : changed.entrySet()) {
      Setting setting = Setting.find(each.getKey()).orElseThrow();
      text = text.with(setting, Optional.of(each.getValue()).filter(any -> !any.isBlank()));
    }
    try {
      Files.createDirectories(file.getParent());
      boolean link = Files.isSymbolicLink(file); // which stays one
      WholeFile whole = WholeFile.forOthers(link ? file.toRealPath() : file);
      whole.write(text.text());
      whole.force();
    } catch (IOException e) {
      throw new Fault(
          "settings-not-kept",
          "The settings could not be written to " + file + ".",
          "Look whether the folder is yours to write and has room; nothing of it was changed.");
    }
  }

  /** What a setting stands at; empty where nothing is set and nothing usual. */
  String text(Setting setting) {
    return texts.getOrDefault(setting.name(), setting.usual());
  }

  Settings settings() {
    UnitSystem units = units(Optional.of(text(Setting.UNITS)));
    return new Settings(
        units,
        text(Setting.RULES),
        new OwnLimits(
            set(Setting.OWN_LIMIT, () -> Notations.windSpeed(units)),
            set(Setting.OWN_CEILING, () -> Notations.altitude(units)),
            set(Setting.OWN_ROD_EXIT, () -> Notations.flightSpeed(units)),
            set(Setting.OWN_THRUST, Notations::number)),
        set(Setting.ROD_DIVISOR, Notations::number),
        new Confidence(Integer.parseInt(text(Setting.CONFIDENCE))),
        set(Setting.FLIER));
  }

  private <T> Optional<T> set(Setting setting, Supplier<Notation<T>> notation) {
    return set(setting).flatMap(text -> notation.get().read(text).value());
  }

  private static UnitSystem units(Optional<String> word) {
    return word.map(text -> Setting.constant(UnitSystem.class, text)).orElse(UnitSystem.US);
  }

  Ease ease() {
    return Ease.of(
        Setting.constant(Ease.Looks.class, text(Setting.LOOKS)),
        Setting.constant(Ease.Hands.class, text(Setting.HANDS)),
        text(Setting.GUIDE).equals(Setting.word(Setting.Led.ON)));
  }

  Setting.Clock clock() {
    return Setting.constant(Setting.Clock.class, text(Setting.CLOCK));
  }

  /** Where a second backup goes. */
  Optional<Path> secondBackup() {
    try {
      return set(Setting.SECOND_BACKUP).map(Folders::typed);
    } catch (InvalidPathException e) {
      return Optional.empty(); // on no system Padside was tried on
    }
  }

  /**
   * The program, and its own options, by which other machines are reached. No shell looks at it.
   */
  List<String> ssh() {
    return List.of(text(Setting.SSH).split("\\s+", -1));
  }

  /** The wind meter that is read while screens run. */
  Optional<WindSource> wind() {
    int minutes = Integer.parseInt(text(Setting.WIND_MINUTES));
    try {
      return set(Setting.WIND).map(place -> WindSource.of(place, minutes));
    } catch (InvalidPathException e) {
      return Optional.empty(); // on no system Padside was tried on
    }
  }

  private Optional<String> set(Setting setting) {
    return Optional.of(text(setting)).filter(text -> !text.isEmpty());
  }
}
