package padside.screen;

import java.util.List;

/** What the keys of one screen do, from its own table. */
record HelpScreen(String about, List<Binding> table) implements Screen {
  private static final Binding BACK = Binding.of("<esc><enter>q", "back", "back to the screen");
  private static final int KEY_COLUMN = 2;
  private static final int MEANING_COLUMN = 13;

  HelpScreen {
    table = List.copyOf(table);
  }

  @Override
  public Step on(Event event, World world) {
    boolean back = event instanceof Event.Pressed pressed && BACK.has(pressed.key());
    return back ? Step.close() : Step.stay(this);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int row = 2;
    for (Binding binding : table) {
      canvas.put(KEY_COLUMN, row, binding.shownKey(), Style.STRONG);
      for (String line :
          Paragraph.lines(binding.meaning(), canvas.size().columns() - MEANING_COLUMN - 2)) {
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
    return List.of(BACK);
  }
}
