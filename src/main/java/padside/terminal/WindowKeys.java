package padside.terminal;

import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import padside.screen.Key;

/** A window's key strokes by the names the screens know them under. */
final class WindowKeys extends KeyAdapter {
  private static final Map<Integer, Key> NAMED =
      Map.ofEntries(
          Map.entry(KeyEvent.VK_ENTER, Key.ENTER),
          Map.entry(KeyEvent.VK_ESCAPE, Key.ESC),
          Map.entry(KeyEvent.VK_BACK_SPACE, Key.BACKSPACE),
          Map.entry(KeyEvent.VK_DELETE, Key.DELETE),
          Map.entry(KeyEvent.VK_UP, Key.UP),
          Map.entry(KeyEvent.VK_KP_UP, Key.UP),
          Map.entry(KeyEvent.VK_DOWN, Key.DOWN),
          Map.entry(KeyEvent.VK_KP_DOWN, Key.DOWN),
          Map.entry(KeyEvent.VK_LEFT, Key.LEFT),
          Map.entry(KeyEvent.VK_KP_LEFT, Key.LEFT),
          Map.entry(KeyEvent.VK_RIGHT, Key.RIGHT),
          Map.entry(KeyEvent.VK_KP_RIGHT, Key.RIGHT),
          Map.entry(KeyEvent.VK_HOME, Key.HOME),
          Map.entry(KeyEvent.VK_END, Key.END),
          Map.entry(KeyEvent.VK_PAGE_UP, Key.PAGE_UP),
          Map.entry(KeyEvent.VK_PAGE_DOWN, Key.PAGE_DOWN));

  private static final int LETTERS_AS_BEFORE = 0;

  private final Consumer<Key> keys;
  private final IntConsumer letters;

  /**
   * Tells keys as they are pressed.
   *
   * @param letters is told to make letters larger by 1, smaller by -1, or 0 for as at the start
   */
  WindowKeys(Consumer<Key> keys, IntConsumer letters) {
    this.keys = keys;
    this.letters = letters;
  }

  @Override
  public void keyPressed(KeyEvent event) {
    Optional<Integer> other = letters(event);
    other.ifPresent(letters::accept);
    Optional<Key> key = other.isPresent() ? Optional.empty() : of(event);
    key.ifPresent(keys);
    if (other.isPresent() || key.isPresent()) {
      event.consume(); // or the desktop's own meaning of F10 and Tab follows
    }
  }

  @Override
  public void keyTyped(KeyEvent event) {
    char character = event.getKeyChar();
    if (character > KeyEvent.VK_SPACE - 1 && character != KeyEvent.VK_DELETE && !isChord(event)) {
      Key.typed(character).ifPresent(keys);
    }
  }

  /** The key, absent for what the screens have no name for and for what is told as typed. */
  static Optional<Key> of(KeyEvent event) {
    int code = event.getKeyCode();
    if (event.isAltDown() && !event.isControlDown()) {
      return Optional.empty();
    }
    if (code == KeyEvent.VK_TAB && !event.isControlDown()) {
      return Optional.of(event.isShiftDown() ? Key.BACK_TAB : Key.TAB);
    }
    if (code >= KeyEvent.VK_F1 && code <= KeyEvent.VK_F12) {
      return Optional.of(Key.function(code - KeyEvent.VK_F1 + 1));
    }
    boolean letter = code >= KeyEvent.VK_A && code <= KeyEvent.VK_Z;
    return letter && isChord(event)
        ? Optional.of(Key.control((char) code))
        : Optional.ofNullable(NAMED.get(code));
  }

  /** Control held, and not as the half of AltGr that some systems make of it. */
  private static boolean isChord(KeyEvent event) {
    return event.isControlDown() && !event.isAltDown() && !event.isAltGraphDown();
  }

  private static Optional<Integer> letters(KeyEvent event) {
    if (!isChord(event)) {
      return Optional.empty();
    }
    return switch (event.getKeyCode()) {
      case KeyEvent.VK_PLUS, KeyEvent.VK_ADD, KeyEvent.VK_EQUALS -> Optional.of(1);
      case KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT -> Optional.of(-1);
      case KeyEvent.VK_0, KeyEvent.VK_NUMPAD0 -> Optional.of(LETTERS_AS_BEFORE);
      default -> Optional.empty();
    };
  }
}
