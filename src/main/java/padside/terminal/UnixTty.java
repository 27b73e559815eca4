package padside.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.terminal.ansi.UnixLikeTerminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import padside.screen.Size;

/**
 * Lanterna's Unix terminal without its child processes, questions to the terminal, signal handling
 * and shutdown hook: the launcher sets the line modes, {@link Console} does the rest.
 */
final class UnixTty extends UnixLikeTerminal {
  /** In this order a later pattern wins over an earlier one; none of these overlap. */
  private static final List<CharacterPattern> PATTERNS =
      List.of(new TypedCharacters(), new KeySequences());

  private TerminalSize size;

  UnixTty(InputStream keys, OutputStream screen, Size size) throws IOException {
    super(new LingeringInput(keys), screen, StandardCharsets.UTF_8, CtrlCBehaviour.TRAP);
    this.size = new TerminalSize(size.columns(), size.rows());
  }

  /** Takes over a size learnt elsewhere and tells those who listen. */
  void resizeTo(Size now) {
    size = new TerminalSize(now.columns(), now.rows());
    onResized(size);
  }

  @Override
  protected TerminalSize findTerminalSize() {
    return size;
  }

  @Override
  protected KeyDecodingProfile getDefaultKeyDecodingProfile() {
    return () -> PATTERNS;
  }

  /** Lanterna's own sends zero bytes after characters outside ASCII. */
  @Override
  protected byte[] translateCharacter(char character) {
    return String.valueOf(character).getBytes(StandardCharsets.UTF_8);
  }

  /** Called by the constructor above this one; there is nothing to acquire. */
  @Override
  protected void acquire() {}

  @Override
  protected void registerTerminalResizeListener(Runnable onResize) {}

  @Override
  protected void saveTerminalSettings() {}

  @Override
  protected void restoreTerminalSettings() {}

  @Override
  protected void keyEchoEnabled(boolean enabled) {}

  @Override
  protected void canonicalMode(boolean enabled) {}

  @Override
  protected void keyStrokeSignalsEnabled(boolean enabled) {}
}
