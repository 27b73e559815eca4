package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Action;

/**
 * A screen with a list of records: a cursor, find-as-you-type, and keys that open, add and remove.
 *
 * @param asked what is about to be removed, while the question stands
 * @param child the number of the screen opened last: what it saves first, the cursor goes to
 */
record RecordList(
    Shelf shelf, ListCursor cursor, Optional<RecordId> asked, Serials serials, long child)
    implements Screen {
  /** Rows of a screen that stay for title, list and footer. */
  private static final int LEAST_LISTED = 9;

  private static final Binding OPEN = Binding.of("<enter>", "open", "open the line");
  private static final Binding NEW = toAdd("one");
  private static final Binding REMOVE = toRemove("the line");
  static final Binding BACK = Binding.of("<esc>", "back", "back to the screen before");

  private static final Binding KEEP = Binding.of("<esc>", "keep it", "nothing is removed");
  private static final Binding SHOW_ALL = Binding.of("<esc>", "all", "show all lines again");
  static final Binding FOUND =
      Binding.of("<tab>", "to the list", "keep the lines found; letters are commands again");

  /**
   * The numbers of what was sent to be kept.
   *
   * @param sent of the last save sent
   * @param answered how many were answered
   */
  record Serials(long screen, long sent, long answered) {
    Ticket next() {
      return new Ticket(screen, sent + 1);
    }
  }

  static RecordList of(Shelf shelf, World world) {
    boolean asks = shelf.asking("", world.turn()).isPresent();
    return new RecordList(
        shelf,
        ListCursor.start().asking(asks),
        Optional.empty(),
        new Serials(world.turn(), 0, 0),
        -1);
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    if (event instanceof Event.Saved saved) {
      return Step.stay(
          saved.ticket().screen() == child ? following(saved, world) : answered(saved.ticket()));
    }
    if (event instanceof Event.FlightsFound found) {
      return Step.stay(with(shelf.told(found)));
    }
    if (event instanceof Event.Opened || event instanceof Event.Uncovered) {
      return asking(); // again: what was done above may have changed what is found
    }
    return Step.stay(event instanceof Event.NotSaved failed ? answered(failed.ticket()) : this);
  }

  /** Asks the log for what is typed, where that is what the shelf does. */
  private Step asking() {
    Optional<Shelf.Asking> asked = shelf.asking(cursor.find(), serials.screen());
    if (asked.isEmpty()) {
      return Step.stay(this);
    }
    Step step = Step.stay(with(asked.get().shelf()));
    return asked.get().question().map(step::and).orElse(step);
  }

  private Step pressed(Key key, World world) {
    if (asked.isPresent()) {
      return removing(key, world);
    }
    Optional<ListCursor> moved = cursor.press(key, shelf.items(world));
    if (moved.isPresent()) {
      return moved(moved.get());
    }
    if (OPEN.has(key)) {
      return current(world)
          .map(id -> opening(shelf.open(id, world), world))
          .orElse(Step.stay(this));
    }
    return cursor.finding() ? finding(key, world) : commanded(key, world);
  }

  private Step moved(ListCursor next) {
    return next.find().equals(cursor.find()) ? Step.stay(at(next)) : at(next).asking();
  }

  private Step finding(Key key, World world) {
    if (SHOW_ALL.has(key)) {
      return moved(cursor.whole(shelf.items(world)));
    }
    return Step.stay(FOUND.has(key) ? at(cursor.found()) : this);
  }

  private Step commanded(Key key, World world) {
    if (BACK.has(key)) {
      return cursor.find().isEmpty() ? Step.close() : moved(cursor.whole(shelf.items(world)));
    }
    if (ListCursor.FIND.has(key)) {
      return Step.stay(at(cursor.toFind()));
    }
    if (NEW.has(key)) {
      return shelf.create(world).map(form -> opening(form, world)).orElse(Step.stay(this));
    }
    if (REMOVE.has(key)) {
      Optional<RecordId> going = current(world).filter(id -> removal(id, world).isPresent());
      return Step.stay(new RecordList(shelf, cursor, going, serials, child));
    }
    if (HistoryScreen.OPEN.has(key)) {
      return current(world).map(id -> history(id, world)).orElse(Step.stay(this));
    }
    if (RemovedScreen.OPEN.has(key)) {
      return opening(RemovedScreen.of(shelf.kind(), world), world);
    }
    return shelf.press(key, this, world).orElse(Step.stay(this));
  }

  private Step history(RecordId id, World world) {
    String name =
        shelf.items(world).stream()
            .filter(item -> item.id().equals(id))
            .map(shelf::name)
            .findFirst()
            .orElse("");
    return opening(
        HistoryScreen.of(new HistoryScreen.Subject(shelf.kind(), id, name), world), world);
  }

  private Step removing(Key key, World world) {
    RecordList back = new RecordList(shelf, cursor, Optional.empty(), serials, child);
    Optional<Shelf.Removal> removal = asked.flatMap(id -> removal(id, world));
    if (removal.isEmpty() || !REMOVE.has(key)) {
      return Step.stay(back);
    }
    RecordList beside = back.at(cursor.besides(shelf.items(world)));
    return beside.saving(removal.get().action());
  }

  private Optional<Shelf.Removal> removal(RecordId id, World world) {
    return shelf.removal(id, world);
  }

  /** The record of the line the cursor is in. */
  Optional<RecordId> current(World world) {
    return cursor.current(shelf.items(world));
  }

  /** Opens a screen over the list and remembers whose record to go to. */
  Step opening(Screen screen, World world) {
    return Step.stay(new RecordList(shelf, cursor.found(), asked, serials, world.turn()))
        .open(screen);
  }

  /** Sends an act to be kept. */
  Step saving(Action action) {
    Serials next = new Serials(serials.screen(), serials.sent() + 1, serials.answered());
    return Step.stay(new RecordList(shelf, cursor, asked, next, child))
        .and(new Effect.Save(serials.next(), action));
  }

  /** Shows another shelf, all of its lines. */
  RecordList showing(Shelf other) {
    return new RecordList(other, ListCursor.start().asking(cursor.asking()), asked, serials, child);
  }

  /** The same lines, the shelf knowing more. */
  RecordList with(Shelf same) {
    return new RecordList(same, cursor, asked, serials, child);
  }

  private RecordList at(ListCursor moved) {
    return new RecordList(shelf, moved, asked, serials, child);
  }

  private RecordList following(Event.Saved saved, World world) {
    return saved.records().stream()
        .filter(id -> shelf.items(world).stream().anyMatch(item -> item.id().equals(id)))
        .findFirst()
        .map(id -> at(cursor.on(id)))
        .orElse(this);
  }

  private RecordList answered(Ticket ticket) {
    if (ticket.screen() != serials.screen()) {
      return this;
    }
    Serials next = new Serials(serials.screen(), serials.sent(), serials.answered() + 1);
    Shelf now = next.sent() == next.answered() ? shelf.settled() : shelf;
    return new RecordList(now, cursor, asked, next, child);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    List<ListPane.Item> all = shelf.items(world);
    List<ListPane.Item> shown = cursor.shown(all);
    int last = canvas.size().rows() - 2;
    canvas.put(2, 1, shelf.banner(world), Style.STRONG);
    String of = shown.size() < all.size() ? shown.size() + " of " : "";
    String count = shelf.count(world).orElse(of + all.size() + " in all");
    canvas.put(canvas.size().columns() - count.length() - 2, 1, count, Style.PLAIN);
    if (all.isEmpty() && cursor.find().isBlank()) {
      Paragraph.draw(canvas, 3, shelf.empty(), Style.PLAIN);
    } else if (shown.isEmpty()) {
      Paragraph.draw(canvas, 3, shelf.nothingFound(cursor.find()), Style.PLAIN);
    } else {
      drawLines(canvas, shown, world);
    }
    if (asked.isEmpty()) {
      drawTold(canvas, told(canvas.size(), world));
    }
    drawLastLine(canvas, last, world);
  }

  private List<String> told(Size size, World world) {
    return shelf.told(world).stream()
        .flatMap(text -> Paragraph.lines(text, size.columns() - 4).stream())
        .toList();
  }

  /** Above the last line, as many as leave the list a few. */
  private static void drawTold(Canvas canvas, List<String> told) {
    int top = canvas.size().rows() - 2 - told(canvas.size(), told);
    for (int i = 0; i < told(canvas.size(), told); i++) {
      canvas.put(2, top + i, told.get(i), Style.STRONG);
    }
  }

  private static int told(Size size, List<String> told) {
    return Math.min(told.size(), size.rows() - LEAST_LISTED);
  }

  /** The lines, and the end of the current one whole below them when it has to be cut. */
  private void drawLines(Canvas canvas, List<ListPane.Item> shown, World world) {
    int last = canvas.size().rows() - 2;
    int index = cursor.index(shown);
    List<ListPane.Heading> headings = shelf.headings(world);
    int told = told(canvas.size(), told(canvas.size(), world));
    int bottom = last - Math.max(3, told + 1);
    ListPane.draw(canvas, headings, shown, index, new ListPane.Rows(2, bottom).apart(world));
    Optional<String> cut =
        ListPane.cut(canvas.size(), headings, shown, index).filter(text -> told == 0);
    List<String> lines =
        cut.map(text -> Paragraph.lines(text, canvas.size().columns() - 4)).orElse(List.of());
    for (int i = 0; i < Math.min(2, lines.size()); i++) {
      canvas.put(2, last - 2 + i, lines.get(i), Style.LABEL);
    }
  }

  private void drawLastLine(Canvas canvas, int row, World world) {
    Optional<Shelf.Removal> removal = asked.flatMap(id -> removal(id, world));
    if (removal.isPresent()) {
      String question = removal.get().question() + " x removes it, any other key keeps it.";
      int lines = Paragraph.lines(question, canvas.size().columns() - 4).size();
      Paragraph.draw(canvas, row - lines + 1, question, Style.STRONG);
    } else if (cursor.finding() || !cursor.find().isEmpty()) {
      String label = "Find: ";
      canvas.put(2, row, label, Style.LABEL);
      int left = 2 + label.length();
      if (cursor.find().isEmpty()) {
        int room = canvas.size().columns() - left - 3;
        canvas.put(left + 1, row, Paragraph.cut(shelf.findable(), room), Style.LABEL);
      }
      canvas.put(left, row, cursor.find(), Style.FIELD);
      if (cursor.finding()) {
        canvas.cursorAt(left + cursor.find().length(), row);
      }
    }
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(
        shelf.bookmark().at(cursor.at()).withText(cursor.finding() ? cursor.find() : ""));
  }

  @Override
  public Screen at(Bookmark mark) {
    boolean finding = !mark.text().isEmpty();
    ListCursor found = new ListCursor(cursor.at(), mark.text(), finding, cursor.asking());
    return at(mark.on(found));
  }

  @Override
  public Screen covered(long screen) {
    return new RecordList(shelf, cursor.found(), asked, serials, screen);
  }

  @Override
  public String title(World world) {
    return shelf.title(world);
  }

  @Override
  public String purpose() {
    return shelf.purpose();
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_LISTS;
  }

  @Override
  public List<Binding> bindings() {
    if (asked.isPresent()) {
      return List.of(REMOVE, KEEP);
    }
    if (cursor.finding()) {
      return List.of(OPEN, FOUND, SHOW_ALL, ListCursor.MOVE);
    }
    List<Binding> table = new ArrayList<>(List.of(OPEN));
    table.addAll(shelf.ownBindings());
    table.addAll(
        List.of(BACK, shelf.find(), HistoryScreen.OPEN, RemovedScreen.OPEN, ListCursor.MOVE));
    return List.copyOf(table);
  }

  @Override
  public boolean questions() {
    return asked.isPresent();
  }

  @Override
  public boolean takesText() {
    return cursor.finding();
  }

  /** For shelves that can add. */
  static Binding toAdd(String what) {
    return Binding.of("n", "new", "add " + what);
  }

  /** For shelves that can remove. */
  static Binding toRemove(String what) {
    return Binding.of("x", "remove", "remove " + what + "; asks once");
  }
}
