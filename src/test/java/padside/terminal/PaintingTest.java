package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.screen.Ease.Looks;
import padside.screen.Frame;
import padside.screen.Size;
import padside.screen.Style;

class PaintingTest {
  private static final Size SMALL = new Size(20, 3);

  /** A frame whose first row is given; the others are blank. */
  private static Frame frame(Size size, Optional<Frame.Spot> cursor, Frame.Span... first) {
    Frame.Row blank = new Frame.Row(List.of());
    List<Frame.Row> rows = new java.util.ArrayList<>(Collections.nCopies(size.rows(), blank));
    rows.set(0, new Frame.Row(List.of(first)));
    return new Frame(size, rows, cursor);
  }

  private static Frame frame(String text) {
    return frame(SMALL, Optional.empty(), new Frame.Span(text, Style.PLAIN));
  }

  private static Typewriter monochrome(String term, boolean utf8) {
    Typewriter typewriter = new Typewriter(term, utf8, SMALL, Looks.MONOCHROME);
    typewriter.written();
    return typewriter;
  }

  @Test
  void the_second_screen_is_taken_and_given_back() {
    Typewriter typewriter = Typewriter.xterm();
    assertThat(typewriter.written()).startsWith("\033[?1049h").contains("\033[?25l");

    typewriter.close();
    assertThat(typewriter.written()).endsWith("\033[0m\033[?25h\033[?1049l");

    typewriter.console.paint(frame("late"));
    typewriter.console.close();
    typewriter.console.bell();
    assertThat(typewriter.written()).isEmpty();
  }

  @Test
  void the_text_console_has_no_second_screen_and_is_left_clear() {
    Typewriter typewriter = new Typewriter("linux", true, SMALL, Looks.BLACK_ON_WHITE);
    typewriter.close();

    assertThat(typewriter.written()).endsWith("\033[H\033[2J");
  }

  @Test
  void a_second_frame_writes_only_what_differs() {
    try (Typewriter typewriter = monochrome("xterm", true)) {
      typewriter.console.paint(frame("limit=13"));
      assertThat(typewriter.written()).contains("\033[2J", "limit=13");

      typewriter.console.paint(frame("limit=14"));
      assertThat(typewriter.written()).isEqualTo("\033[1;8H\033[0m\033[39m\033[49m4\033[?25l");

      typewriter.console.repaint(frame("limit=14"));
      assertThat(typewriter.written()).contains("\033[2J", "limit=14");
    }
  }

  @Test
  void the_cursor_stands_where_the_frame_says() {
    try (Typewriter typewriter = monochrome("xterm", true)) {
      typewriter.console.paint(frame(SMALL, Optional.of(new Frame.Spot(4, 2))));
      assertThat(typewriter.written()).endsWith("\033[?25h\033[3;5H");
    }
  }

  @Test
  void other_colours_repaint_everything() {
    try (Typewriter typewriter = new Typewriter("xterm", true, SMALL, Looks.BLACK_ON_WHITE)) {
      typewriter.console.paint(frame("GO"));
      assertThat(typewriter.written()).contains("\033[38;5;16m\033[48;5;231mGO");

      typewriter.console.use(Looks.WHITE_ON_BLACK);
      typewriter.console.paint(frame("GO"));
      assertThat(typewriter.written()).contains("\033[2J", "\033[38;5;231m\033[48;5;16mGO");
    }
  }

  @Test
  void bytes_are_utf_8_where_the_terminal_reads_them_and_ascii_where_not() {
    try (Typewriter typewriter = monochrome("xterm", true)) {
      typewriter.console.paint(frame("6–9·≤13"));
      assertThat(typewriter.written()).contains("6–9·≤13");
    }
    try (Typewriter typewriter = monochrome("xterm", false)) {
      typewriter.console.paint(frame("6–9·≤13"));
      assertThat(typewriter.written()).contains("6-9.<13");
    }
  }

  @Test
  void the_bell_is_one_byte() {
    try (Typewriter typewriter = monochrome("xterm", true)) {
      typewriter.console.bell();
      assertThat(typewriter.written()).isEqualTo("\007");
    }
  }

  @Test
  void cells_carry_the_characters_and_looks_of_the_frame() throws IOException {
    Screen screen = screen(new TerminalSize(20, 3));
    new Painter(screen, Palette.BLACK_ON_WHITE, Glyphs.FULL)
        .paint(
            frame(
                SMALL,
                Optional.empty(),
                new Frame.Span("wind ", Style.LABEL),
                new Frame.Span("NO-GO", Style.NO_GO)),
            Screen.RefreshType.DELTA);

    assertThat(row(screen, 0)).isEqualTo("wind NO-GO");
    assertThat(screen.getFrontCharacter(0, 0).getForegroundColor())
        .isEqualTo(Palette.BLACK_ON_WHITE.look(Style.LABEL).ink());
    assertThat(screen.getFrontCharacter(5, 0).getModifiers())
        .isEqualTo(Palette.BLACK_ON_WHITE.look(Style.NO_GO).marks());
    assertThat(screen.getFrontCharacter(19, 2).getBackgroundColor())
        .as("cells the frame leaves open")
        .isEqualTo(Palette.BLACK_ON_WHITE.look(Style.PLAIN).paper());
  }

  @Test
  void a_frame_of_another_size_is_cut_or_padded() throws IOException {
    Screen screen = screen(new TerminalSize(6, 2));
    Painter painter = new Painter(screen, Palette.MONOCHROME, Glyphs.FULL);

    painter.paint(
        frame(
            SMALL,
            Optional.of(new Frame.Spot(19, 2)),
            new Frame.Span("weath", Style.STRONG),
            new Frame.Span("ercock", Style.PLAIN)),
        Screen.RefreshType.DELTA);
    assertThat(row(screen, 0)).isEqualTo("weathe");

    painter.paint(
        frame(new Size(3, 1), Optional.empty(), new Frame.Span("pad", Style.PLAIN)),
        Screen.RefreshType.DELTA);
    assertThat(row(screen, 0)).isEqualTo("pad");
  }

  private static Screen screen(TerminalSize size) throws IOException {
    Screen screen = new TerminalScreen(new DefaultVirtualTerminal(size));
    screen.startScreen();
    return screen;
  }

  private static String row(Screen screen, int row) {
    StringBuilder text = new StringBuilder();
    for (int column = 0; column < screen.getTerminalSize().getColumns(); column++) {
      text.append(screen.getFrontCharacter(column, row).getCharacterString());
    }
    return text.toString().stripTrailing();
  }
}
