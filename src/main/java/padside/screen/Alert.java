package padside.screen;

import java.util.List;
import padside.fact.Fault;

/** Something went wrong outside: what happened and what to do, the screen below untouched. */
record Alert(String title, String sentence, String nextStep) implements Screen {
  private static final Binding DISMISS = Binding.of("<enter><esc> ", "go on", "back to the screen");

  static Alert of(Fault fault) {
    return new Alert("Not done", fault.sentence(), fault.nextStep());
  }

  @Override
  public Step on(Event event, World world) {
    boolean dismissed = event instanceof Event.Pressed pressed && DISMISS.has(pressed.key());
    return dismissed ? Step.close() : Step.stay(this);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int row = Paragraph.draw(canvas, 2, sentence, Style.STRONG);
    Paragraph.draw(canvas, row + 1, nextStep, Style.PLAIN);
  }

  @Override
  public String title(World world) {
    return title;
  }

  @Override
  public String purpose() {
    return "Something outside the program failed. It says what, what was seen and what to "
        + "do; the screen below is as it was.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(DISMISS);
  }
}
