package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Texts;

/**
 * The places this log is synchronised with: a stick, a shared folder, another machine by ssh. The
 * exchange goes on whatever screen is looked at.
 *
 * @param adding the place being typed
 * @param asked the place about to be taken out of the list, while the question stands
 */
record SyncScreen(ListCursor cursor, Optional<Form> adding, Optional<RecordId> asked)
    implements Screen {
  private static final Binding SYNC =
      Binding.of("<enter>", "synchronise", "exchange with the marked place all that either lacks");
  private static final Binding ADD =
      Binding.of("a", "add", "another place: a folder, or ssh:user@host");
  private static final Binding REMOVE =
      Binding.of("x", "remove", "take the place out of this list; asks once");
  private static final Binding STOP =
      Binding.of("s", "stop", "stop the exchange; what has come stays, the rest comes next time");
  private static final Binding TAKE =
      Binding.of("t", "", "take the lines of machines that are new to this log");
  private static final Binding REFUSE = Binding.of("n", "", "do not take them");
  private static final Binding BACK =
      Binding.of("<esc>q", "back", "back; an exchange under way goes on");
  private static final Binding MOVE = Binding.of("<down><up><home><end>", "", "to another place");
  private static final Binding GO =
      Binding.of(
          "<enter>", "synchronise", "exchange with the place typed, and keep it in the list");
  private static final Binding NOT = Binding.of("<esc>", "back", "back to the list");

  private static final Column<String> PLACE = Column.text("place", "a place to synchronise with");
  private static final int LEFT = 2;
  private static final int TOP = 2;
  private static final int TOLD_ROWS = 7;
  private static final int FORM_ROWS = 4;
  private static final int MOST_NAMED = 5;
  private static final List<ListPane.Heading> HEADINGS =
      List.of(
          ListPane.Heading.of("Place"),
          ListPane.Heading.of("Last").whole(),
          ListPane.Heading.ofNumbers("Sent"),
          ListPane.Heading.ofNumbers("Came"));

  static SyncScreen open() {
    return new SyncScreen(ListCursor.start(), Optional.empty(), Optional.empty());
  }

  private static Form form() {
    FormField<String> place =
        FormField.of(
            PLACE,
            "Place",
            new Texts(""),
            "A folder on a stick or share, such as /media/stick, or ssh:ann@desktop.");
    return Form.of(List.of(place), Facts.none());
  }

  private SyncScreen with(ListCursor other) {
    return new SyncScreen(other, adding, Optional.empty());
  }

  private SyncScreen typing(Optional<Form> form) {
    return new SyncScreen(cursor, form, Optional.empty());
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(this);
    }
    return adding.isPresent()
        ? typed(adding.get(), pressed.key(), world)
        : pressed(pressed.key(), world);
  }

  private Step typed(Form form, Key key, World world) {
    if (NOT.has(key)) {
      return Step.stay(typing(Optional.empty()));
    }
    if (GO.has(key)) {
      String place = form.entry().typed().strip();
      SyncScreen listed = typing(Optional.empty());
      return place.isEmpty()
          ? Step.stay(listed)
          : listed.with(cursor.on(new RecordId(place))).exchanging(place, world);
    }
    return Step.stay(typing(FormKeys.press(form, key).or(() -> adding)));
  }

  private Step pressed(Key key, World world) {
    if (world.sync().asks() && (TAKE.has(key) || REFUSE.has(key))) {
      return Step.stay(this).and(new Effect.TakeStrangers(TAKE.has(key)));
    }
    if (BACK.has(key)) {
      return asked.isPresent() ? Step.stay(with(cursor)) : Step.close();
    }
    if (ADD.has(key)) {
      return Step.stay(typing(Optional.of(form())));
    }
    if (STOP.has(key) && world.sync().running().isPresent()) {
      return Step.stay(this).and(new Effect.StopSync());
    }
    Optional<RecordId> marked = cursor.current(items(world));
    if (SYNC.has(key)) {
      return marked
          .map(place -> with(cursor.on(place)).exchanging(place.text(), world))
          .orElseGet(() -> Step.stay(typing(Optional.of(form()))));
    }
    if (REMOVE.has(key) && marked.isPresent()) {
      return removing(marked.get(), world);
    }
    return cursor
        .press(key, items(world))
        .map(moved -> Step.stay(with(moved)))
        .orElse(Step.stay(this));
  }

  private Step exchanging(String place, World world) {
    return world
        .sync()
        .running()
        .map(
            running ->
                Step.stay(this)
                    .and(
                        new Effect.Tell(
                            "The exchange with " + running.place() + " goes on; s stops it.")))
        .orElseGet(() -> Step.stay(this).and(new Effect.Synchronise(place)));
  }

  private Step removing(RecordId marked, World world) {
    if (!asked.equals(Optional.of(marked))) {
      return Step.stay(new SyncScreen(cursor.on(marked), adding, Optional.of(marked)))
          .and(
              new Effect.Tell(
                  "x again takes "
                      + marked.text()
                      + " out of this list; all that came from there stays."));
    }
    return Step.stay(with(cursor.besides(items(world)))).and(new Effect.DropPartner(marked.text()));
  }

  private static List<ListPane.Item> items(World world) {
    return world.sync().partners().stream()
        .map(
            each ->
                new ListPane.Item(
                    new RecordId(each.place()),
                    List.of(
                        each.place(),
                        each.when(),
                        Long.toString(each.out()),
                        Long.toString(each.in()))))
        .toList();
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int bottom = canvas.size().rows() - 2;
    List<ListPane.Item> items = items(world);
    if (adding.isPresent()) {
      Paragraph.draw(
          canvas, 2, "Where is the other machine, or the folder both can reach?", Style.STRONG);
      FormPane.draw(
          canvas, adding.get(), new FormPane.Area(1, 4, canvas.size().columns() - 3, FORM_ROWS));
      return;
    }
    if (items.isEmpty()) {
      Paragraph.draw(
          canvas,
          TOP,
          "This log was never synchronised. a names a place: a folder on a stick or share that the"
              + " other machine is shown too, or ssh:user@host. Both then have everything; nothing"
              + " is lost.",
          Style.PLAIN);
    } else {
      ListPane.draw(
          canvas,
          HEADINGS,
          items,
          cursor.index(items),
          new ListPane.Rows(TOP, bottom - TOLD_ROWS).apart(world));
    }
    told(canvas, bottom - TOLD_ROWS + 1, world);
  }

  /** The exchange under way, and what it asks; else how the marked one ended. */
  private void told(Canvas canvas, int top, World world) {
    List<Line> lines =
        world.sync().running().map(SyncScreen::running).orElseGet(() -> ended(world));
    int width = canvas.size().columns() - 2 * LEFT;
    int row = top;
    for (Line line : lines) {
      for (String text : Paragraph.lines(line.text(), width)) {
        if (row < canvas.size().rows() - 2) {
          canvas.put(LEFT, row++, text, line.style());
        }
      }
    }
  }

  private List<Line> ended(World world) {
    return cursor.current(items(world)).stream()
        .flatMap(
            place ->
                world.sync().partners().stream().filter(each -> each.place().equals(place.text())))
        .map(each -> Line.plain(each.ended()))
        .toList();
  }

  private static List<Line> running(Sync.Running running) {
    List<Line> lines = new ArrayList<>();
    if (running.asks()) {
      lines.add(Line.strong("New to this log; t takes their lines, n does not:"));
      for (Sync.Stranger each : running.strangers()) {
        if (lines.size() < MOST_NAMED || running.strangers().size() == MOST_NAMED) {
          lines.add(Line.plain(each.words()));
        }
      }
      int more = running.strangers().size() - lines.size() + 1;
      if (more > 0) {
        lines.add(Line.plain("and " + more + " more"));
      }
      return lines;
    }
    lines.add(
        Line.strong(
            (running.stopping() ? "Stopping the exchange with " : "Synchronising with ")
                + running.place()));
    if (!running.doing().isEmpty()) {
      String of = running.of() > 0 ? running.done() + " of " + Sync.counted(running.of()) : "";
      lines.add(Line.plain(running.doing() + (of.isEmpty() ? " …" : ": " + of)));
    }
    lines.add(Line.plain("It goes on while you do other things; s stops it."));
    return lines;
  }

  @Override
  public Optional<Bookmark> bookmark() {
    Bookmark mark = Bookmark.of(Bookmarks.SYNC).at(cursor.at());
    return Optional.of(adding.map(form -> mark.withText(form.entry().typed())).orElse(mark));
  }

  @Override
  public Screen at(Bookmark mark) {
    Optional<Form> typed =
        Optional.of(mark.text())
            .filter(text -> !text.isEmpty())
            .map(text -> form().set(PLACE.name(), text));
    return new SyncScreen(mark.on(cursor), typed, Optional.empty());
  }

  @Override
  public String title(World world) {
    return "Synchronise";
  }

  @Override
  public String purpose() {
    return "Other machines that keep this log: sticks, folders and machines by ssh. An "
        + "exchange only adds; it goes on while you work.";
  }

  @Override
  public List<Binding> bindings() {
    return adding.isPresent()
        ? List.of(GO, NOT, FormKeys.CLEAR)
        : List.of(SYNC, ADD, REMOVE, STOP, BACK, TAKE, REFUSE, MOVE);
  }

  @Override
  public boolean questions() {
    return asked.isPresent();
  }

  @Override
  public boolean takesText() {
    return adding.isPresent();
  }
}
