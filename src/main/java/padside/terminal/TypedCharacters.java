package padside.terminal;

import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.text.Normalizer;
import java.util.List;

/**
 * Everything that does not start with an escape: typing, Control with a letter, Enter, Tab and
 * Backspace. A letter followed at once by marks, as pasted text may bring it, is composed into one
 * character (Unicode normalisation form C).
 */
final class TypedCharacters implements CharacterPattern {
  private static final int MOST_MARKS = 4;

  @Override
  public Matching match(List<Character> typed) {
    char first = typed.get(0);
    if (SequenceState.isControl(first) || first == 0x7f) {
      return typed.size() == 1 && first != 0x1b ? new Matching(control(first)) : null;
    }
    if (typed.size() == 1) {
      return new Matching(Character.isLetter(first), new KeyStroke(first, false, false));
    }
    StringBuilder text = new StringBuilder();
    typed.forEach(text::append);
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    boolean one = composed.length() == 1;
    return one
        ? new Matching(typed.size() <= MOST_MARKS, new KeyStroke(composed.charAt(0), false, false))
        : null;
  }

  private static KeyStroke control(char code) {
    return switch (code) {
      case '\n', '\r' -> new KeyStroke(KeyType.Enter);
      case '\t' -> new KeyStroke(KeyType.Tab);
      case '\b', 0x7f -> new KeyStroke(KeyType.Backspace);
      default ->
          code >= 1 && code <= 26
              ? new KeyStroke((char) ('a' + code - 1), true, false)
              : new KeyStroke(KeyType.Unknown);
    };
  }
}
