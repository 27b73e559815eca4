package padside.screen;

import java.util.List;

/**
 * What the keys of one screen do, from its own table.
 *
 * @param first the uppermost row of the table that is shown
 */
record HelpScreen(String about, List<Binding> table, int first) implements Screen {
  private static final Binding BACK = Binding.of("<esc><enter>q", "back", "back to the screen");
  private static final Binding SCROLL =
      Binding.of("<down><up>", "more", "keys further down, where they do not all fit; Up back");
  private static final String MORE = "… more: Down";
  private static final int TOP = 2;
  private static final int KEY_COLUMN = 2;
  private static final int MEANING_COLUMN = 13;

  HelpScreen {
    table = List.copyOf(table);
  }

  static HelpScreen of(String about, List<Binding> table) {
    return new HelpScreen(about, table, 0);
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(this);
    }
    if (SCROLL.has(pressed.key())) {
      int to = first + (pressed.key().equals(Key.DOWN) ? 1 : -1);
      return Step.stay(new HelpScreen(about, table, Math.max(0, Math.min(to, table.size() - 1))));
    }
    return BACK.has(pressed.key()) ? Step.close() : Step.stay(this);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int width = canvas.size().columns() - MEANING_COLUMN - 2;
    int last = canvas.size().rows() - 3;
    int row = TOP;
    for (Binding binding : table.subList(first, table.size())) {
      List<String> lines = Paragraph.lines(binding.meaning(), width);
      if (row + lines.size() - 1 > last) {
        canvas.put(KEY_COLUMN, last + 1, MORE, Style.LABEL);
        return;
      }
      canvas.put(KEY_COLUMN, row, binding.shownKey(), Style.STRONG);
      for (String line : lines) {
        canvas.put(MEANING_COLUMN, row++, line, Style.PLAIN);
      }
    }
  }

  @Override
  public String title(World world) {
    return "Keys: " + about;
  }

  @Override
  public List<Binding> bindings() {
    return List.of(BACK, SCROLL);
  }
}
