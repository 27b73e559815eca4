package padside.app;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeSet;
import padside.preflight.Settings;
import padside.screen.Ease;
import padside.sync.SshPartner;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.UnitSystem;

/**
 * The settings as the flier's file has them: one {@code name = value} a line, {@code #} begins a
 * comment. What cannot be read is told and the usual setting stands.
 *
 * @param secondBackup where a second backup goes
 * @param ssh the program, and its own options, by which other machines are reached
 * @param wind the wind meter that is read while screens run
 * @param told a sentence for every line that was not taken
 */
record SettingsFile(
    Settings settings,
    Ease ease,
    ThisMachine.Clock clock,
    Optional<Path> secondBackup,
    List<String> ssh,
    Optional<WindSource> wind,
    List<String> told) {
  private static final String UNITS = "units";
  private static final String RULES = "rules";
  private static final String OWN_LIMIT = "own-limit";
  private static final String ROD_DIVISOR = "rod-divisor";
  private static final String LOOKS = "looks";
  private static final String HANDS = "hands";
  private static final String SECOND_BACKUP = "backup.second";
  private static final String CLOCK = "clock";
  private static final String SSH = "sync.ssh";
  private static final String WIND = "wind.source";
  private static final String WIND_MINUTES = "wind.minutes";
  private static final List<String> KNOWN =
      List.of(
          UNITS,
          RULES,
          OWN_LIMIT,
          ROD_DIVISOR,
          LOOKS,
          HANDS,
          CLOCK,
          SECOND_BACKUP,
          SSH,
          WIND,
          WIND_MINUTES);

  /** The flier's, from where the environment says they are kept. */
  static SettingsFile own() {
    return read(Folders.of(System.getenv()).settings());
  }

  /** Reads the file; no file means the usual settings. */
  static SettingsFile read(Path file) {
    Properties lines = new Properties();
    if (!Files.exists(file)) {
      return new Lines(file, lines).read();
    }
    try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      lines.load(text);
    } catch (IOException | IllegalArgumentException e) {
      SettingsFile usual = new Lines(file, new Properties()).read();
      return new SettingsFile(
          usual.settings,
          usual.ease,
          usual.clock,
          usual.secondBackup,
          usual.ssh,
          usual.wind,
          List.of("The settings file " + file + " cannot be read; the usual settings stand."));
    }
    return new Lines(file, lines).read();
  }

  /** The lines of one file being read. */
  private static final class Lines {
    private final Path file;
    private final Properties lines;
    private final List<String> told = new ArrayList<>();

    Lines(Path file, Properties lines) {
      this.file = file;
      this.lines = lines;
    }

    SettingsFile read() {
      UnitSystem units = word(UNITS, UnitSystem.class, UnitSystem.US);
      Settings settings =
          new Settings(
              units,
              lines.getProperty(RULES, Settings.standard().ruleSet()).strip(),
              ownLimit(units),
              rodDivisor());
      Ease usual = Ease.usual();
      Ease ease =
          new Ease(
              word(LOOKS, Ease.Looks.class, usual.looks()),
              word(HANDS, Ease.Hands.class, usual.hands()));
      ThisMachine.Clock clock = word(CLOCK, ThisMachine.Clock.class, ThisMachine.Clock.ASK);
      for (String name : new TreeSet<>(lines.stringPropertyNames())) {
        if (!KNOWN.contains(name)) {
          tell(name, "is no setting; known are " + String.join(", ", KNOWN));
        }
      }
      return new SettingsFile(
          settings, ease, clock, secondBackup(), ssh(), wind(), List.copyOf(told));
    }

    private Optional<WindSource> wind() {
      int minutes = windMinutes();
      try {
        return value(WIND)
            .map(
                typed ->
                    typed.equalsIgnoreCase(WindSource.SIMULATED)
                        ? Optional.<Path>empty()
                        : Optional.of(Folders.typed(typed)))
            .map(place -> new WindSource(place, minutes));
      } catch (InvalidPathException e) {
        tell(WIND, "is no name of a device, file or pipe: " + e.getReason());
        return Optional.empty();
      }
    }

    private int windMinutes() {
      Optional<String> typed = value(WIND_MINUTES);
      Optional<Integer> minutes =
          typed
              .filter(text -> text.matches("\\d{1,2}"))
              .map(Integer::valueOf)
              .filter(number -> number >= 1 && number <= WindSource.MOST_MINUTES);
      if (typed.isPresent() && minutes.isEmpty()) {
        String most = " to " + WindSource.MOST_MINUTES + ", like " + WindSource.USUAL_MINUTES;
        tell(WIND_MINUTES, "is \"" + typed.get() + "\"; write whole minutes from 1" + most);
      }
      return minutes.orElse(WindSource.USUAL_MINUTES);
    }

    /** Words apart by blanks, as no shell looks at them. */
    private List<String> ssh() {
      return value(SSH).map(value -> List.of(value.split("\\s+", -1))).orElse(SshPartner.USUAL);
    }

    private Optional<Path> secondBackup() {
      try {
        return value(SECOND_BACKUP).map(Folders::typed);
      } catch (InvalidPathException e) {
        tell(SECOND_BACKUP, "is no folder's name: " + e.getReason());
        return Optional.empty();
      }
    }

    private <E extends Enum<E>> E word(String name, Class<E> type, E usual) {
      Optional<String> value = value(name);
      if (value.isEmpty()) {
        return usual;
      }
      String wanted = value.get().toUpperCase(Locale.ROOT).replace('-', '_');
      for (E constant : type.getEnumConstants()) {
        if (constant.name().equals(wanted)) {
          return constant;
        }
      }
      List<String> known = new ArrayList<>();
      for (E constant : type.getEnumConstants()) {
        known.add(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
      }
      tell(name, "is \"" + value.get() + "\"; choose " + String.join(" or ", known));
      return usual;
    }

    private Optional<Speed> ownLimit(UnitSystem units) {
      Optional<String> typed = value(OWN_LIMIT);
      if (typed.isEmpty()) {
        return Optional.empty();
      }
      var reading = Notations.windSpeed(units).read(typed.get());
      reading.objection().ifPresent(objection -> tell(OWN_LIMIT, "was not taken: " + objection));
      return reading.value();
    }

    private Optional<Double> rodDivisor() {
      Optional<String> typed = value(ROD_DIVISOR);
      if (typed.isEmpty()) {
        return Optional.empty();
      }
      Optional<Double> divisor =
          Notations.number().read(typed.get()).value().filter(number -> number >= 1);
      if (divisor.isEmpty()) {
        tell(ROD_DIVISOR, "is \"" + typed.get() + "\"; write a number of at least 1, like 4");
      }
      return divisor;
    }

    private Optional<String> value(String name) {
      return Optional.ofNullable(lines.getProperty(name))
          .map(String::strip)
          .filter(value -> !value.isEmpty());
    }

    private void tell(String name, String what) {
      told.add("Settings file " + file + ": " + name + " " + what + ".");
    }
  }
}
