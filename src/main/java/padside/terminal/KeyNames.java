package padside.terminal;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import padside.screen.Key;

/** Lanterna's key strokes by the names the screens know them under. */
final class KeyNames {
  private static final Map<KeyType, Key> NAMED = named();

  private KeyNames() {}

  /** The key, absent for what the screens have no name for. */
  static Optional<Key> of(KeyStroke stroke) {
    if (stroke.getKeyType() != KeyType.Character) {
      return Optional.ofNullable(NAMED.get(stroke.getKeyType()));
    }
    if (stroke.isAltDown()) {
      return Optional.empty();
    }
    char character = stroke.getCharacter();
    return stroke.isCtrlDown() ? Optional.of(Key.control(character)) : Key.typed(character);
  }

  private static Map<KeyType, Key> named() {
    Map<KeyType, Key> keys = new EnumMap<>(KeyType.class);
    keys.put(KeyType.Escape, Key.ESC);
    keys.put(KeyType.Backspace, Key.BACKSPACE);
    keys.put(KeyType.ArrowLeft, Key.LEFT);
    keys.put(KeyType.ArrowRight, Key.RIGHT);
    keys.put(KeyType.ArrowUp, Key.UP);
    keys.put(KeyType.ArrowDown, Key.DOWN);
    keys.put(KeyType.Delete, Key.DELETE);
    keys.put(KeyType.Home, Key.HOME);
    keys.put(KeyType.End, Key.END);
    keys.put(KeyType.PageUp, Key.PAGE_UP);
    keys.put(KeyType.PageDown, Key.PAGE_DOWN);
    keys.put(KeyType.Tab, Key.TAB);
    keys.put(KeyType.ReverseTab, Key.BACK_TAB);
    keys.put(KeyType.Enter, Key.ENTER);
    for (int number = 1; number <= 12; number++) {
      keys.put(KeyType.valueOf("F" + number), Key.function(number));
    }
    return keys;
  }
}
