package padside.terminal;

import java.awt.AWTError;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import padside.screen.Ease.Looks;
import padside.screen.Frame;
import padside.screen.Key;
import padside.screen.Size;

/**
 * A window of the program's own, for a desktop where it was not started in a terminal: the same
 * frames, looks and keys. Its close button leaves as the keys for that do. Nothing of AWT is loaded
 * before one is opened.
 */
public final class Window implements Display {
  private static final String NAME = "Padside";
  private static final Size AT_FIRST = new Size(80, 24);

  /** Larger than terminals have them: the sun is out. */
  private static final int POINTS = 20;

  /** A window of any terminal that knows all colours and characters. */
  private static final Tty ANY = new Tty(AT_FIRST, "window", true);

  private final Consumer<Input> inputs;
  private final JFrame frame = new JFrame(NAME);
  private final JLabel paper = new JLabel();
  private volatile Size size = AT_FIRST;
  private volatile Palette palette;

  // Only the window's own thread touches these.
  private Letters letters = fitting();
  private Frame shown = blank();

  private Window(Looks looks, Consumer<Input> inputs) {
    this.inputs = inputs;
    this.palette = Palette.of(looks, ANY);
  }

  /**
   * Opens one and starts telling inputs, on a thread of its own.
   *
   * @throws NoTerminalException when there is nothing to open a window on
   */
  public static Window open(Looks looks, Consumer<Input> inputs) {
    if (GraphicsEnvironment.isHeadless()) {
      throw new NoTerminalException(nowhere());
    }
    try {
      GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
      Window[] opened = new Window[1];
      SwingUtilities.invokeAndWait(
          () -> {
            opened[0] = new Window(looks, inputs);
            opened[0].show();
          });
      return opened[0];
    } catch (AWTError | HeadlessException | LinkageError | InvocationTargetException e) {
      throw new NoTerminalException(
          "No window could be opened; start padside in a terminal window instead, or look whether"
              + " other programs open theirs here.");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new NoTerminalException("Ended before its window was open; start padside again.");
    }
  }

  private static String nowhere() {
    Path java = Path.of(System.getProperty("java.home"));
    boolean withoutWindows =
        System.getProperty("os.name").equals("Linux")
            && !Files.exists(java.resolve("lib/libawt_xawt.so"));
    return withoutWindows
        ? "The screens need a terminal that the command padside has prepared, and the Java at "
            + java
            + " opens no windows; start padside in a terminal window, or install a Java that does"
            + " (sudo apt install default-jre)."
        : "The screens need a terminal that the command padside has prepared, or a desktop to open"
            + " a window on, and here is neither; start padside in a terminal window.";
  }

  /** Says in a small window what a terminal would have been told; returns once it is closed. */
  public static void tell(String text) {
    JOptionPane.showMessageDialog(null, text, NAME, JOptionPane.PLAIN_MESSAGE);
  }

  private void show() {
    paper.setOpaque(true);
    paper.setVerticalAlignment(SwingConstants.TOP);
    paper.setHorizontalAlignment(SwingConstants.LEFT);
    paper.setFocusable(true);
    paper.setFocusTraversalKeysEnabled(false);
    paper.addKeyListener(new WindowKeys(this::pressed, this::letters));
    paper.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            measure();
          }
        });
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            leave();
          }
        });
    frame.setContentPane(paper);
    draw();
    frame.pack();
    frame.setLocationByPlatform(true);
    frame.setVisible(true);
    paper.requestFocusInWindow();
  }

  /** The usual letters, or smaller ones where a first window of those would not fit. */
  private static Letters fitting() {
    Rectangle most = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    Letters letters = Letters.of(POINTS);
    while (letters.width() * AT_FIRST.columns() > most.width
        || letters.height() * (AT_FIRST.rows() + 2) > most.height) {
      Letters smaller = letters.steps(-1);
      if (smaller.equals(letters)) {
        return letters;
      }
      letters = smaller;
    }
    return letters;
  }

  private static Frame blank() {
    return new Frame(AT_FIRST, List.of(), Optional.empty());
  }

  private void pressed(Key key) {
    inputs.accept(new Input.Pressed(key));
  }

  /** Two different keys that both leave: the first asks, wherever the flier is. */
  private void leave() {
    pressed(Key.control('c'));
    pressed(Key.function(10));
  }

  /** The window keeps its lines and columns where the desktop has room for that. */
  private void letters(int larger) {
    letters = larger == 0 ? fitting() : letters.steps(larger);
    Insets border = frame.getInsets();
    Rectangle most = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    Dimension cells =
        new Dimension(size.columns() * letters.width(), size.rows() * letters.height());
    if (cells.width + border.left + border.right <= most.width
        && cells.height + border.top + border.bottom <= most.height) {
      paper.setPreferredSize(cells);
      frame.pack();
    }
    draw();
    measure();
  }

  private void measure() {
    Size now =
        new Size(
            Math.max(1, paper.getWidth() / letters.width()),
            Math.max(1, paper.getHeight() / letters.height()));
    if (!now.equals(size)) {
      size = now;
      inputs.accept(new Input.Resized(now));
    }
  }

  private void draw() {
    Picture picture = new Picture(shown, letters, palette);
    paper.setBackground(picture.paper());
    paper.setIcon(picture);
    paper.repaint();
  }

  @Override
  public Size size() {
    return size;
  }

  @Override
  public boolean showsBraille() {
    return true;
  }

  @Override
  public boolean showsColours() {
    return true;
  }

  @Override
  public void paint(Frame next) {
    SwingUtilities.invokeLater(
        () -> {
          if (!next.equals(shown)) {
            shown = next;
            draw();
          }
        });
  }

  @Override
  public void repaint(Frame next) {
    SwingUtilities.invokeLater(
        () -> {
          shown = next;
          draw();
        });
  }

  @Override
  public void use(Looks looks) {
    palette = Palette.of(looks, ANY);
    SwingUtilities.invokeLater(this::draw);
  }

  /** No shell waits for a window. */
  @Override
  public void putAside() {}

  @Override
  public void takeAgain() {}

  @Override
  public void bell() {
    Toolkit.getDefaultToolkit().beep();
  }

  @Override
  public void close() {
    SwingUtilities.invokeLater(frame::dispose);
  }
}
