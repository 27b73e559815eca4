package padside.screen;

import java.util.ArrayList;
import java.util.List;

/** The check over the whole width with every source, to be read and scrolled. */
record CheckScreen(LiveCheck check, int scroll) implements Screen {
  private static final int LEFT = 2;
  private static final int TOP = 2;
  static final Binding CHECK = Binding.of("<f3>", "check", "the whole check with its sources");
  private static final Binding BACK = Binding.of("<esc><f3>q", "back", "back to the card");
  private static final Binding DOWN = Binding.of("<down>j", "scroll", "one line down");
  private static final Binding UP = Binding.of("<up>k", "", "one line up");
  private static final Binding PAGE_DOWN = Binding.of("<pagedown> ", "", "ten lines down");
  private static final Binding PAGE_UP = Binding.of("<pageup>", "", "ten lines up");
  private static final Binding HOME = Binding.of("<home>", "", "to the top");

  static CheckScreen of(LiveCheck check) {
    return new CheckScreen(check, 0);
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(new CheckScreen(check.on(event), scroll));
    }
    if (BACK.has(pressed.key())) {
      return Step.close();
    }
    if (ChartScreen.CHART.has(pressed.key())) {
      return Step.close().open(ChartScreen.of(check));
    }
    return Binding.find(bindings(), pressed.key())
        .map(binding -> Step.stay(scrolled(binding, world)))
        .orElse(Step.stay(this));
  }

  private CheckScreen scrolled(Binding binding, World world) {
    int to =
        binding.equals(HOME)
            ? 0
            : scroll
                + (binding.equals(DOWN) ? 1 : 0)
                - (binding.equals(UP) ? 1 : 0)
                + (binding.equals(PAGE_DOWN) ? 10 : 0)
                - (binding.equals(PAGE_UP) ? 10 : 0);
    int width = Size.SMALLEST.columns() - 2 * LEFT;
    int last = lines(width, world).size() - rows(Size.SMALLEST);
    return new CheckScreen(check, Math.max(0, Math.min(to, last)));
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int width = canvas.size().columns() - 2 * LEFT;
    FormPane.Area band = new FormPane.Area(LEFT, TOP, width, LargeCheck.rows(canvas.size()));
    boolean large = LargeCheck.fits(canvas.size());
    int top = large ? LargeCheck.row(canvas, check, world, band) + 1 : TOP;
    int rows = canvas.size().rows() - top - 2;
    List<Line> all = lines(width, world);
    List<Line> lines = large ? all.subList(1, all.size()) : all;
    int first = Math.max(0, Math.min(scroll, lines.size() - rows));
    for (int i = first; i < lines.size() && i - first < rows; i++) {
      Line line = lines.get(i);
      canvas.fill(LEFT, top + i - first, width, line.style());
      canvas.put(LEFT, top + i - first, line.text(), line.style());
    }
    if (first + rows < lines.size()) {
      canvas.put(LEFT, top + rows, Line.more("Down"));
    }
  }

  private static int rows(Size size) {
    return size.rows() - TOP - 2;
  }

  private List<Line> lines(int width, World world) {
    List<Line> lines = new ArrayList<>(CheckText.verdict(check, width));
    for (List<Line> section : CheckText.whole(check, width, world)) {
      lines.add(Line.blank());
      lines.addAll(section);
    }
    lines.add(Line.blank());
    lines.add(Line.plain(CheckText.CAUTION));
    return lines;
  }

  @Override
  public String title(World world) {
    return "Check · " + CheckText.of(check);
  }

  @Override
  public String purpose() {
    return "Every rule the check went by, with its source and how sure that source is, and "
        + "what would help. It advises; the flier decides.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_CHECK;
  }

  @Override
  public List<Binding> bindings() {
    return List.of(BACK, ChartScreen.CHART, DOWN, UP, PAGE_DOWN, PAGE_UP, HOME);
  }
}
