package padside.terminal;

import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.List;
import java.util.Map;

/**
 * Everything that starts with an escape: the keys of xterm and its kin, rxvt, the text console and
 * the numeric keypad. What is no key known here is recognised whole and answered as {@link
 * KeyType#Unknown}, so that none of it is taken for typing. Shift, Control and Alt held with an
 * arrow or function key make no difference.
 */
final class KeySequences implements CharacterPattern {
  private static final char ESC = 0x1b;

  /** By the last character of {@code ESC [ … x} and {@code ESC O x}. */
  private static final Map<Character, KeyType> BY_FINAL =
      Map.ofEntries(
          Map.entry('A', KeyType.ArrowUp),
          Map.entry('B', KeyType.ArrowDown),
          Map.entry('C', KeyType.ArrowRight),
          Map.entry('D', KeyType.ArrowLeft),
          Map.entry('H', KeyType.Home),
          Map.entry('F', KeyType.End),
          Map.entry('P', KeyType.F1),
          Map.entry('Q', KeyType.F2),
          Map.entry('R', KeyType.F3),
          Map.entry('S', KeyType.F4),
          Map.entry('Z', KeyType.ReverseTab));

  /** By the number in {@code ESC [ n ~}; rxvt ends it with {@code ^} or {@code @} too. */
  private static final Map<String, KeyType> BY_NUMBER =
      Map.ofEntries(
          Map.entry("1", KeyType.Home),
          Map.entry("3", KeyType.Delete),
          Map.entry("4", KeyType.End),
          Map.entry("5", KeyType.PageUp),
          Map.entry("6", KeyType.PageDown),
          Map.entry("7", KeyType.Home),
          Map.entry("8", KeyType.End),
          Map.entry("11", KeyType.F1),
          Map.entry("12", KeyType.F2),
          Map.entry("13", KeyType.F3),
          Map.entry("14", KeyType.F4),
          Map.entry("15", KeyType.F5),
          Map.entry("17", KeyType.F6),
          Map.entry("18", KeyType.F7),
          Map.entry("19", KeyType.F8),
          Map.entry("20", KeyType.F9),
          Map.entry("21", KeyType.F10),
          Map.entry("23", KeyType.F11),
          Map.entry("24", KeyType.F12));

  /** The keypad in application mode, {@code ESC O x}. */
  private static final String KEYPAD_CODES = "jklmnopqrstuvwxyX";

  private static final String KEYPAD_CHARACTERS = "*+,-./0123456789=";

  @Override
  public Matching match(List<Character> typed) {
    if (typed.get(0) != ESC) {
      return null; // Lanterna's way to say: no match
    }
    if (typed.size() == 1) {
      return new Matching(true, new KeyStroke(KeyType.Escape));
    }
    int start = typed.get(1) == ESC ? 1 : 0; // one more escape stands for Alt
    if (typed.size() == start + 1) {
      return Matching.NOT_YET;
    }
    SequenceState state = SequenceState.ESCAPE;
    for (char character : typed.subList(start + 1, typed.size())) {
      if (state == SequenceState.GROUND || SequenceState.isControl(character)) {
        return null; // the sequence was over before, or is broken off
      }
      state = state.after(character);
    }
    boolean introduced = typed.get(start + 1) == '[' || typed.get(start + 1) == 'O';
    if (start == 1 && !introduced) {
      return null; // Escape twice is twice Escape
    }
    return state == SequenceState.GROUND
        ? new Matching(key(typed.subList(start + 1, typed.size())))
        : new Matching(true, new KeyStroke(KeyType.Unknown));
  }

  /** The key of a whole sequence without its escape. */
  private static KeyStroke key(List<Character> sequence) {
    char last = sequence.get(sequence.size() - 1);
    if (sequence.size() == 1) {
      return new KeyStroke(last, false, true); // Alt with a character
    }
    if (sequence.get(0) == 'O') {
      return keypad(last);
    }
    if (sequence.get(1) == '[') {
      return consoleFunction(last);
    }
    KeyType type = control(sequence.subList(1, sequence.size() - 1), last);
    // Any other F3 Lanterna would take for a report of where the cursor is.
    return type == KeyType.F3 ? new KeyStroke.RealF3() : new KeyStroke(type);
  }

  private static KeyStroke consoleFunction(char last) {
    return switch (last) {
      case 'A' -> new KeyStroke(KeyType.F1);
      case 'B' -> new KeyStroke(KeyType.F2);
      case 'C' -> new KeyStroke.RealF3();
      case 'D' -> new KeyStroke(KeyType.F4);
      case 'E' -> new KeyStroke(KeyType.F5);
      default -> new KeyStroke(KeyType.Unknown);
    };
  }

  private static KeyStroke keypad(char last) {
    int at = KEYPAD_CODES.indexOf(last);
    if (at >= 0) {
      return new KeyStroke(KEYPAD_CHARACTERS.charAt(at), false, false);
    }
    return switch (last) {
      case 'M' -> new KeyStroke(KeyType.Enter);
      case 'I' -> new KeyStroke(KeyType.Tab);
      case ' ' -> new KeyStroke(' ', false, false);
      case 'R' -> new KeyStroke.RealF3();
      case 'a', 'b', 'c', 'd' -> new KeyStroke(BY_FINAL.get(Character.toUpperCase(last)));
      default -> new KeyStroke(BY_FINAL.getOrDefault(last, KeyType.Unknown));
    };
  }

  private static KeyType control(List<Character> parameters, char last) {
    StringBuilder digits = new StringBuilder();
    for (char character : parameters) {
      if (character == ';') {
        break;
      }
      digits.append(character);
    }
    return switch (last) {
      case '~', '^', '@' -> BY_NUMBER.getOrDefault(digits.toString(), KeyType.Unknown);
      case 'a', 'b', 'c', 'd' ->
          digits.isEmpty() ? BY_FINAL.get(Character.toUpperCase(last)) : KeyType.Unknown;
      default ->
          digits.isEmpty() || digits.toString().equals("1")
              ? BY_FINAL.getOrDefault(last, KeyType.Unknown)
              : KeyType.Unknown;
    };
  }
}
