package padside.screen;

import java.util.List;

/** Asked before leaving from anywhere; leaving loses nothing, so one key does. */
record QuitQuestion() implements Screen {
  private static final Binding LEAVE =
      Binding.of("q<enter><c-c><f10>y ", "quit", "leave Padside; all that was typed is kept");
  private static final Binding SHELL = Binding.of("z", "shell", Everywhere.PUT_ASIDE.meaning());
  private static final Binding ANEW = Binding.of("l", "", Everywhere.REPAINT.meaning());
  private static final Binding STAY = Binding.of("<esc>n", "stay", "back to the screen");

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      if (LEAVE.has(pressed.key())) {
        return Step.stay(this).and(new Effect.Quit());
      }
      if (SHELL.has(pressed.key())) {
        return Step.close().and(new Effect.PutAside());
      }
      if (ANEW.has(pressed.key())) {
        return Step.close().and(new Effect.Repaint());
      }
      if (STAY.has(pressed.key())) {
        return Step.close();
      }
    }
    return Step.stay(this);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int row = Paragraph.draw(canvas, 2, "Leave Padside?", Style.STRONG);
    Paragraph.draw(
        canvas,
        row + 1,
        "What was typed is kept, unfinished cards too: the next start shows them again.",
        Style.PLAIN);
  }

  @Override
  public String title(World world) {
    return "Quit";
  }

  @Override
  public String purpose() {
    return "Leaving. All that was typed is kept either way.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(LEAVE, SHELL, STAY, ANEW);
  }

  @Override
  public boolean questions() {
    return true;
  }
}
