package padside.screen;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Kind;
import padside.flight.Operation;

/**
 * Everything that was done to one record, newest first, and what each changed; any of it can be
 * taken back and done again.
 *
 * @param history oldest first; absent while it is being read
 * @param scroll lines of the changes that stand above the pane
 * @param requests the number of this screen and how many requests were sent
 * @param keys pressed while an answer is under way, to follow once it is there
 */
record HistoryScreen(
    Subject subject,
    Optional<List<Operation>> history,
    ListCursor cursor,
    int scroll,
    Ticket requests,
    List<Key> keys)
    implements Screen {
  static final Binding OPEN =
      Binding.of("h", "", "history of the marked one: what changed and when; undo and redo");

  private static final Binding UNDO =
      Binding.of("u", "undo", "take the marked change back; what was changed since stays");
  private static final Binding REDO =
      Binding.of("r", "redo", "do again what was taken back, or what the marked undo took back");
  static final Binding BACK = Binding.of("<esc>q", "back", "back to the screen before");
  private static final Binding MOVE =
      Binding.of(
          "<down><up><home><end>", "", "to the older change, the newer, the first, the last");
  private static final Binding DOWN = Binding.of(" <pagedown>", "more", "further down its fields");
  private static final Binding UP = Binding.of("<pageup>", "", "further up its fields");

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
  private static final int TOP = 2;
  private static final int LEFT = 2;
  private static final List<ListPane.Heading> HEADINGS =
      List.of(
          ListPane.Heading.of("When"),
          ListPane.Heading.of("On"),
          ListPane.Heading.of("What"),
          ListPane.Heading.of("State"));

  /** The record looked at. */
  record Subject(Kind kind, RecordId id, String name) {}

  /** Keeps its own list. */
  HistoryScreen {
    keys = List.copyOf(keys);
  }

  static HistoryScreen of(Subject subject, World world) {
    return new HistoryScreen(
        subject, Optional.empty(), ListCursor.start(), 0, new Ticket(world.turn(), 0), List.of());
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return waits() && !BACK.has(pressed.key())
          ? holding(pressed.key())
          : pressed(pressed.key(), world);
    }
    if (event instanceof Event.Opened) {
      return reading();
    }
    if (event instanceof Event.Saved saved && saved.ticket().equals(requests)) {
      return reading();
    }
    if (event instanceof Event.HistoryRead read && read.ticket().equals(requests)) {
      return following(read.history(), world);
    }
    boolean failed = event instanceof Event.NotSaved not && not.ticket().equals(requests);
    return failed ? reading() : Step.stay(this);
  }

  private boolean waits() {
    return history.isEmpty();
  }

  private Step holding(Key key) {
    List<Key> more = new ArrayList<>(keys);
    more.add(key);
    return Step.stay(new HistoryScreen(subject, history, cursor, scroll, requests, more));
  }

  private Ticket next() {
    return new Ticket(requests.screen(), requests.serial() + 1);
  }

  private Step reading() {
    HistoryScreen asked =
        new HistoryScreen(subject, Optional.empty(), cursor, scroll, next(), keys);
    return Step.stay(asked)
        .and(new Effect.ReadHistory(asked.requests, subject.kind(), subject.id()));
  }

  private Step following(List<Operation> read, World world) {
    HistoryScreen now =
        new HistoryScreen(subject, Optional.of(read), cursor, scroll, requests, List.of());
    Step step = Step.stay(now);
    for (int i = 0; i < keys.size() && step.self().isPresent(); i++) {
      Step next = step.self().get().on(new Event.Pressed(keys.get(i), world.moment()), world);
      step = new Step(next.self(), next.over(), step.and(next.effects()).effects());
    }
    return step;
  }

  private Step pressed(Key key, World world) {
    if (BACK.has(key)) {
      return Step.close();
    }
    if (DOWN.has(key) || UP.has(key)) {
      return Step.stay(scrolled(DOWN.has(key) ? 5 : -5, world));
    }
    if (UNDO.has(key)) {
      return marked().map(done -> undo(done, world)).orElse(Step.stay(this));
    }
    if (REDO.has(key)) {
      return marked().map(done -> redo(done, world)).orElse(Step.stay(this));
    }
    return cursor
        .press(key, items(world))
        .map(moved -> new HistoryScreen(subject, history, moved, 0, requests, keys))
        .map(Step::stay)
        .orElse(Step.stay(this));
  }

  private HistoryScreen scrolled(int lines, World world) {
    int width = Size.SMALLEST.columns() - 2 * LEFT;
    int most =
        marked().map(done -> text(done, world).lines(subject.id(), width).size() - 1).orElse(0);
    int to = Math.max(0, Math.min(most, scroll + lines));
    return new HistoryScreen(subject, history, cursor, to, requests, keys);
  }

  private Step undo(Operation done, World world) {
    List<Operation> all = history.orElse(List.of());
    if (Operation.takenBack(all).containsKey(done.id())) {
      return telling("It is undone already; r does it again.");
    }
    return doing(done.asDoneLast(all).undoing(), done, world);
  }

  private Step redo(Operation done, World world) {
    Optional<Operation> undo =
        Optional.ofNullable(Operation.takenBack(history.orElse(List.of())).get(done.id()))
            .or(() -> Optional.of(done).filter(Operation::isUndo));
    return undo.map(taking -> doing(taking.undoing(), taking, world))
        .orElseGet(() -> telling("It stands; there is nothing to do again."));
  }

  private Step telling(String line) {
    return Step.stay(this).and(new Effect.Tell(line));
  }

  private Step doing(Operation.Undoing undoing, Operation of, World world) {
    String told = told(undoing, text(of, world));
    if (undoing.doesNothing()) {
      return telling(told);
    }
    HistoryScreen saving =
        new HistoryScreen(
            subject,
            Optional.empty(),
            marked().map(at -> cursor.on(at.id())).orElse(cursor),
            0,
            next(),
            keys);
    return Step.stay(saving)
        .and(new Effect.Save(saving.requests, undoing.action()))
        .and(new Effect.Tell(told));
  }

  /** What was taken back and what was not, in a line. */
  static String told(Operation.Undoing undoing, ChangeText text) {
    String left =
        undoing.left().isEmpty()
            ? ""
            : " Changed since and left as it is: "
                + String.join(", ", text.labels(undoing.left()))
                + ".";
    if (undoing.doesNothing()) {
      return "Nothing of it is left to undo." + left;
    }
    return Paragraph.capital(undoing.action().label()) + "." + left;
  }

  private Optional<Operation> marked() {
    List<Operation> all = newestFirst();
    return cursor
        .at()
        .flatMap(id -> all.stream().filter(done -> done.id().equals(id)).findFirst())
        .or(() -> all.stream().findFirst());
  }

  private List<Operation> newestFirst() {
    List<Operation> all = new ArrayList<>(history.orElse(List.of()));
    java.util.Collections.reverse(all);
    return all;
  }

  /** The operation in words, over the facts as they were. */
  private ChangeText text(Operation done, World world) {
    return new ChangeText(done, before(history.orElse(List.of()), done), world);
  }

  /** What the records held before an operation, as far as this history tells. */
  static Map<RecordId, Facts> before(List<Operation> history, Operation done) {
    Map<RecordId, Facts> facts = new LinkedHashMap<>();
    for (Operation each : history) {
      if (each.id().equals(done.id())) {
        break;
      }
      for (Operation.Changed cell : each.changes()) {
        facts.merge(cell.record(), Facts.none().with(cell.field(), cell.after()), Facts::with);
      }
    }
    return facts;
  }

  private List<ListPane.Item> items(World world) {
    Map<RecordId, Operation> back = Operation.takenBack(history.orElse(List.of()));
    Set<RecordId> doubtful = Operation.outOfTime(history.orElse(List.of()));
    return newestFirst().stream()
        .map(
            done ->
                new ListPane.Item(
                    done.id(),
                    List.of(
                        WHEN.format(LocalDateTime.ofInstant(done.when(), world.zone()))
                            + (doubtful.contains(done.id()) ? " ?" : ""),
                        done.machine(),
                        done.label(),
                        back.containsKey(done.id()) ? "undone" : "")))
        .toList();
  }

  @Override
  public void draw(Canvas canvas, World world) {
    List<ListPane.Item> items = items(world);
    if (items.isEmpty()) {
      String none = waits() ? "Reading …" : "Nothing was ever done to it in this log.";
      Paragraph.draw(canvas, TOP, none, Style.PLAIN);
      return;
    }
    canvas.put(LEFT, 1, how(), Style.LABEL);
    int rows = canvas.size().rows();
    int listed = Math.min(items.size(), Math.max(4, (rows - 6) / 3));
    ListPane.draw(
        canvas,
        HEADINGS,
        items,
        cursor.index(items),
        new ListPane.Rows(TOP, TOP + listed).apart(world));
    marked().ifPresent(done -> changes(canvas, done, TOP + listed + 2, world));
  }

  private String how() {
    return Operation.outOfTime(history.orElse(List.of())).isEmpty()
        ? "When is as the log's clock has it."
        : "? the clock was wrong then: e on the day mends its date.";
  }

  private void changes(Canvas canvas, Operation done, int top, World world) {
    canvas.put(LEFT, top, "Changed by: " + done.label(), Style.STRONG);
    List<Line> lines = text(done, world).lines(subject.id(), canvas.size().columns() - 2 * LEFT);
    int rows = canvas.size().rows() - top - 3;
    int first = Math.max(0, Math.min(scroll, lines.size() - rows));
    for (int i = first; i < lines.size() && i - first < rows; i++) {
      canvas.put(LEFT, top + 1 + i - first, lines.get(i).text(), lines.get(i).style());
    }
    if (first + rows < lines.size()) {
      canvas.put(LEFT, top + 1 + rows, Line.more("Space"));
    }
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(
        Bookmark.of(Bookmarks.HISTORY, subject.id())
            .at(subject.kind().code())
            .withText(subject.name()));
  }

  @Override
  public String title(World world) {
    return "History: " + subject.name();
  }

  @Override
  public String purpose() {
    return "Everything ever done to this record, the newest last. Any of it can be taken "
        + "back, and that too.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(UNDO, REDO, BACK, DOWN, UP, MOVE);
  }
}
