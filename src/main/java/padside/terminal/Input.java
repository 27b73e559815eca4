package padside.terminal;

import padside.screen.Key;
import padside.screen.Size;

/** What a terminal has to tell the program. */
public sealed interface Input {
  /** A key was pressed. */
  record Pressed(Key key) implements Input {}

  /** The terminal has another size now. */
  record Resized(Size size) implements Input {}

  /** The program was stopped and goes on; the terminal was somebody else's meanwhile. */
  record BroughtBack() implements Input {}

  /** The terminal is gone: the window was closed or the line broke. Told once; nothing follows. */
  record HungUp() implements Input {}
}
