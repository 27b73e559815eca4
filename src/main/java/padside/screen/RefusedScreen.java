package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Texts;

/** What the log's medium refuses and what can be done: free some space, or name another folder. */
record RefusedScreen(Form form, Ticket asks) implements Screen {
  static final Key KEY = Key.function(9);
  private static final Binding KEEP =
      Binding.of("<enter>", "keep it there", "keep what waits, and what is to come, there too");
  private static final Binding AGAIN =
      Binding.of("<f9>", "try now", "try the log's own folder again now");
  private static final Binding BACK =
      Binding.of("<esc>", "go on", "back to the screen; typing goes on");
  private static final Column<String> FOLDER =
      Column.text("other_folder", "where what waits is to be kept meanwhile");
  private static final int FORM_ROWS = 5;

  static RefusedScreen of(World world) {
    FormField<String> other =
        FormField.of(
            FOLDER, "Folder", new Texts(""), "On another medium, such as /media/stick/padside.");
    return new RefusedScreen(Form.of(List.of(other), Facts.none()), new Ticket(world.turn(), 1));
  }

  @Override
  public Step on(Event event, World world) {
    if (world.refused().isEmpty()) {
      return Step.close();
    }
    if (event instanceof Event.Medium told && told.answers().equals(Optional.of(asks))) {
      return Step.close();
    }
    return event instanceof Event.Pressed pressed ? pressed(pressed.key()) : Step.stay(this);
  }

  private Step pressed(Key key) {
    if (BACK.has(key)) {
      return Step.close();
    }
    if (AGAIN.has(key)) {
      return Step.stay(this).and(new Effect.TryAgain());
    }
    if (KEEP.has(key)) {
      String folder = form.entry().typed().strip();
      return folder.isEmpty() ? Step.close() : Step.stay(this).and(new Effect.KeepIn(asks, folder));
    }
    return Step.stay(new RefusedScreen(FormKeys.press(form, key).orElse(form), asks));
  }

  @Override
  public void draw(Canvas canvas, World world) {
    Optional<Refused> refused = world.refused();
    if (refused.isEmpty()) {
      return;
    }
    int row = Paragraph.draw(canvas, 2, refused.get().fault().sentence(), Style.STRONG);
    row = Paragraph.draw(canvas, row + 1, whatWaits(refused.get()), Style.PLAIN);
    FormPane.draw(
        canvas, form, new FormPane.Area(1, row + 1, canvas.size().columns() - 3, FORM_ROWS));
  }

  private static String whatWaits(Refused refused) {
    String waits =
        refused.changes() == 0 ? "Nothing waits yet." : refused.waiting() + " in memory.";
    String until =
        refused.reading()
            ? " You can look at everything; what you type waits in memory and is written as soon as"
                + " the log can be had for writing."
            : " Typing goes on; free some space and all is written, in order.";
    return refused.elsewhere().map(folder -> "Kept in " + folder + " meanwhile.").orElse(waits)
        + until
        + " It is tried again every "
        + Math.round(Due.TRYING_AGAIN.seconds())
        + " s. Or name a folder on another medium to keep it in meanwhile.";
  }

  @Override
  public String title(World world) {
    return world.refused().filter(Refused::reading).isPresent() ? "For reading" : "Not saved";
  }

  @Override
  public String purpose() {
    return "The medium takes nothing at the moment. What you type waits here and is tried "
        + "again every 5 seconds, or goes to another folder.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(KEEP, AGAIN, BACK);
  }

  @Override
  public boolean takesText() {
    return true;
  }
}
