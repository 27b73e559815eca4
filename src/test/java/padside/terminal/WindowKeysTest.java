package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import padside.screen.Key;

/** Strokes as java.awt.event.KeyEvent describes them: pressed by place, typed by character. */
class WindowKeysTest {
  private final Component window = new JLabel();
  private final List<Key> keys = new ArrayList<>();
  private final List<Integer> letters = new ArrayList<>();
  private final WindowKeys strokes = new WindowKeys(keys::add, letters::add);

  private KeyEvent stroke(int kind, int code, char character, int held) {
    return new KeyEvent(window, kind, 0, held, code, character);
  }

  private void press(int code, int held) {
    strokes.keyPressed(stroke(KeyEvent.KEY_PRESSED, code, KeyEvent.CHAR_UNDEFINED, held));
  }

  private void type(char character, int held) {
    strokes.keyTyped(stroke(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, character, held));
  }

  @Test
  void characters_are_told_as_typed_and_named_keys_as_pressed_each_once() {
    press(KeyEvent.VK_A, InputEvent.SHIFT_DOWN_MASK);
    type('A', InputEvent.SHIFT_DOWN_MASK);
    type('°', 0);
    press(KeyEvent.VK_ENTER, 0);
    type('\n', 0);
    press(KeyEvent.VK_BACK_SPACE, 0);
    type('\b', 0);
    press(KeyEvent.VK_DELETE, 0);
    type((char) 127, 0);
    type(' ', 0);

    assertThat(keys)
        .containsExactly(
            new Key("A"), new Key("°"), Key.ENTER, Key.BACKSPACE, Key.DELETE, new Key(" "));
  }

  @Test
  void chords_function_keys_and_both_ways_through_a_form() {
    press(KeyEvent.VK_C, InputEvent.CTRL_DOWN_MASK);
    type((char) 3, InputEvent.CTRL_DOWN_MASK);
    press(KeyEvent.VK_TAB, 0);
    press(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK);
    press(KeyEvent.VK_F1, 0);
    press(KeyEvent.VK_F12, 0);
    press(KeyEvent.VK_ALT, InputEvent.ALT_DOWN_MASK);
    press(KeyEvent.VK_F4, InputEvent.ALT_DOWN_MASK);

    assertThat(keys)
        .containsExactly(
            Key.control('c'), Key.TAB, Key.BACK_TAB, Key.function(1), Key.function(12));
  }

  /** Windows tells AltGr as Control and Alt. */
  @Test
  void what_alt_gr_makes_is_typed() {
    int altGr = InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK;
    press(KeyEvent.VK_Q, altGr);
    type('@', altGr);
    press(KeyEvent.VK_8, InputEvent.ALT_GRAPH_DOWN_MASK);
    type('[', InputEvent.ALT_GRAPH_DOWN_MASK);

    assertThat(keys).containsExactly(new Key("@"), new Key("["));
  }

  @Test
  void control_with_plus_minus_and_nought_is_the_window_s_own() {
    press(KeyEvent.VK_PLUS, InputEvent.CTRL_DOWN_MASK);
    press(KeyEvent.VK_EQUALS, InputEvent.CTRL_DOWN_MASK);
    press(KeyEvent.VK_MINUS, InputEvent.CTRL_DOWN_MASK);
    press(KeyEvent.VK_0, InputEvent.CTRL_DOWN_MASK);
    type('+', 0);

    assertThat(letters).containsExactly(1, 1, -1, 0);
    assertThat(keys).containsExactly(new Key("+"));
  }
}
