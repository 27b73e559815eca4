package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import padside.fact.RecordId;

/**
 * What machines said differently without having heard of each other, one question at a time, all
 * that was said side by side.
 *
 * @param index of the question shown
 * @param last what was chosen in last, to undo it
 */
record ConflictScreen(int index, Optional<HistoryScreen.Subject> last) implements Screen {
  static final Binding OPEN = Binding.of("r", "", "reconcile what two machines say differently");

  private static final Binding CHOOSE =
      Binding.of(
          "123456789",
          "choose",
          "keep what stands under that number; the rest stays in the history");
  private static final Binding LATER =
      Binding.of(
          "<tab> <down>", "later", "leave it open and go on to the next; all stays as it is");
  private static final Binding BEFORE = Binding.of("<s-tab><up>", "", "to the one before");
  private static final Binding HISTORY =
      Binding.of("h", "history", "all that was done to this record");
  private static final Binding UNDO =
      Binding.of("u", "undo", "history of what was chosen last: u there undoes it");
  private static final Binding BACK = Binding.of("<esc>q", "back", "back to the screen before");

  private static final int TOP = 5;
  private static final int LEFT = 2;

  static ConflictScreen open() {
    return new ConflictScreen(0, Optional.empty());
  }

  /** With the first question about a record shown. */
  static ConflictScreen of(RecordId record, World world) {
    List<Dispute> all = Disputes.of(world);
    int first =
        IntStream.range(0, all.size())
            .filter(i -> all.get(i).record().equals(record))
            .findFirst()
            .orElse(0);
    return new ConflictScreen(first, Optional.empty());
  }

  /** What leads here from other screens, without putting the questions; mostly nothing. */
  static Optional<String> notice(World world) {
    long records = world.log().conflicts().stream().map(each -> each.record()).distinct().count();
    return Optional.of((records == 1 ? "1 record" : records + " records") + " in conflict: r")
        .filter(any -> records > 0);
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(this);
    }
    Key key = pressed.key();
    if (BACK.has(key)) {
      return Step.close();
    }
    if (UNDO.has(key)) {
      return last.map(subject -> Step.stay(this).open(HistoryScreen.of(subject, world)))
          .orElse(Step.stay(this).and(new Effect.Tell("Nothing was chosen here yet.")));
    }
    List<Dispute> all = Disputes.of(world);
    if (all.isEmpty()) {
      return Step.stay(this);
    }
    Dispute shown = all.get(at(all));
    if (LATER.has(key) || BEFORE.has(key)) {
      int to = Math.floorMod(at(all) + (LATER.has(key) ? 1 : -1), all.size());
      return Step.stay(new ConflictScreen(to, last));
    }
    if (HISTORY.has(key)) {
      return Step.stay(this).open(HistoryScreen.of(subject(shown), world));
    }
    return shown.side(key).map(side -> chosen(shown, side, world)).orElse(Step.stay(this));
  }

  private int at(List<Dispute> all) {
    return index < all.size() ? index : 0;
  }

  private static HistoryScreen.Subject subject(Dispute dispute) {
    return new HistoryScreen.Subject(dispute.kind(), dispute.record(), dispute.name());
  }

  private Step chosen(Dispute dispute, Dispute.Side side, World world) {
    Ticket ticket = new Ticket(world.turn(), 1);
    Effect.Save save = new Effect.Save(ticket, dispute.choosing(side));
    String told = "Done: " + side.label() + ". u undoes it.";
    return Step.stay(new ConflictScreen(index, Optional.of(subject(dispute))))
        .open(new SaveThenBack(ticket, save, told));
  }

  @Override
  public void draw(Canvas canvas, World world) {
    List<Dispute> all = Disputes.of(world);
    if (all.isEmpty()) {
      Paragraph.draw(canvas, 2, "Nothing is open: the machines of this log agree.", Style.PLAIN);
      return;
    }
    Dispute shown = all.get(at(all));
    int width = canvas.size().columns() - 2 * LEFT;
    canvas.put(LEFT, 1, Paragraph.cut(shown.name(), width), Style.STRONG);
    canvas.put(LEFT, 3, Paragraph.cut(shown.about() + ": which is right?", width), Style.PLAIN);
    List<List<Line>> sides = new ArrayList<>();
    boolean beside = shown.sides().size() == 2;
    int room = beside ? (width - LEFT) / 2 : width;
    for (int i = 0; i < shown.sides().size(); i++) {
      sides.add(lines(i + 1, shown.sides().get(i), room));
    }
    int bottom = canvas.size().rows() - 2;
    if (beside) {
      column(canvas, sides.get(0), LEFT, new ListPane.Rows(TOP, bottom));
      column(canvas, sides.get(1), LEFT + room + LEFT, new ListPane.Rows(TOP, bottom));
    } else {
      int each = Math.max(3, (bottom - TOP) / sides.size());
      for (int i = 0; i < sides.size(); i++) {
        int top = TOP + i * each;
        column(canvas, sides.get(i), LEFT, new ListPane.Rows(top, Math.min(bottom, top + each)));
      }
    }
  }

  private static List<Line> lines(int number, Dispute.Side side, int width) {
    String machine = number + "  " + side.by().get(0) + (side.shows() ? " (shows now)" : "");
    List<Line> lines = new ArrayList<>();
    lines.add(new Line(Paragraph.cut(machine, width), Style.STRONG));
    lines.add(new Line(Paragraph.cut("   " + side.by().get(1), width), Style.LABEL));
    for (String said : side.lines()) {
      Paragraph.hanging("   ", said, width).forEach(text -> lines.add(Line.plain(text)));
    }
    return lines;
  }

  /** From a row to the one before another, the last of them telling that more was cut off. */
  private static void column(Canvas canvas, List<Line> lines, int left, ListPane.Rows rows) {
    int height = rows.bottom() - rows.top();
    for (int i = 0; i < Math.min(height, lines.size()); i++) {
      boolean cut = i == height - 1 && lines.size() > height;
      Line line = lines.get(i);
      canvas.put(left, rows.top() + i, cut ? "   …" : line.text(), line.style());
    }
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.CONFLICTS).at("" + index));
  }

  @Override
  public Screen at(Bookmark mark) {
    return mark.at()
        .filter(text -> text.matches("[0-9]{1,4}"))
        .map(text -> new ConflictScreen(Integer.parseInt(text), last))
        .orElse(this);
  }

  @Override
  public String title(World world) {
    List<Dispute> all = Disputes.of(world);
    return all.isEmpty() ? "Conflicts" : "Conflict " + (at(all) + 1) + " of " + all.size();
  }

  @Override
  public String purpose() {
    return "Two machines said different things of one record, neither knowing of the other. "
        + "One question each; nothing is lost whatever you choose.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(CHOOSE, LATER, BEFORE, HISTORY, UNDO, BACK);
  }
}
