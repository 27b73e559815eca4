package padside.terminal;

import java.util.Optional;
import java.util.Properties;
import padside.screen.Size;

/**
 * The terminal as {@code bin/padside} found it.
 *
 * @param size in character cells
 * @param term the value of TERM
 * @param utf8 true when the locale's characters are UTF-8
 * @param modes the line modes as they were before the program, in the words of {@code stty -g}
 */
public record Tty(Size size, String term, boolean utf8, Optional<String> modes) {
  private static final int MOST_CELLS = 10_000;

  /** A terminal whose modes before are not known: it cannot be put aside. */
  Tty(Size size, String term, boolean utf8) {
    this(size, term, utf8, Optional.empty());
  }

  /** Whether the launcher has made a terminal ready and told of it. */
  public static boolean isReady(Properties properties) {
    return properties.containsKey("padside.columns");
  }

  /**
   * Reads the properties the launcher passes on.
   *
   * @throws NoTerminalException when the launcher passed none, because there is no terminal or the
   *     program was started without the launcher
   */
  public static Tty of(Properties properties) {
    Size size = new Size(cells(properties, "padside.columns"), cells(properties, "padside.rows"));
    return new Tty(
        size,
        properties.getProperty("padside.term", ""),
        Boolean.parseBoolean(properties.getProperty("padside.utf8", "false")),
        Optional.ofNullable(properties.getProperty("padside.modes"))
            .filter(modes -> modes.matches("[0-9A-Za-z:=]+")));
  }

  private static int cells(Properties properties, String name) {
    String value = properties.getProperty(name, "");
    if (!value.matches("[1-9][0-9]{0,3}")) {
      throw new NoTerminalException(
          value.isEmpty()
              ? "The screens need a terminal that the command padside has prepared, and this one is not;"
                  + " start padside in a terminal window."
              : "The terminal's size "
                  + name
                  + "="
                  + value
                  + " is not a number from 1 to "
                  + (MOST_CELLS - 1)
                  + "; start padside in a terminal window.");
    }
    return Integer.parseInt(value);
  }

  /** The text console of Linux: eight colours, one font of few characters, no second screen. */
  boolean isTextConsole() {
    return term.equals("linux");
  }

  /** Terminals made for reading paper white or green: they may take a colour for blinking. */
  boolean isMonochrome() {
    return term.startsWith("vt") || term.equals("ansi") || term.endsWith("-mono");
  }
}
