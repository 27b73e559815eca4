package padside.motor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import padside.fact.RecordId;

/**
 * The motors of a flight as one line has them, taken apart but not looked up: {@code C6-5}, {@code
 * 3xC6-5}, {@code C6-0 then C6-7}. A comma between two stages says the same as {@code then}.
 *
 * @param parts one for each stage, from the ground up; never empty
 */
public record MotorText(List<Part> parts) {
  /** What stands between two stages where the line is written by the program. */
  public static final String THEN = " then ";

  private static final Pattern CLUSTER = Pattern.compile("([0-9]{1,2}) ?[xX×] ?(.+)");
  private static final Pattern NEXT_STAGE = Pattern.compile("\\s*,\\s*|\\s+(?i:then)\\s+");

  /**
   * The motors of one stage.
   *
   * @param count as written; 1 where none is
   * @param motor what stands for the designation, perhaps nothing
   */
  public record Part(int count, String motor) {}

  /** Keeps its own list. */
  public MotorText {
    parts = List.copyOf(parts);
  }

  /** Takes a line apart; whatever it says, there is at least one part. */
  public static MotorText of(String line) {
    String whole = line.strip();
    if (isPlain(whole)) {
      return new MotorText(List.of(new Part(1, whole)));
    }
    List<Part> parts = new ArrayList<>();
    for (String stage : NEXT_STAGE.split(whole, -1)) {
      Matcher cluster = CLUSTER.matcher(stage.strip());
      parts.add(
          cluster.matches()
              ? new Part(Integer.parseInt(cluster.group(1)), cluster.group(2))
              : new Part(1, stage.strip()));
    }
    return new MotorText(parts);
  }

  /** Nearly every line, of which hundreds of thousands are taken apart. */
  private static boolean isPlain(String line) {
    boolean begins = !line.isEmpty() && !Character.isDigit(line.charAt(0));
    return begins && line.indexOf(',') < 0 && line.indexOf(' ') < 0 && line.indexOf('\t') < 0;
  }

  /** In as few letters as can be read again: {@code C6-0,C6-7}. */
  public String brief() {
    return parts.stream()
        .map(part -> (part.count() == 1 ? "" : part.count() + "x") + part.motor())
        .collect(Collectors.joining(","));
  }

  /** The topmost stage. */
  public Part top() {
    return parts.get(parts.size() - 1);
  }

  /** The lowest of several stages. */
  public Optional<Part> booster() {
    return parts.size() > 1 ? Optional.of(parts.get(0)) : Optional.empty();
  }

  /**
   * How many motors a flight takes from each lot it names: a stage all of its motors, an unread
   * motor one.
   *
   * @param lot of the topmost stage
   * @param boosterLot of the lowest one; of one stage alone it is passed over
   */
  public static Map<RecordId, Integer> fired(
      Optional<String> motor, Optional<RecordId> lot, Optional<RecordId> boosterLot) {
    MotorText text = of(motor.orElse(""));
    Map<RecordId, Integer> fired = new LinkedHashMap<>();
    lot.ifPresent(id -> fired.put(id, Math.max(1, text.top().count())));
    text.booster()
        .ifPresent(part -> boosterLot.ifPresent(id -> fired.merge(id, part.count(), Integer::sum)));
    return fired;
  }
}
