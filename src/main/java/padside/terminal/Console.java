package padside.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.screen.Screen.RefreshType;
import com.googlecode.lanterna.screen.TerminalScreen;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import padside.screen.Ease.Looks;
import padside.screen.Frame;
import padside.screen.Size;

/**
 * The terminal the program was started in, taken over until {@link #close}.
 *
 * <p>Inputs are told on threads of the console's own, so the consumer should only put them in a
 * queue. Painting may be called from any one thread. None of the calls throws when the terminal
 * goes away: {@link Input.HungUp} is told instead. A signal that ends the program gives the
 * terminal back first.
 */
public final class Console implements Display {
  private static final int OUTPUT_BYTES = 32_768;
  private static final long SHUTDOWN_PATIENCE_MS = 1000;

  private final Tty tty;
  private final OutputStream output;
  private final UnixTty terminal;
  private final TerminalScreen screen;
  private final Consumer<Input> inputs;
  private final ReentrantLock drawing = new ReentrantLock();
  private final AtomicBoolean hungUp = new AtomicBoolean();
  private final Thread shutdown = new Thread(this::giveBackAtShutdown, "padside terminal restore");
  private Painter painter;
  private volatile Size size;
  private boolean everythingIsStale = true;
  private boolean closed;

  /** The console over any two streams; nothing is written before {@link #start}. */
  Console(InputStream keys, OutputStream output, Tty tty, Looks looks, Consumer<Input> inputs)
      throws IOException {
    this.tty = tty;
    this.size = tty.size();
    this.output = output;
    this.inputs = inputs;
    this.terminal = new UnixTty(keys, output, tty.size());
    this.screen = new TerminalScreen(terminal);
    this.painter = painter(looks);
  }

  /**
   * Takes the terminal over and starts telling inputs.
   *
   * @throws NoTerminalException when it cannot be written to
   */
  public static Console open(Tty tty, Looks looks, Consumer<Input> inputs) {
    try {
      Console console =
          new Console(
              new FileInputStream(FileDescriptor.in),
              new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), OUTPUT_BYTES),
              tty,
              looks,
              inputs);
      Runtime.getRuntime().addShutdownHook(console.shutdown);
      console.start();
      SignalWatch.start(console::resized, console::broughtBack);
      return console;
    } catch (IOException e) {
      throw new NoTerminalException(
          "The terminal cannot be written to ("
              + e.getMessage()
              + "); start padside in a terminal window.");
    }
  }

  void start() throws IOException {
    screen.setCursorPosition(null);
    screen.startScreen();
    Thread reader = new Thread(this::read, "padside keys");
    reader.setDaemon(true);
    reader.start();
  }

  @Override
  public Size size() {
    return size;
  }

  @Override
  public boolean showsBraille() {
    return Glyphs.of(tty).has('\u28ff');
  }

  @Override
  public boolean showsColours() {
    return !tty.isMonochrome();
  }

  @Override
  public void paint(Frame frame) {
    draw(() -> painter.paint(frame, refreshType()));
  }

  @Override
  public void repaint(Frame frame) {
    draw(
        () -> {
          everythingIsStale = true;
          painter.paint(frame, refreshType());
        });
  }

  @Override
  public void use(Looks looks) {
    draw(
        () -> {
          painter = painter(looks);
          everythingIsStale = true;
        });
  }

  /**
   * Gives the terminal back and stops the program until the shell brings it back; returns then. The
   * next frame is written whole. Where no shell could bring it back it returns at once.
   */
  @Override
  public void putAside() {
    draw(
        () -> {
          screen.stopScreen(false);
          clearTextConsole();
          output.flush();
          Optional<Size> now = tty.modes().flatMap(Console::stopped);
          now.ifPresent(this::resized);
          screen.startScreen();
          everythingIsStale = true;
        });
  }

  private static Optional<Size> stopped(String modes) {
    try {
      return LineModes.putAside(modes);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** After {@link Input.BroughtBack}: the next frame is written whole, on a screen of its own. */
  @Override
  public void takeAgain() {
    draw(
        () -> {
          screen.stopScreen(false);
          screen.startScreen();
          everythingIsStale = true;
        });
  }

  @Override
  public void bell() {
    draw(terminal::bell);
  }

  /** Gives the terminal back as it was. Nothing is painted after that. */
  @Override
  public void close() {
    drawing.lock();
    try {
      giveBack();
    } finally {
      drawing.unlock();
    }
    try {
      Runtime.getRuntime().removeShutdownHook(shutdown);
    } catch (IllegalStateException e) {
      return; // the program is ending already; the hook finds the terminal given back
    }
  }

  private Painter painter(Looks looks) {
    return new Painter(screen, Palette.of(looks, tty), Glyphs.of(tty));
  }

  /** Takes over a new size first; then, and at the first frame, all of it is written. */
  private RefreshType refreshType() {
    Size now = size;
    if (!screen.getTerminalSize().equals(new TerminalSize(now.columns(), now.rows()))) {
      terminal.resizeTo(now);
      screen.doResizeIfNecessary();
      everythingIsStale = true;
    }
    boolean all = everythingIsStale;
    everythingIsStale = false;
    return all ? RefreshType.COMPLETE : RefreshType.DELTA;
  }

  private void draw(Drawing work) {
    drawing.lock();
    try {
      if (!closed) {
        work.run();
      }
    } catch (IOException e) {
      hangUp();
    } finally {
      drawing.unlock();
    }
  }

  private void read() {
    try {
      KeyStroke stroke = terminal.readInput();
      while (stroke.getKeyType() != KeyType.EOF) {
        KeyNames.of(stroke).map(Input.Pressed::new).ifPresent(inputs);
        stroke = terminal.readInput();
      }
    } catch (IOException e) {
      hangUp();
      return;
    }
    hangUp();
  }

  private void resized(Size now) {
    if (!now.equals(size)) {
      size = now;
      inputs.accept(new Input.Resized(now));
    }
  }

  private void broughtBack() {
    inputs.accept(new Input.BroughtBack());
  }

  private void hangUp() {
    if (hungUp.compareAndSet(false, true)) {
      inputs.accept(new Input.HungUp());
    }
  }

  /** A signal ends the program: wait for the frame being painted, but not for a stuck line. */
  private void giveBackAtShutdown() {
    try {
      if (drawing.tryLock(SHUTDOWN_PATIENCE_MS, TimeUnit.MILLISECONDS)) {
        giveBack();
        drawing.unlock();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void giveBack() {
    if (closed) {
      return;
    }
    closed = true;
    try {
      screen.stopScreen(false);
      clearTextConsole();
      output.flush();
    } catch (IOException e) {
      hangUp();
    }
  }

  /** It has no second screen to leave. */
  private void clearTextConsole() throws IOException {
    if (tty.isTextConsole()) {
      output.write("\033[H\033[2J".getBytes(StandardCharsets.US_ASCII));
    }
  }

  /** One thing written to the terminal whole. */
  private interface Drawing {
    void run() throws IOException;
  }
}
