package padside.screen;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import padside.fact.Column;
import padside.fact.Facts;
import padside.form.Choices;
import padside.form.FormField;
import padside.form.Texts;
import padside.insight.Confidence;
import padside.preflight.Settings;
import padside.units.Length;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Reading;
import padside.units.Speed;
import padside.units.UnitSystem;

/**
 * One of the things a flier may set, as declared: the settings file, its comments, the screen and
 * the command all go by it. Set is a text that its notation takes.
 *
 * @param name what it is called in the file
 * @param label what it is called on the screen
 * @param meaning what it does, in a sentence
 * @param usual what stands where nothing is set; empty for nothing
 * @param notation reads a text into the one that is kept, by the units set
 * @param atOnce whether it holds from the moment it is set, not from the next start on
 */
public record Setting(
    String name,
    String label,
    String meaning,
    String usual,
    Function<UnitSystem, Notation<String>> notation,
    boolean atOnce) {
  /** Whether the machine's clock is believed. */
  public enum Clock {
    /** As far as the operating system vouches for it; else the flier is asked. */
    ASK,
    /** Always. */
    TRUSTED
  }

  /** Whether a first card is led. */
  public enum Led {
    ON,
    OFF
  }

  public static final Setting UNITS =
      words(
          "units",
          "Units",
          "What a number typed without a unit means, and what is shown.",
          UnitSystem.US,
          true);

  public static final Setting RULES =
      new Setting(
          "rules",
          "Safety code",
          "The code every card is held against; yours is the one where you fly.",
          "us-model",
          units -> choices("safety code", Settings.ruleSets()),
          true);

  public static final Setting OWN_LIMIT =
      new Setting(
          "own-limit",
          "Own wind limit",
          "The most wind you fly in, whatever the code allows; blank for no limit of your own.",
          "",
          units -> shown(Notations.windSpeed(units), Speed::metresPerSecond),
          true);

  public static final Setting ROD_DIVISOR =
      new Setting(
          "rod-divisor",
          "Rod divisor",
          "How many times the wind a rocket's speed off the rod shall be: 1 to 20; blank for the"
              + " usual.",
          "",
          units -> within(1, 20, "4"),
          true);

  public static final Setting OWN_CEILING =
      new Setting(
          "own-ceiling",
          "Own ceiling",
          "The highest apogee you fly to, such as a waiver's; blank for no ceiling of your own.",
          "",
          units -> shown(Notations.altitude(units), Length::metres),
          true);

  public static final Setting OWN_ROD_EXIT =
      new Setting(
          "own-rod-exit",
          "Own rod exit",
          "The least speed off the rod you fly with, where the rules ask for less; blank for none.",
          "",
          units -> shown(Notations.flightSpeed(units), Speed::metresPerSecond),
          true);

  public static final Setting OWN_THRUST =
      new Setting(
          "own-thrust",
          "Own thrust/weight",
          "The least thrust over weight you fly with, where the rules ask for less: 1 to 50; blank"
              + " for none.",
          "",
          units -> within(1, 50, "6"),
          true);

  public static final Setting CONFIDENCE =
      new Setting(
          "confidence",
          "Confidence",
          "How many flights in 100 predictions hold, 50 to 99. Failures and delays keep 95, so that no"
              + " lot looks safer.",
          String.valueOf(Confidence.usual().percent()),
          units -> ofHundred(whole(Confidence.LEAST, Confidence.MOST, "90")),
          true);

  public static final Setting FLIER =
      new Setting(
          "flier",
          "Flier",
          "Your name as pages have it: day sheet, season, blank cards, the report of a failed motor.",
          "",
          units -> new Texts("Ann Example"),
          true);

  public static final Setting LOOKS =
      words(
          "looks",
          "Looks",
          "How the screens are coloured; F8 changes it anywhere.",
          Ease.usual().looks(),
          true);

  public static final Setting HANDS =
      words(
          "hands",
          "Hands",
          "Cold ones have lines apart and no key counts twice at once; F12 changes it anywhere.",
          Ease.usual().hands(),
          true);

  public static final Setting GUIDE =
      words(
          "guide",
          "Guide",
          "Whether a line leads through the first card of a log; Ctrl-G turns it off and on.",
          Led.ON,
          true);

  public static final Setting CLOCK =
      words(
          "clock",
          "Clock",
          "Whether to ask for the time where nothing vouches for the machine's clock.",
          Clock.ASK,
          false);

  public static final Setting SECOND_BACKUP =
      new Setting(
          "backup.second",
          "Second backup",
          "A folder, on another medium, that every backup goes to as well; blank for none.",
          "",
          units -> new Texts("~/second"),
          true);

  public static final Setting SSH =
      new Setting(
          "sync.ssh",
          "Sync by ssh with",
          "The ssh program and its own options, words apart by blanks; no shell looks at them.",
          "ssh",
          units -> new Texts("ssh -p 2222"),
          false);

  public static final Setting WIND =
      new Setting(
          "wind.source",
          "Wind meter",
          "One that sends lines: a serial device, a file, a named pipe or simulated; blank for none.",
          "",
          units -> new Texts("/dev/ttyUSB0"),
          false);

  public static final Setting WIND_MINUTES =
      new Setting(
          "wind.minutes",
          "Wind minutes",
          "How many minutes the meter's wind is averaged over, 1 to 60.",
          "2",
          units -> whole(1, 60, "2"),
          false);

  /** All, in the order they are told. */
  public static final List<Setting> ALL =
      List.of(
          UNITS,
          RULES,
          OWN_LIMIT,
          OWN_CEILING,
          OWN_ROD_EXIT,
          OWN_THRUST,
          ROD_DIVISOR,
          CONFIDENCE,
          FLIER,
          LOOKS,
          HANDS,
          GUIDE,
          SECOND_BACKUP,
          CLOCK,
          SSH,
          WIND,
          WIND_MINUTES);

  /** The one of that name. */
  public static Optional<Setting> find(String name) {
    return ALL.stream().filter(setting -> setting.name.equals(name.strip())).findFirst();
  }

  /** The text that is kept of a typed one, which is not blank. */
  public Reading<String> read(String typed, UnitSystem units) {
    return notation.apply(units).read(typed.strip());
  }

  /** A constant's word: {@code black-on-white}. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The constant a setting's text stands for. */
  public static <E extends Enum<E>> E constant(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** What it does, and what it may be where that is one of some words. */
  public String explained() {
    return notation.apply(UnitSystem.US) instanceof Choices<String> choices
        ? meaning
            + " One of "
            + choices.options().stream().map(Choices.Option::text).collect(Collectors.joining(", "))
            + "."
        : meaning;
  }

  /** A text it takes, for where none is usual. */
  public String example() {
    return notation.apply(UnitSystem.US).example();
  }

  /** The file's line for it. */
  public String line(String text) {
    return name + " = " + text.replace("\\", "\\\\");
  }

  /** The field it is set in. */
  FormField<String> field(UnitSystem units) {
    Notation<String> read = notation.apply(units);
    String hint = meaning + (atOnce ? "" : " From the next start on.");
    return read instanceof Choices<String> choices
        ? FormField.choice(column(), label, choices, hint)
        : FormField.of(column(), label, read, hint);
  }

  private Column<String> column() {
    return Column.text(name, meaning);
  }

  /** As a form has it. */
  Facts with(Facts facts, String text) {
    return text.isEmpty() ? facts : facts.with(column(), text);
  }

  private static <E extends Enum<E>> Setting words(
      String name, String label, String meaning, E usual, boolean atOnce) {
    List<String> words =
        Arrays.stream(usual.getDeclaringClass().getEnumConstants()).map(Setting::word).toList();
    return new Setting(
        name,
        label,
        meaning,
        word(usual),
        units -> choices("choice of " + label.toLowerCase(Locale.ROOT), words),
        atOnce);
  }

  private static Choices<String> choices(String noun, List<String> words) {
    return new Choices<>(
        noun, words.stream().map(word -> new Choices.Option<>(word, word, "")).toList());
  }

  /** A quantity, kept with its unit so that it stays what it is under other units. */
  private static <T> Notation<String> shown(Notation<T> notation, ToDoubleFunction<T> size) {
    return new Kept(
        typed -> {
          Reading<T> read = notation.read(typed);
          if (read.value().filter(value -> size.applyAsDouble(value) < 0).isPresent()) {
            return Reading.refused(
                Reading.echo(typed)
                    + " is below zero; write one like "
                    + notation.example()
                    + ", or leave it blank.");
          }
          boolean itself = typed.chars().anyMatch(Character::isLetter); // nothing is rounded
          return read.map(value -> itself ? typed : notation.show(value));
        },
        notation.example());
  }

  /** As well with the sign a share of a hundred is often written with. */
  private static Notation<String> ofHundred(Notation<String> number) {
    return new Kept(
        typed -> {
          Reading<String> bare = number.read(typed.replaceFirst("\\s*%$", ""));
          return bare.value().isPresent() ? bare : number.read(typed);
        },
        number.example());
  }

  private static Notation<String> whole(int least, int most, String example) {
    Notation<String> number = within(least, most, example);
    return new Kept(
        typed -> {
          Reading<String> read = number.read(typed);
          return read.value().filter(text -> !text.matches("\\d+")).isPresent()
              ? Reading.refused(
                  Reading.echo(typed) + " is no whole number; write one like " + example + ".")
              : read;
        },
        example);
  }

  private static Notation<String> within(double least, double most, String example) {
    Notation<Double> number = Notations.number();
    return new Kept(
        typed ->
            number.read(typed).value().filter(each -> each >= least && each <= most).isPresent()
                ? Reading.of(typed.strip())
                : Reading.refused(
                    Reading.echo(typed)
                        + " is no number from %s to %s; write one like %s."
                            .formatted(number.show(least), number.show(most), example)),
        example);
  }

  /** Reads a typed text into the one that is kept, which is shown as it is. */
  private record Kept(Function<String, Reading<String>> reading, String example)
      implements Notation<String> {
    @Override
    public Reading<String> read(String typed) {
      return reading.apply(typed);
    }

    @Override
    public String show(String value) {
      return value;
    }
  }
}
