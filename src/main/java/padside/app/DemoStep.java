package padside.app;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * One step of the season's script: words with the text the flier typed. The first word says what is
 * done, its text to what.
 */
record DemoStep(Map<String, String> words) {
  /** Keeps its own words in the same order. */
  DemoStep {
    words = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }

  /** What is done: a kind of record to add, {@code mended} or {@code recounted}. */
  String does() {
    return words.keySet().iterator().next();
  }

  /** The name, date or time it is done with. */
  String subject() {
    return words.get(does());
  }

  Optional<String> find(String word) {
    return Optional.ofNullable(words.get(word));
  }

  String get(String word) {
    return find(word).orElseThrow(() -> wrong("has no " + word));
  }

  /** A factor the flier does not know, 1 where the script has none. */
  double factor(String word) {
    return find(word).map(Double::parseDouble).orElse(1.0);
  }

  IllegalStateException wrong(String why) {
    return new IllegalStateException("The step " + words + " " + why);
  }
}
