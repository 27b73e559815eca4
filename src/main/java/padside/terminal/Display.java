package padside.terminal;

import padside.screen.Ease.Looks;
import padside.screen.Frame;
import padside.screen.Size;

/**
 * Where frames are shown and keys come from until it is closed: the terminal the program was
 * started in, or a window of its own. Painting may be called from any one thread.
 */
public interface Display extends AutoCloseable {
  /** The size in character cells as last heard. */
  Size size();

  /** Whether it shows the Unicode braille patterns, so that charts can be drawn with them. */
  boolean showsBraille();

  /** Whether it shows colours at all. */
  boolean showsColours();

  /** Shows a frame, painting only what differs from the one before. */
  void paint(Frame frame);

  /** Shows a frame, painting all of it, whatever is shown at present. */
  void repaint(Frame frame);

  /** Changes the colours from the next frame on. */
  void use(Looks looks);

  /**
   * Stops the program until the shell brings it back; returns then. Where no shell could bring it
   * back it returns at once.
   */
  void putAside();

  /** After {@link Input.BroughtBack}: the next frame is painted whole. */
  void takeAgain();

  /** Sounds the bell. */
  void bell();

  /** Gives back what was taken. Nothing is painted after that. */
  @Override
  void close();
}
