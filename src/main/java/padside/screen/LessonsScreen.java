package padside.screen;

import java.util.List;
import java.util.Optional;

/** What the log teaches of lots, igniters and delays, to be read and scrolled. */
record LessonsScreen(int first) implements Screen {
  static final Binding OPEN =
      Binding.of("l", "lots", "what the log teaches of lots, igniters and delays");

  private static final Binding BACK = Binding.of("<esc>q", "back", "back to the range box");
  private static final Binding DOWN = Binding.of("<down>j", "scroll", "one line down");
  private static final Binding UP = Binding.of("<up>k", "", "one line up");
  private static final Binding PAGE_DOWN = Binding.of("<pagedown> ", "", "ten lines down");
  private static final Binding PAGE_UP = Binding.of("<pageup>", "", "ten lines up");
  private static final Binding HOME = Binding.of("<home>", "", "to the top");
  private static final int LEFT = 2;
  private static final int TOP = 1;

  static LessonsScreen open() {
    return new LessonsScreen(0);
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(this);
    }
    return BACK.has(pressed.key())
        ? Step.close()
        : Binding.find(bindings(), pressed.key())
            .map(binding -> Step.stay(scrolled(binding, world)))
            .orElse(Step.stay(this));
  }

  /** The narrowest screen has the most lines. */
  private LessonsScreen scrolled(Binding binding, World world) {
    int by =
        (binding.equals(DOWN) ? 1 : 0)
            - (binding.equals(UP) ? 1 : 0)
            + (binding.equals(PAGE_DOWN) ? 10 : 0)
            - (binding.equals(PAGE_UP) ? 10 : 0);
    int last = lines(Size.SMALLEST, world).size() - rows(Size.SMALLEST);
    return new LessonsScreen(binding.equals(HOME) ? 0 : Math.max(0, Math.min(first + by, last)));
  }

  private static List<Line> lines(Size size, World world) {
    return LessonsText.lines(world.log(), world.outcomes(), size.columns() - 2 * LEFT);
  }

  private static int rows(Size size) {
    return size.rows() - TOP - 2;
  }

  @Override
  public void draw(Canvas canvas, World world) {
    List<Line> lines = lines(canvas.size(), world);
    int rows = rows(canvas.size());
    int from = Math.max(0, Math.min(first, lines.size() - rows));
    for (int i = from; i < lines.size() && i - from < rows; i++) {
      canvas.put(LEFT, TOP + i - from, lines.get(i).text(), lines.get(i).style());
    }
    if (from + rows < lines.size()) {
      canvas.put(LEFT, TOP + rows, Line.more("Down"));
    }
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.LESSONS).at("" + first));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new LessonsScreen(
        mark.at().filter(at -> at.matches("[0-9]{1,6}")).map(Integer::valueOf).orElse(0));
  }

  @Override
  public String title(World world) {
    return "Lots, igniters, delays";
  }

  @Override
  public String purpose() {
    return "What all flights teach of lots, igniters and delays. Shares of few flights are "
        + "wide: the line beside each shows how wide.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_LESSONS;
  }

  @Override
  public List<Binding> bindings() {
    return List.of(BACK, DOWN, UP, PAGE_DOWN, PAGE_UP, HOME);
  }
}
