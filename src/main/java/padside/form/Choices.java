package padside.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import padside.units.Notation;
import padside.units.Reading;

/**
 * Values chosen from a list by typing part of what they are called.
 *
 * @param noun what is chosen, for objections: {@code rocket}
 * @param beyond reads and shows what the list does not hold, where more than the list is allowed
 */
public record Choices<T>(String noun, List<Option<T>> options, Optional<Notation<T>> beyond)
    implements Notation<T> {
  /**
   * One choice.
   *
   * @param text what it is called and is found by
   * @param note shown beside it, such as how many are left
   */
  public record Option<T>(T value, String text, String note) {}

  /** Keeps its own list; of options called the same the later ones get a number behind. */
  public Choices {
    options = distinct(options);
  }

  /** Nothing but what the list holds. */
  public Choices(String noun, List<Option<T>> options) {
    this(noun, options, Optional.empty());
  }

  /** The list with another way to read what it does not hold. */
  public Choices<T> orElse(Notation<T> notation) {
    return new Choices<>(noun, options, Optional.of(notation));
  }

  /**
   * The options a typed text leaves: all for none; else first the one called just so, then those
   * that begin with it, then those with a word that does, then those that hold it anywhere.
   */
  public List<Option<T>> matching(String typed) {
    String wanted = fold(typed);
    if (wanted.isEmpty()) {
      return options;
    }
    return options.stream()
        .filter(option -> rank(option, wanted) < NO_MATCH)
        .sorted(Comparator.comparingInt(option -> rank(option, wanted)))
        .toList();
  }

  @Override
  public Reading<T> read(String typed) {
    String wanted = fold(typed);
    Optional<Option<T>> same =
        options.stream().filter(option -> fold(option.text).equals(wanted)).findFirst();
    if (same.isPresent()) {
      return Reading.of(same.get().value);
    }
    Optional<Reading<T>> more = beyond.map(notation -> notation.read(typed));
    List<Option<T>> matching = matching(typed);
    boolean single = matching.size() == 1 && !wanted.isEmpty();
    if (more.isPresent() && (more.get().value().isPresent() || !single)) {
      return more.get();
    }
    if (wanted.isEmpty() || matching.isEmpty()) {
      String next = options.isEmpty() ? "there is none yet" : "choose " + some(options);
      return Reading.refused(
          "No " + noun + " is called " + Reading.echo(typed) + "; " + next + ".");
    }
    return matching.size() == 1
        ? Reading.of(matching.get(0).value)
        : Reading.refused(Reading.echo(typed) + " could be " + some(matching) + "; type more.");
  }

  @Override
  public String show(T value) {
    return options.stream()
        .filter(option -> option.value.equals(value))
        .map(Option::text)
        .findFirst()
        .or(() -> beyond.map(notation -> notation.show(value)))
        .orElse("");
  }

  @Override
  public String example() {
    return options.isEmpty() ? "" : options.get(0).text;
  }

  private static final int NO_MATCH = 4;

  private static int rank(Option<?> option, String wanted) {
    String text = fold(option.text);
    if (text.equals(wanted)) {
      return 0;
    }
    if (text.startsWith(wanted)) {
      return 1;
    }
    if (text.contains(" " + wanted)) {
      return 2;
    }
    return text.contains(wanted) ? 3 : NO_MATCH;
  }

  private static <T> List<Option<T>> distinct(List<Option<T>> options) {
    Set<String> taken = new HashSet<>();
    List<Option<T>> distinct = new ArrayList<>();
    for (Option<T> option : options) {
      String text = option.text;
      for (int number = 2; !taken.add(fold(text)); number++) {
        text = option.text + " (" + number + ")";
      }
      distinct.add(new Option<>(option.value, text, option.note));
    }
    return List.copyOf(distinct);
  }

  private static String some(List<? extends Option<?>> options) {
    List<String> few = options.stream().limit(3).<String>map(Option::text).toList();
    return String.join(", ", few) + (options.size() > 3 ? " …" : "");
  }

  private static String fold(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
