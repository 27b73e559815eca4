package padside.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.screen.Screen;
import java.io.IOException;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padside.screen.Frame;
import padside.screen.Style;

/** Draws frames on a Lanterna screen, only what changed unless all of it is asked for. */
final class Painter {
  private final Screen screen;
  private final Palette palette;
  private final Glyphs glyphs;

  /** Making a cell costs Lanterna a look at the rules of text breaks; each is made once. */
  private final Map<Style, Map<Character, TextCharacter>> cells = new EnumMap<>(Style.class);

  Painter(Screen screen, Palette palette, Glyphs glyphs) {
    this.screen = screen;
    this.palette = palette;
    this.glyphs = glyphs;
  }

  /** What of the frame lies outside the screen is cut; what the frame leaves open is blank. */
  void paint(Frame frame, Screen.RefreshType refresh) throws IOException {
    TerminalSize size = screen.getTerminalSize();
    for (int row = 0; row < size.getRows(); row++) {
      int column = row < frame.rows().size() ? draw(frame.rows().get(row).spans(), row, size) : 0;
      for (; column < size.getColumns(); column++) {
        screen.setCharacter(column, row, cell(' ', Style.PLAIN));
      }
    }
    screen.setCursorPosition(
        frame.cursor().map(spot -> new TerminalPosition(spot.column(), spot.row())).orElse(null));
    screen.refresh(refresh);
  }

  private int draw(List<Frame.Span> spans, int row, TerminalSize size) {
    int column = 0;
    for (Frame.Span span : spans) {
      int length = Math.min(span.text().length(), size.getColumns() - column);
      for (int i = 0; i < length; i++) {
        screen.setCharacter(column + i, row, cell(span.text().charAt(i), span.style()));
      }
      column += length;
    }
    return column;
  }

  private TextCharacter cell(char character, Style style) {
    return cells
        .computeIfAbsent(style, any -> new HashMap<>())
        .computeIfAbsent(character, any -> made(glyphs.shown(character), palette.look(style)));
  }

  private static TextCharacter made(char shown, Look look) {
    EnumSet<SGR> marks = EnumSet.noneOf(SGR.class);
    marks.addAll(look.marks());
    return new Cell(shown, look, marks);
  }

  /**
   * A cell that keeps how wide it is: Lanterna's own goes through the blocks of Unicode for it, for
   * every cell of every frame.
   */
  private static final class Cell extends TextCharacter {
    private static final long serialVersionUID = 1L;

    private final boolean wide;

    @SuppressWarnings("deprecation") // the way that is not makes no cells of one's own
    Cell(char shown, Look look, EnumSet<SGR> marks) {
      super(shown, look.ink(), look.paper(), marks);
      this.wide = super.isDoubleWidth();
    }

    @Override
    public boolean isDoubleWidth() {
      return wide;
    }
  }
}
