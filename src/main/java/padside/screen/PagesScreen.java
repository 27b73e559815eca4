package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Rocket;
import padside.report.PageKind;

/**
 * The pages worth keeping, to choose from.
 *
 * @param day whose sheet stands first
 */
record PagesScreen(Optional<RecordId> day, ListCursor cursor) implements Screen {
  static final String MEANING = "pages to keep or print: day, season, rocket";

  private static final Binding OPEN = Binding.of("<enter>", "open", "the marked page");
  private static final Binding FOUND = Binding.of("<tab>", "", RecordList.FOUND.meaning());

  private static final String BETWEEN = " ";

  static PagesScreen of(Optional<Day> day) {
    return new PagesScreen(day.map(Day::id), ListCursor.start());
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(this);
    }
    Key key = pressed.key();
    List<ListPane.Item> items = items(world);
    if (OPEN.has(key)) {
      return cursor
          .current(items)
          .map(id -> Step.stay(this).open(page(id, world)))
          .orElse(Step.stay(this));
    }
    boolean all = cursor.find().isEmpty() && !cursor.finding();
    if (RecordList.BACK.has(key)) {
      return all ? Step.close() : at(cursor.whole(items));
    }
    if (ListCursor.FIND.has(key) && !cursor.finding()) {
      return at(cursor.toFind());
    }
    return at(FOUND.has(key) ? cursor.found() : cursor.press(key, items).orElse(cursor));
  }

  private Step at(ListCursor moved) {
    return Step.stay(new PagesScreen(day, moved));
  }

  /** A line goes by the code of its page and the record the page is of. */
  private static Screen page(RecordId line, World world) {
    String[] parts = line.text().split(BETWEEN, 2);
    return PageScreen.of(
        PageKind.find(parts[0]).orElseThrow(), parts.length == 2 ? parts[1] : "", world);
  }

  private List<ListPane.Item> items(World world) {
    List<ListPane.Item> items = new ArrayList<>();
    day.flatMap(world.log()::day)
        .ifPresent(
            each ->
                items.add(item(PageKind.DAY, each.id().text(), DayWords.of(each, world.log()))));
    String year =
        day.flatMap(world.log()::day)
            .flatMap(Day::date)
            .map(date -> String.valueOf(date.getYear()))
            .orElse("");
    items.add(item(PageKind.SEASON, year, year.isEmpty() ? "the last year" : year));
    items.add(item(PageKind.SEASON, "all", "all of the log"));
    items.add(item(PageKind.MOTORS, "", "fired, left, to buy for the plan"));
    items.add(item(PageKind.FAILURE, "", "the last one, for who made or tested it"));
    items.add(item(PageKind.CARDS, "", "to fill by pen"));
    items.add(item(PageKind.KEYS, "", "one sheet for the pad box"));
    for (Rocket rocket : world.log().rockets()) {
      items.add(item(PageKind.ROCKET, rocket.id().text(), rocket.name()));
    }
    for (int i = world.log().days().size() - 1; i >= 0; i--) {
      Day other = world.log().days().get(i);
      if (!Optional.of(other.id()).equals(day)) {
        items.add(item(PageKind.DAY, other.id().text(), DayWords.of(other, world.log())));
      }
    }
    return items;
  }

  private static ListPane.Item item(PageKind kind, String which, String words) {
    return new ListPane.Item(
        new RecordId((kind.code() + BETWEEN + which).strip()), List.of(kind.words(), words));
  }

  @Override
  public void draw(Canvas canvas, World world) {
    List<ListPane.Item> items = cursor.shown(items(world));
    int last = canvas.size().rows() - 3;
    List<ListPane.Heading> headings =
        List.of(ListPane.Heading.of("Page"), ListPane.Heading.of("Of"));
    ListPane.draw(
        canvas, headings, items, cursor.index(items), new ListPane.Rows(2, last).apart(world));
    if (!cursor.find().isEmpty() || cursor.finding()) {
      canvas.put(2, canvas.size().rows() - 2, "Find: " + cursor.find(), Style.PLAIN);
    }
  }

  @Override
  public boolean takesText() {
    return cursor.finding();
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.PAGES).about(day).at(cursor.at()));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new PagesScreen(day, mark.on(cursor));
  }

  @Override
  public String title(World world) {
    return "Pages worth keeping";
  }

  @Override
  public String purpose() {
    return "Pages worth keeping: day sheets, a rocket's history, the season, blank cards, "
        + "the sheet of keys.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_LISTS;
  }

  @Override
  public List<Binding> bindings() {
    return List.of(OPEN, ListCursor.FIND, RecordList.BACK, ListCursor.MOVE, FOUND);
  }
}
