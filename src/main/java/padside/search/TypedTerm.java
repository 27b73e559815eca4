package padside.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One word or filter of a typed line.
 *
 * @param filter what stands before the colon; absent of a word
 * @param quoted whether any of it stood in quotes
 */
record TypedTerm(Optional<String> filter, String text, boolean quoted) {
  /** Those of a line, one behind the other; quotes not closed yet reach to its end. */
  static List<TypedTerm> in(String line) {
    List<TypedTerm> terms = new ArrayList<>();
    Building term = new Building();
    boolean within = false;
    for (int i = 0; i < line.length(); i++) {
      char letter = line.charAt(i);
      if (letter == '"') {
        within = !within;
        term.quoted = true;
      } else if (!within && Character.isWhitespace(letter)) {
        term.end(terms);
        term = new Building();
      } else {
        term.take(letter, within);
      }
    }
    term.end(terms);
    return List.copyOf(terms);
  }

  /** One that is being read. */
  private static final class Building {
    private final StringBuilder text = new StringBuilder();
    private Optional<String> filter = Optional.empty();
    private boolean quoted;

    /** A colon behind letters outside quotes ends a filter's name; a time of day has digits. */
    void take(char letter, boolean within) {
      boolean names =
          letter == ':' && !within && !quoted && filter.isEmpty() && isName(text.toString());
      if (names) {
        filter = Optional.of(text.toString());
        text.setLength(0);
      } else {
        text.append(letter);
      }
    }

    private static boolean isName(String text) {
      return !text.isEmpty() && text.chars().allMatch(Character::isLetter);
    }

    void end(List<TypedTerm> terms) {
      if (filter.isPresent() || !text.toString().isBlank()) {
        terms.add(new TypedTerm(filter, text.toString(), quoted));
      }
    }
  }
}
