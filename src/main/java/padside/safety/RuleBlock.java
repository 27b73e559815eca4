package padside.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * One object of a rule file. Every reading that finds something else than it should throws with a
 * sentence that names file and place.
 *
 * @param place file and path, such as {@code my.json, values.wind_limit_mps}
 */
record RuleBlock(String place, Map<?, ?> items) {
  /** What is wrong with a rule file. */
  static final class Broken extends Exception {
    private static final long serialVersionUID = 1L;

    Broken(String sentence) {
      super(sentence);
    }
  }

  Broken broken(String what) {
    return new Broken(place + ": " + what);
  }

  /** Refuses whatever is not among these names: a misspelt rule must not be lost. */
  RuleBlock only(Set<String> names) throws Broken {
    for (Object name : items.keySet()) {
      if (!names.contains(name)) {
        throw broken(
            "\""
                + name
                + "\" is not known here; use "
                + String.join(", ", new TreeSet<>(names))
                + ".");
      }
    }
    return this;
  }

  String text(String name) throws Broken {
    return findText(name).orElseThrow(() -> broken("\"" + name + "\" is missing; add a text."));
  }

  Optional<String> findText(String name) throws Broken {
    Object item = items.get(name);
    if (item == null) {
      return Optional.empty();
    }
    if (item instanceof String text && !text.isBlank()) {
      return Optional.of(text);
    }
    throw broken("\"" + name + "\" is " + item + "; write a text in quotes.");
  }

  double number(String name) throws Broken {
    return findNumber(name)
        .orElseThrow(() -> broken("\"" + name + "\" is missing; add a number above 0."));
  }

  Optional<Double> findNumber(String name) throws Broken {
    Object item = items.get(name);
    if (item == null) {
      return Optional.empty();
    }
    if (item instanceof Number number
        && number.doubleValue() > 0
        && Double.isFinite(number.doubleValue())) {
      return Optional.of(number.doubleValue());
    }
    throw broken("\"" + name + "\" is " + item + "; write a number above 0.");
  }

  Optional<RuleBlock> findBlock(String name) throws Broken {
    Object item = items.get(name);
    if (item == null) {
      return Optional.empty();
    }
    return Optional.of(block(within(name), item));
  }

  List<RuleBlock> blocks(String name) throws Broken {
    Object item = items.get(name);
    if (item == null) {
      return List.of();
    }
    if (!(item instanceof List<?> list)) {
      throw broken("\"" + name + "\" is " + item + "; write a list in [ ].");
    }
    List<RuleBlock> blocks = new ArrayList<>();
    for (Object each : list) {
      blocks.add(block(within(name) + " " + (blocks.size() + 1), each));
    }
    return blocks;
  }

  private static RuleBlock block(String place, Object item) throws Broken {
    if (item instanceof Map<?, ?> map) {
      return new RuleBlock(place, map);
    }
    throw new Broken(place + ": is " + item + "; write an object in { }.");
  }

  private String within(String name) {
    return place.contains(", ") ? place + "." + name : place + ", " + name;
  }
}
