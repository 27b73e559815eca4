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
 */
public record Choices<T>(String noun, List<Option<T>> options) implements Notation<T> {
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
    List<Option<T>> matching = matching(typed);
    if (wanted.isEmpty() || matching.isEmpty()) {
      return Reading.refused(
          "No " + noun + " is called \"" + typed.strip() + "\"; choose " + some(options) + ".");
    }
    return matching.size() == 1
        ? Reading.of(matching.get(0).value)
        : Reading.refused("\"" + typed.strip() + "\" could be " + some(matching) + "; type more.");
  }

  @Override
  public String show(T value) {
    return options.stream()
        .filter(option -> option.value.equals(value))
        .map(Option::text)
        .findFirst()
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
    if (options.isEmpty()) {
      return "nothing yet: the list is empty";
    }
    List<String> few = options.stream().limit(3).<String>map(Option::text).toList();
    return String.join(", ", few) + (options.size() > 3 ? " …" : "");
  }

  private static String fold(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
