package padside.motor;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.units.Reading;

/**
 * The motor types known, by designation: those of the table that comes with the program and those
 * the flier has entered, which stand before them.
 */
public final class MotorTable {
  /** Trade custom writes the T of a 13 mm case behind the delay: A10-3T is an A10T with 3 s. */
  private static final Pattern TRAILING_T = Pattern.compile("(.+)-([0-9]+|P)T", 0);

  /** A rocket's record and a flight's have one booster: its mass and its lot. */
  private static final int MOST_STAGES = 2;

  private final Map<String, MotorType> types = new LinkedHashMap<>();

  /** Later types of the same designation take the place of earlier ones. */
  public MotorTable(List<MotorType> types) {
    types.forEach(type -> this.types.put(key(type.designation()), type));
  }

  /**
   * What came of reading a motor file: the rows that could be read and a sentence for each other.
   */
  public record Contents(List<MotorType> types, List<String> objections) {}

  /**
   * Reads a motor file with the columns of {@code data/motors.csv}.
   *
   * @param source the file's name, for objections
   */
  public static Contents read(Reader csv, String source) throws IOException {
    return MotorFile.read(csv, source);
  }

  public List<MotorType> types() {
    return List.copyOf(types.values());
  }

  /** This table with more types over it. */
  public MotorTable with(List<MotorType> more) {
    List<MotorType> all = new ArrayList<>(types.values());
    all.addAll(more);
    return new MotorTable(all);
  }

  /** Every motor on sale: each type with each of its delays. */
  public List<MotorChoice> choices() {
    return types.values().stream()
        .flatMap(type -> type.delays().stream().map(delay -> new MotorChoice(type, delay)))
        .toList();
  }

  /** Reads a full designation such as {@code C6-5}, {@code 1/2A6-2}, {@code A10-3T}. */
  public Reading<MotorChoice> choose(String typed) {
    String wanted = key(typed);
    if (wanted.isEmpty()) {
      return Reading.refused("No motor named; type its designation with the delay, like C6-5.");
    }
    Matcher trailing = TRAILING_T.matcher(wanted);
    if (trailing.matches() && types.containsKey(trailing.group(1) + "T")) {
      wanted = trailing.group(1) + "T-" + trailing.group(2);
    }
    int dash = wanted.lastIndexOf('-');
    if (dash < 0) {
      return find(wanted)
          .map(type -> Reading.<MotorChoice>refused(needsDelay(type)))
          .orElse(Reading.refused(unknown(typed)));
    }
    String delay = wanted.substring(dash + 1);
    return find(wanted.substring(0, dash))
        .map(type -> withDelay(type, delay))
        .orElse(Reading.refused(unknown(typed)));
  }

  /**
   * Reads all motors of a flight: {@code C6-5}, {@code 3xC6-5}, {@code C6-0 then C6-7}; a comma
   * says the same as {@code then}.
   */
  public Reading<MotorStack> chooseAll(String typed) {
    List<MotorText.Part> parts = MotorText.of(typed).parts();
    if (parts.size() > MOST_STAGES) {
      return Reading.refused(
          "\"%s\" names %d stages; name two at most, like C6-0 then C6-7."
              .formatted(typed.strip(), parts.size()));
    }
    List<MotorStack.Stage> stages = new ArrayList<>();
    for (MotorText.Part part : parts) {
      if (part.count() == 0) {
        return Reading.refused("\"" + typed.strip() + "\" names no motor; type it like 3xC6-5.");
      }
      Reading<MotorChoice> motor = choose(part.motor());
      if (motor.objection().isPresent()) {
        return Reading.refused(motor.objection().get());
      }
      stages.add(new MotorStack.Stage(part.count(), motor.value().orElseThrow()));
    }
    return Reading.of(new MotorStack(stages));
  }

  /** The type with that designation, without delay. */
  public Optional<MotorType> find(String designation) {
    return Optional.ofNullable(types.get(key(designation)));
  }

  private static Reading<MotorChoice> withDelay(MotorType type, String delay) {
    if (type.delays().contains(delay)) {
      return Reading.of(new MotorChoice(type, delay));
    }
    return Reading.refused(
        type.designation()
            + " is not sold with delay \""
            + delay
            + "\"; choose "
            + sold(type)
            + ".");
  }

  private static String needsDelay(MotorType type) {
    return "Motor \"" + type.designation() + "\" needs its delay; choose " + sold(type) + ".";
  }

  private static String sold(MotorType type) {
    return type.delays().isEmpty()
        ? "another motor, this one is no longer sold"
        : String.join(", ", type.delays().stream().map(type::withDelay).toList());
  }

  private static String unknown(String typed) {
    return "No motor \""
        + typed.strip()
        + "\" in the motor table; check the designation (like C6-5) or add the motor type.";
  }

  private static String key(String designation) {
    return designation.strip().toUpperCase(Locale.ROOT);
  }
}
