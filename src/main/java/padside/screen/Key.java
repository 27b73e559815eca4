package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padside.units.PrintableText;

/**
 * One key as pressed: a printable character as itself, any other by its name in angle brackets,
 * such as {@code <enter>} or {@code <c-c>} for Control and C. A typed {@code <} is the character
 * itself.
 */
public record Key(String name) {
  public static final Key ENTER = new Key("<enter>");
  public static final Key TAB = new Key("<tab>");
  public static final Key BACK_TAB = new Key("<s-tab>");
  public static final Key ESC = new Key("<esc>");
  public static final Key BACKSPACE = new Key("<backspace>");
  public static final Key DELETE = new Key("<delete>");
  public static final Key UP = new Key("<up>");
  public static final Key DOWN = new Key("<down>");
  public static final Key LEFT = new Key("<left>");
  public static final Key RIGHT = new Key("<right>");
  public static final Key HOME = new Key("<home>");
  public static final Key END = new Key("<end>");
  public static final Key PAGE_UP = new Key("<pageup>");
  public static final Key PAGE_DOWN = new Key("<pagedown>");

  private static final Set<Key> NAMED =
      Set.of(
          ENTER, TAB, BACK_TAB, ESC, BACKSPACE, DELETE, UP, DOWN, LEFT, RIGHT, HOME, END, PAGE_UP,
          PAGE_DOWN);

  /** Refuses an empty name. */
  public Key {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("a key has a name");
    }
  }

  // What a record has by itself the JVM makes at its first use, at every start; so it is written
  // out.
  @Override
  public boolean equals(Object other) {
    return other instanceof Key key && name.equals(key.name);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** The character typed, absent for named keys. */
  public Optional<String> character() {
    return name.length() == 1 ? Optional.of(name) : Optional.empty();
  }

  /** The key of a character as typed; absent for what takes no cell or more than one. */
  public static Optional<Key> typed(char character) {
    return PrintableText.isOneCell(character)
        ? Optional.of(new Key(String.valueOf(character)))
        : Optional.empty();
  }

  /** Control with a letter. */
  public static Key control(char letter) {
    return new Key("<c-" + Character.toLowerCase(letter) + ">");
  }

  /** A function key, F1 to F12. */
  public static Key function(int number) {
    return new Key("<f" + number + ">");
  }

  /** Reads a script such as {@code 6g9<tab><c-c>} into its keys. */
  public static List<Key> script(String text) {
    List<Key> keys = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      int end = text.charAt(at) == '<' ? text.indexOf('>', at) : -1;
      boolean named = end > 0 && isName(text.substring(at, end + 1));
      keys.add(new Key(named ? text.substring(at, end + 1) : text.substring(at, at + 1)));
      at = named ? end + 1 : at + 1;
    }
    return keys;
  }

  private static boolean isName(String text) {
    return NAMED.contains(new Key(text)) || text.matches("<c-[a-z]>|<f([1-9]|1[0-2])>");
  }
}
