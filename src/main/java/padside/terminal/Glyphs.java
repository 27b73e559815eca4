package padside.terminal;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * Which characters a terminal can show, and what stands in for those it cannot: always one
 * character for one, so that columns stay where they are.
 */
enum Glyphs {
  /** A window whose font and encoding know everything. */
  FULL {
    @Override
    boolean has(char character) {
      return true;
    }
  },
  /** The text console with Debian's fonts: Latin-1 and a few signs. */
  CONSOLE {
    @Override
    boolean has(char character) {
      return isAscii(character)
          || (character > 0xa0 && character <= 0xff && character != 0xad)
          || CONSOLE_SIGNS.indexOf(character) >= 0;
    }
  },
  /** The 95 printable characters of ASCII. */
  ASCII {
    @Override
    boolean has(char character) {
      return isAscii(character);
    }
  };

  private static final String CONSOLE_SIGNS = "─│┌┐└┘├┤┬┴┼█░▒←↑→↓▲▼●■•…–≤≥";

  /** Each first character of a row stands in for the rest of it. */
  private static final String[] STAND_INS = {
    "-─━═–—‒−╌┄",
    "|│┃║╎┆",
    "+┌┐└┘├┤┬┴┼╔╗╚╝╠╣╦╩╬╭╮╰╯",
    "#█■▓▆▇▌▐▀▄◼",
    ":▒",
    ".░·",
    "=▃▅",
    "_▁▂",
    " °",
    "*●•★✱◆☼",
    "o○◦",
    "<←◄‹≤«◀",
    ">→►›≥»▶",
    "^↑▲",
    "v↓▼",
    "x×✗✘",
    "~±≈…", // a text cut short is not to look as if it ended there
    "/÷½",
    "uµμ",
    "2²",
    "3³",
    "'‘’′",
    "\"“”″",
    "!⚠",
    "y✓✔",
    "d∆Δ",
    "s§σß",
  };

  private static final Map<Character, Character> STAND_IN_FOR = standIns();

  /** True when the terminal shows the character itself. */
  abstract boolean has(char character);

  /** The character, or what stands in for it. */
  char shown(char character) {
    if (has(character)) {
      return character;
    }
    Character standIn = STAND_IN_FOR.get(character);
    return standIn != null ? standIn : withoutMarks(character);
  }

  /** The letter under an accent, or a question mark. */
  private static char withoutMarks(char character) {
    char base = Normalizer.normalize(String.valueOf(character), Normalizer.Form.NFKD).charAt(0);
    return isAscii(base) ? base : '?';
  }

  private static boolean isAscii(char character) {
    return character >= 0x20 && character < 0x7f;
  }

  private static Map<Character, Character> standIns() {
    Map<Character, Character> map = new HashMap<>();
    for (String row : STAND_INS) {
      for (char character : row.substring(1).toCharArray()) {
        map.put(character, row.charAt(0));
      }
    }
    return map;
  }

  /** What the terminal can show. */
  static Glyphs of(Tty tty) {
    if (!tty.utf8()) {
      return ASCII;
    }
    return tty.isTextConsole() ? CONSOLE : FULL;
  }
}
