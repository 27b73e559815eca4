package padside.screen;

import java.util.ArrayList;
import java.util.List;

/**
 * What one screen is for, what its keys do and what its signs tell, all as that screen has it.
 *
 * @param first the uppermost row that is shown
 */
record HelpScreen(String about, List<Row> rows, int first) implements Screen {
  private static final Binding BACK = Binding.of("<esc><enter>q", "back", "back to the screen");
  private static final Binding SCROLL =
      Binding.of("<down><pagedown><up><pageup>", "more", "what is further down; Up back");
  static final Binding LEAD = Binding.of("g", "guide", Everywhere.GUIDE.meaning());
  private static final int TOP = 2;
  private static final int LEFT = 2;
  private static final int MEANING_COLUMN = 13;
  private static final int PAGE = 8;

  /** A key or sign and its meaning; a row without one goes over the whole width. */
  record Row(String shown, String meaning) {}

  HelpScreen {
    rows = List.copyOf(rows);
  }

  /**
   * The help of a screen.
   *
   * @param everywhere keys that mean the same on all screens
   */
  static HelpScreen of(Screen screen, World world, List<Binding> everywhere) {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("", screen.purpose()));
    rows.add(new Row("", ""));
    screen.bindings().forEach(key -> rows.add(of(key)));
    everywhere.forEach(key -> rows.add(of(key)));
    if (!screen.marks().isEmpty()) {
      rows.add(new Row("", ""));
      screen.marks().forEach(mark -> rows.add(new Row(mark.shown(), mark.meaning())));
    }
    return new HelpScreen(screen.title(world), rows, 0);
  }

  private static Row of(Binding key) {
    return new Row(key.shownKey(), key.meaning());
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(this);
    }
    if (SCROLL.has(pressed.key())) {
      int to = Math.max(0, Math.min(first + by(pressed.key()), rows.size() - 1));
      return Step.stay(new HelpScreen(about, rows, to));
    }
    if (LEAD.has(pressed.key())) {
      return Step.stay(this).and(Everywhere.led(world));
    }
    return BACK.has(pressed.key()) ? Step.close() : Step.stay(this);
  }

  private static int by(Key key) {
    int rows = key.equals(Key.DOWN) || key.equals(Key.UP) ? 1 : PAGE;
    return key.equals(Key.DOWN) || key.equals(Key.PAGE_DOWN) ? rows : -rows;
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int last = canvas.size().rows() - 3;
    int row = TOP;
    for (Row each : rows.subList(first, rows.size())) {
      int column = each.shown().isEmpty() ? LEFT : MEANING_COLUMN;
      List<String> lines = Paragraph.lines(each.meaning(), canvas.size().columns() - column - LEFT);
      if (row + lines.size() - 1 > last) {
        canvas.put(LEFT, last + 1, Line.more("Down"));
        return;
      }
      canvas.put(LEFT, row, each.shown(), Style.STRONG);
      for (String line : lines) {
        canvas.put(column, row++, line, Style.PLAIN);
      }
    }
  }

  @Override
  public String title(World world) {
    return "Help: " + about;
  }

  @Override
  public String purpose() {
    return "What the screen is for, what its keys do and what its signs tell.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(BACK, SCROLL, LEAD);
  }
}
