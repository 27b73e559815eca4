package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.page.Page;
import padside.page.TextLine;
import padside.page.TextPage;
import padside.report.PageKind;
import padside.units.Reading;

/**
 * One page worth keeping, as text.
 *
 * @param which of its kind
 * @param page absent while it is being made; an objection where there is none
 * @param first the first line shown
 */
record PageScreen(
    PageKind kind, String which, Optional<Reading<Page>> page, int first, Ticket request)
    implements Screen {
  private static final int LEFT = 1;
  private static final int STEP = 10;
  private static final int WIDEST = 100;

  /** The title and the rule below it. */
  private static final int TITLE_ROWS = 2;

  private static final Binding WRITE =
      Binding.of(
          "h", "write HTML", "write it as a web page, to be read and printed from a browser");
  private static final Binding DOWN =
      Binding.of("<down><pagedown><end> ", "scroll", "further down; Page and Space by ten, End");
  private static final Binding UP = Binding.of("<up><pageup><home>", "", "further up; Home");

  static PageScreen of(PageKind kind, String which, World world) {
    return new PageScreen(kind, which, Optional.empty(), 0, new Ticket(world.turn(), 0));
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Opened) {
      return Step.stay(this).and(new Effect.MakePage(request, kind, which, world.settings()));
    }
    if (event instanceof Event.PageMade made && made.ticket().equals(request)) {
      return Step.stay(new PageScreen(kind, which, Optional.of(made.page()), 0, request));
    }
    if (event instanceof Event.NotRead failed && failed.ticket().equals(request)) {
      String said = failed.fault().sentence() + " " + failed.fault().nextStep();
      Reading<Page> none = Reading.refused(said.strip());
      return Step.stay(new PageScreen(kind, which, Optional.of(none), 0, request));
    }
    return event instanceof Event.Pressed pressed ? pressed(pressed.key()) : Step.stay(this);
  }

  private Step pressed(Key key) {
    if (HistoryScreen.BACK.has(key)) {
      return Step.close();
    }
    Optional<Page> made = page.flatMap(Reading::value);
    if (WRITE.has(key) && made.isPresent()) {
      return Step.stay(this).and(new Effect.WritePage(kind, made.get()));
    }
    int last = made.map(each -> lines(each, TextPage.USUAL_WIDTH).size() - 1).orElse(0);
    int moved =
        switch (key.name()) {
          case "<down>" -> first + 1;
          case "<up>" -> first - 1;
          case "<pagedown>", " " -> first + STEP;
          case "<pageup>" -> first - STEP;
          case "<home>" -> 0;
          case "<end>" -> last - STEP;
          default -> first;
        };
    return Step.stay(
        new PageScreen(kind, which, page, Math.max(0, Math.min(last, moved)), request));
  }

  /** Without its title, which the title bar has. */
  private static List<TextLine> lines(Page page, int width) {
    List<TextLine> all = TextPage.lines(page, Math.min(WIDEST, width));
    return all.subList(Math.min(TITLE_ROWS, all.size()), all.size());
  }

  @Override
  public void draw(Canvas canvas, World world) {
    if (page.isEmpty()) {
      Paragraph.draw(canvas, 2, "Making the page …", Style.PLAIN);
      return;
    }
    page.flatMap(Reading::objection)
        .ifPresent(text -> Paragraph.draw(canvas, 2, text, Style.PLAIN));
    page.flatMap(Reading::value).ifPresent(made -> draw(canvas, made));
  }

  private void draw(Canvas canvas, Page made) {
    List<TextLine> lines = lines(made, canvas.size().columns() - 2 * LEFT);
    int room = canvas.size().rows() - 3;
    int from = Math.min(first, Math.max(0, lines.size() - room));
    int row = 1;
    for (TextLine line : lines.subList(from, Math.min(lines.size(), from + room))) {
      canvas.put(LEFT, row++, line.text(), line.strong() ? Style.STRONG : Style.PLAIN);
    }
    if (from + room < lines.size()) {
      canvas.put(LEFT, canvas.size().rows() - 2, Line.more("Down"));
    }
  }

  @Override
  public String title(World world) {
    return page.flatMap(Reading::value).map(Page::title).orElse(kind.words());
  }

  @Override
  public String purpose() {
    return "A page as text; written, it can be opened in a browser and printed.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(WRITE, DOWN, HistoryScreen.BACK, UP);
  }
}
