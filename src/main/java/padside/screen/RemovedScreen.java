package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog;
import padside.flight.Kind;

/**
 * The records of a kind that were removed, to bring them back.
 *
 * @param records absent while they are being read
 * @param requests the number of this screen and how many requests were sent
 */
record RemovedScreen(
    Kind kind, Optional<List<FlightLog.Stored>> records, ListCursor cursor, Ticket requests)
    implements Screen {
  static final Binding OPEN = Binding.of("rX", "", "those that were removed, to bring them back");

  private static final Binding BRING_BACK =
      Binding.of("<enter>u", "bring back", "the marked one is in its list again");
  private static final Binding BACK = Binding.of("<esc>q", "back", "back to the list");

  static RemovedScreen of(Kind kind, World world) {
    return new RemovedScreen(
        kind, Optional.empty(), ListCursor.start(), new Ticket(world.turn(), 0));
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    boolean answered =
        (event instanceof Event.Saved saved && saved.ticket().equals(requests))
            || (event instanceof Event.NotSaved failed && failed.ticket().equals(requests));
    if (answered || event instanceof Event.Opened) {
      RemovedScreen asked = asking();
      return Step.stay(asked).and(new Effect.ReadRemoved(asked.requests, kind));
    }
    return event instanceof Event.RemovedRead read && read.ticket().equals(requests)
        ? Step.stay(new RemovedScreen(kind, Optional.of(read.records()), cursor, requests))
        : Step.stay(this);
  }

  private RemovedScreen asking() {
    Ticket next = new Ticket(requests.screen(), requests.serial() + 1);
    return new RemovedScreen(kind, Optional.empty(), cursor, next);
  }

  private Step pressed(Key key, World world) {
    if (BACK.has(key)) {
      return Step.close();
    }
    Optional<RecordId> marked = cursor.current(items(world));
    if (HistoryScreen.OPEN.has(key) && marked.isPresent()) {
      return Step.stay(this).open(HistoryScreen.of(subject(marked.get(), world), world));
    }
    if (BRING_BACK.has(key) && marked.isPresent()) {
      return bringingBack(marked.get(), world);
    }
    return cursor
        .press(key, items(world))
        .map(moved -> Step.stay(new RemovedScreen(kind, records, moved, requests)))
        .orElse(Step.stay(this));
  }

  private Step bringingBack(RecordId id, World world) {
    Facts mark = Facts.none().with(Kind.REMOVED.name(), Facts.Cell.emptied());
    String noun = KindFields.noun(kind, world);
    RemovedScreen asked = asking();
    return Step.stay(asked)
        .and(new Effect.Save(asked.requests, Action.change("bring back " + noun, kind, id, mark)))
        .and(new Effect.Tell("Back in its list: " + subject(id, world).name() + "."));
  }

  private HistoryScreen.Subject subject(RecordId id, World world) {
    String name =
        records.orElse(List.of()).stream()
            .filter(record -> record.id().equals(id))
            .map(record -> KindFields.name(kind, record.facts(), world))
            .findFirst()
            .orElse("");
    return new HistoryScreen.Subject(kind, id, name);
  }

  private List<ListPane.Item> items(World world) {
    return records.orElse(List.of()).stream()
        .map(
            record ->
                new ListPane.Item(
                    record.id(), List.of(KindFields.name(kind, record.facts(), world))))
        .toList();
  }

  @Override
  public void draw(Canvas canvas, World world) {
    List<ListPane.Item> items = items(world);
    if (items.isEmpty()) {
      String none = records.isEmpty() ? "Reading …" : "None was removed.";
      Paragraph.draw(canvas, 2, none, Style.PLAIN);
    } else {
      int last = canvas.size().rows() - 3;
      List<ListPane.Heading> headings = List.of(ListPane.Heading.of("Removed"));
      ListPane.draw(
          canvas, headings, items, cursor.index(items), new ListPane.Rows(2, last).apart(world));
    }
  }

  @Override
  public String title(World world) {
    return "Removed: " + KindFields.noun(kind, world);
  }

  @Override
  public String purpose() {
    return "What was removed. Nothing ever leaves the log: any of it can be brought back as "
        + "it was.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_LISTS;
  }

  @Override
  public List<Binding> bindings() {
    return List.of(BRING_BACK, BACK, HistoryScreen.OPEN, ListCursor.MOVE);
  }
}
