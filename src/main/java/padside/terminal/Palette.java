package padside.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.TextColor.ANSI;
import padside.screen.Ease.Looks;
import padside.screen.Style;

/**
 * The look of every style. Paper is only ever black or white (on the text console its own white),
 * and ink stands out from it by at least 7 to 1 (WCAG 2.1, success criterion 1.4.6), so that a
 * screen can be read in the sun. The three verdicts differ in weight, line or reversal too, not in
 * colour alone.
 */
enum Palette {
  /** Windows: the fixed part of the 256 colours, which themes leave alone. */
  BLACK_ON_WHITE {
    @Override
    Look look(Style style) {
      return switch (style) {
        case PLAIN -> Look.of(BLACK, WHITE);
        case STRONG -> Look.of(BLACK, WHITE, SGR.BOLD);
        case BAR -> Look.of(WHITE, BLACK);
        case LABEL -> Look.of(DARK_BLUE, WHITE);
        case FIELD -> Look.of(BLACK, WHITE, SGR.UNDERLINE);
        case FOCUS -> Look.of(WHITE, BLACK, SGR.BOLD);
        case OBJECTION -> Look.of(DARK_RED, WHITE, SGR.BOLD);
        case GO -> Look.of(DARK_GREEN, WHITE, SGR.BOLD);
        case MARGINAL -> Look.of(BLACK, WHITE, SGR.BOLD, SGR.UNDERLINE);
        case NO_GO -> Look.of(LIGHT_RED, BLACK, SGR.BOLD);
        case UNKNOWN -> Look.of(DARK_BLUE, WHITE, SGR.UNDERLINE);
      };
    }
  },
  WHITE_ON_BLACK {
    @Override
    Look look(Style style) {
      return switch (style) {
        case PLAIN -> Look.of(WHITE, BLACK);
        case STRONG -> Look.of(WHITE, BLACK, SGR.BOLD);
        case BAR -> Look.of(BLACK, WHITE);
        case LABEL -> Look.of(LIGHT_BLUE, BLACK);
        case FIELD -> Look.of(WHITE, BLACK, SGR.UNDERLINE);
        case FOCUS -> Look.of(BLACK, WHITE, SGR.BOLD);
        case OBJECTION -> Look.of(LIGHT_RED, BLACK, SGR.BOLD);
        case GO -> Look.of(LIGHT_GREEN, BLACK, SGR.BOLD);
        case MARGINAL -> Look.of(YELLOW, BLACK, SGR.BOLD, SGR.UNDERLINE);
        case NO_GO -> Look.of(DARK_RED, WHITE, SGR.BOLD);
        case UNKNOWN -> Look.of(LIGHT_BLUE, BLACK, SGR.UNDERLINE);
      };
    }
  },
  /**
   * The text console: bold means the bright colour, underline a fixed cyan, and white paper is
   * light grey, so on it ink is black and bold is shown by black paper.
   */
  CONSOLE_BLACK_ON_WHITE {
    @Override
    Look look(Style style) {
      return switch (style) {
        case PLAIN, LABEL -> Look.of(ANSI.BLACK, ANSI.WHITE);
        case STRONG, OBJECTION, FOCUS, NO_GO -> Look.of(ANSI.WHITE, ANSI.BLACK, SGR.BOLD);
        case BAR, FIELD -> Look.of(ANSI.WHITE, ANSI.BLACK);
        case GO -> Look.of(ANSI.GREEN, ANSI.BLACK, SGR.BOLD);
        case MARGINAL -> Look.of(ANSI.YELLOW, ANSI.BLACK, SGR.BOLD);
        case UNKNOWN -> Look.of(ANSI.CYAN, ANSI.BLACK, SGR.BOLD);
      };
    }
  },
  CONSOLE_WHITE_ON_BLACK {
    @Override
    Look look(Style style) {
      return switch (style) {
        case PLAIN -> Look.of(ANSI.WHITE, ANSI.BLACK);
        case STRONG, OBJECTION -> Look.of(ANSI.WHITE, ANSI.BLACK, SGR.BOLD);
        case BAR, FOCUS, NO_GO -> Look.of(ANSI.BLACK, ANSI.WHITE);
        case LABEL -> Look.of(ANSI.CYAN, ANSI.BLACK, SGR.BOLD);
        case FIELD -> Look.of(ANSI.WHITE, ANSI.BLACK, SGR.UNDERLINE);
        case GO -> Look.of(ANSI.GREEN, ANSI.BLACK, SGR.BOLD);
        case MARGINAL -> Look.of(ANSI.YELLOW, ANSI.BLACK, SGR.BOLD);
        case UNKNOWN -> Look.of(ANSI.CYAN, ANSI.BLACK);
      };
    }
  },
  /** No colours at all. */
  MONOCHROME {
    @Override
    Look look(Style style) {
      return switch (style) {
        case PLAIN, LABEL -> marked();
        case STRONG, OBJECTION, GO -> marked(SGR.BOLD);
        case BAR -> marked(SGR.REVERSE);
        case FIELD, UNKNOWN -> marked(SGR.UNDERLINE);
        case FOCUS, NO_GO -> marked(SGR.REVERSE, SGR.BOLD);
        case MARGINAL -> marked(SGR.BOLD, SGR.UNDERLINE);
      };
    }
  };

  private static final TextColor BLACK = new TextColor.Indexed(16);
  private static final TextColor WHITE = new TextColor.Indexed(231);
  private static final TextColor DARK_BLUE = new TextColor.Indexed(18);
  private static final TextColor DARK_RED = new TextColor.Indexed(88);
  private static final TextColor DARK_GREEN = new TextColor.Indexed(22);
  private static final TextColor LIGHT_BLUE = new TextColor.Indexed(117);
  private static final TextColor LIGHT_RED = new TextColor.Indexed(210);
  private static final TextColor LIGHT_GREEN = new TextColor.Indexed(83);
  private static final TextColor YELLOW = new TextColor.Indexed(221);

  /** How a style is drawn. */
  abstract Look look(Style style);

  /** The flier's choice as this terminal can show it. */
  static Palette of(Looks looks, Tty tty) {
    if (tty.isMonochrome()) {
      return MONOCHROME;
    }
    return switch (looks) {
      case BLACK_ON_WHITE -> tty.isTextConsole() ? CONSOLE_BLACK_ON_WHITE : BLACK_ON_WHITE;
      case WHITE_ON_BLACK -> tty.isTextConsole() ? CONSOLE_WHITE_ON_BLACK : WHITE_ON_BLACK;
      case MONOCHROME -> MONOCHROME;
    };
  }

  private static Look marked(SGR... marks) {
    return Look.of(ANSI.DEFAULT, ANSI.DEFAULT, marks);
  }
}
