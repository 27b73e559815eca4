package padside.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.Set;

/**
 * How one style is drawn.
 *
 * @param ink colour of the characters
 * @param paper colour behind them
 * @param marks bold, underline, reverse
 */
record Look(TextColor ink, TextColor paper, Set<SGR> marks) {
  Look {
    marks = Set.copyOf(marks);
  }

  static Look of(TextColor ink, TextColor paper, SGR... marks) {
    return new Look(ink, paper, Set.of(marks));
  }
}
