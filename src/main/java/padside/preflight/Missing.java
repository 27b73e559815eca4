package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers what is needed and not there, as nouns. */
final class Missing {
  private final List<String> nouns = new ArrayList<>();

  /** The value itself; noted when it is absent. */
  <T> Optional<T> needed(String noun, Optional<T> value) {
    if (value.isEmpty()) {
      nouns.add(noun);
    }
    return value;
  }

  boolean none() {
    return nouns.isEmpty();
  }

  /** Each noun once, in the order they were first missed. */
  List<String> nouns() {
    return nouns.stream().distinct().toList();
  }
}
