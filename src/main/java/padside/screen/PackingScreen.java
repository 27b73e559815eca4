package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Kind;
import padside.plan.Packing;
import padside.plan.Plan;

/**
 * The packing list of a day, ticked line by line.
 *
 * @param ticked keys as sent to be kept, while the log may not have them yet
 * @param sent serial of the last save sent
 */
record PackingScreen(
    RecordId day, ListCursor cursor, Optional<List<String>> ticked, long screen, long sent)
    implements Screen {
  private static final Binding TICK =
      Binding.of(" ", "packed", "it is packed, on to the next line; again takes the tick back");
  private static final Binding BACK = Binding.of("<esc>", "back", "back to the plan");

  private static final List<ListPane.Heading> HEADINGS =
      List.of(
          ListPane.Heading.of(""),
          ListPane.Heading.of("What"),
          ListPane.Heading.of("Where, and what to know").orBriefly("Where"));

  static PackingScreen of(RecordId day, World world) {
    return new PackingScreen(day, ListCursor.start(), Optional.empty(), world.turn(), 0);
  }

  /** The list with the ticks on their way. */
  Packing packing(World world) {
    Packing kept =
        world
            .log()
            .day(day)
            .map(each -> Plan.of(each, world.log()))
            .map(plan -> Packing.of(plan, world.log(), world.packing()))
            .orElse(new Packing(List.of(), java.util.Set.of()));
    return ticked.map(keys -> new Packing(kept.items(), new TreeSet<>(keys))).orElse(kept);
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    boolean last =
        (event instanceof Event.Saved saved && saved.ticket().equals(new Ticket(screen, sent)))
            || (event instanceof Event.NotSaved failed && failed.ticket().screen() == screen);
    return Step.stay(last ? new PackingScreen(day, cursor, Optional.empty(), screen, sent) : this);
  }

  private Step pressed(Key key, World world) {
    List<ListPane.Item> items = items(packing(world));
    if (BACK.has(key)) {
      return Step.close();
    }
    if (TICK.has(key)) {
      return cursor
          .current(items)
          .map(id -> turned(id.text(), items, world))
          .orElse(Step.stay(this));
    }
    return Step.stay(
        cursor
            .press(key, items)
            .map(moved -> new PackingScreen(day, moved, ticked, screen, sent))
            .orElse(this));
  }

  /** Ticks kept for lines that are not there now stay: a flight may come back into the plan. */
  private Step turned(String key, List<ListPane.Item> items, World world) {
    List<String> keys = new ArrayList<>(new TreeSet<>(packing(world).packed()));
    boolean taken = keys.remove(key);
    if (!taken) {
      keys.add(key);
    }
    ListCursor next = taken ? cursor : cursor.press(Key.DOWN, items).orElse(cursor);
    Action action =
        Action.change(
            taken ? "unpack" : "pack", Kind.DAY, day, Facts.none().with(Day.PACKED, keys));
    return Step.stay(new PackingScreen(day, next, Optional.of(keys), screen, sent + 1))
        .and(new Effect.Save(new Ticket(screen, sent + 1), action));
  }

  private static List<ListPane.Item> items(Packing packing) {
    return packing.items().stream()
        .map(
            item ->
                new ListPane.Item(
                    new RecordId(item.key()),
                    List.of(PlanText.box(packing, item), item.counted(), PlanText.about(item))))
        .toList();
  }

  @Override
  public void draw(Canvas canvas, World world) {
    Packing packing = packing(world);
    canvas.put(2, 1, PlanText.left(packing), Style.STRONG);
    List<ListPane.Item> items = items(packing);
    if (!items.isEmpty()) {
      int last = canvas.size().rows() - 2;
      int index = cursor.index(items);
      ListPane.draw(canvas, HEADINGS, items, index, new ListPane.Rows(2, last - 2));
      Packing.Item item = packing.items().get(index);
      canvas.put(2, last, PlanText.told(item), Style.LABEL);
    }
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.PACKING, day).at(cursor.at()));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new PackingScreen(day, mark.on(cursor), ticked, screen, sent);
  }

  @Override
  public String title(World world) {
    return "To pack · "
        + world.log().day(day).map(each -> DayWords.of(each, world.log())).orElse("a removed day");
  }

  @Override
  public String purpose() {
    return "What goes along to fly the plan of this day. Ticks are kept with the day.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_LISTS;
  }

  @Override
  public List<Binding> bindings() {
    return List.of(TICK, BACK, ListCursor.MOVE);
  }
}
