package padside.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.plan.Packing;
import padside.plan.Plan;
import padside.plan.PlanDays;

/**
 * The flights planned for a day, each with what wind it stands and what the range box lacks.
 *
 * @param shown the day; the next one with a plan until another is chosen
 * @param asked the flight about to be taken out, while the question stands
 * @param places as sent to be kept, while the log may not have them yet
 * @param saves what was sent and how much of it is answered
 * @param cover the screen put over this one last, while it is there
 */
record PlanScreen(
    Optional<RecordId> shown,
    ListCursor cursor,
    Optional<RecordId> asked,
    Map<RecordId, Integer> places,
    Saves saves,
    PlanChecks checks,
    Optional<Long> cover)
    implements Screen {
  private static final Binding KEEP = Binding.of("<esc>", "keep it", "it stays in the plan");

  /** The serials of the last save sent and of the last one answered. */
  record Saves(long screen, long sent, long answered) {
    boolean has(Ticket ticket) {
      return ticket.screen() == screen && ticket.serial() <= sent;
    }
  }

  /** Keeps its own copy. */
  PlanScreen {
    places = Map.copyOf(places);
  }

  static PlanScreen open(World world) {
    return new PlanScreen(
        Optional.empty(),
        ListCursor.start(),
        Optional.empty(),
        Map.of(),
        new Saves(world.turn(), 0, 0),
        PlanChecks.of(world.turn()),
        Optional.empty());
  }

  /** The day shown. */
  Optional<Day> day(World world) {
    return shown.flatMap(world.log()::day).or(() -> days(world).first());
  }

  private static PlanDays days(World world) {
    return PlanDays.of(world.log(), DayScreen.today(world));
  }

  /** The plan of the day shown, in the order last asked for. */
  Optional<Plan> plan(World world) {
    return day(world).map(day -> Plan.of(day, ordered(day, world), world.log()));
  }

  private List<Flight> ordered(Day day, World world) {
    return world.log().plannedFor(day.id()).stream()
        .map(flight -> new Flight(flight.id(), flight.facts().with(Flight.PLACE, place(flight))))
        .sorted(Comparator.comparing(flight -> flight.place().orElse(0)))
        .toList();
  }

  private Optional<Integer> place(Flight flight) {
    return Optional.ofNullable(places.get(flight.id())).or(flight::place);
  }

  Optional<Packing> packing(World world) {
    return plan(world).map(plan -> Packing.of(plan, world.log(), world.packing()));
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    if (event instanceof Event.Opened && day(world).isEmpty()) {
      return opening(DayForm.ahead(world), world);
    }
    PlanScreen now = this;
    if (event instanceof Event.Uncovered) {
      now = with(checks.anew()).under(Optional.empty());
    } else if (event instanceof Event.Checked checked) {
      now = with(checks.on(checked));
    } else if (event instanceof Event.Saved saved) {
      now = answered(saved.ticket()).following(saved, world);
    } else if (event instanceof Event.NotSaved failed) {
      now = answered(failed.ticket());
    }
    return now.asking(world);
  }

  /** Asks the check what is still to be asked; a screen that stands over this one comes first. */
  private Step asking(World world) {
    if (cover.isPresent()) {
      return Step.stay(this);
    }
    List<Flight> flights = day(world).map(day -> ordered(day, world)).orElse(List.of());
    PlanChecks.Asked next = checks.ask(flights, world);
    return Step.stay(with(next.checks())).and(next.effects());
  }

  private Step pressed(Key key, World world) {
    if (asked.isPresent()) {
      return removing(key, world);
    }
    Optional<ListCursor> moved = cursor.press(key, PlanView.items(this, world));
    return moved
        .map(to -> Step.stay(at(to)))
        .orElseGet(() -> PlanKeys.find(key).map(does -> does(does, world)).orElse(Step.stay(this)));
  }

  private Step does(PlanKeys key, World world) {
    return switch (key) {
      case OPEN -> onMarked(world, flight -> opening(CardScreen.open(flight, world), world));
      case ADD -> onDay(world, day -> opening(CardScreen.plan(world, day), world));
      case LATER -> onMarked(world, flight -> moved(flight, true, world));
      case EARLIER -> onMarked(world, flight -> moved(flight, false, world));
      case REMOVE -> onMarked(world, flight -> Step.stay(about(Optional.of(flight.id()))));
      case PACK -> onDay(world, day -> opening(PackingScreen.of(day.id(), world), world));
      case OTHER_DAY -> onDay(world, day -> on(days(world).after(day.id())).asking(world));
      case NEW_DAY -> opening(DayForm.ahead(world), world);
      case EDIT_DAY -> onDay(world, day -> opening(DayForm.open(day, world), world));
      case BACK -> Step.close();
    };
  }

  private Step onDay(World world, java.util.function.Function<Day, Step> act) {
    return day(world).map(act).orElseGet(() -> opening(DayForm.ahead(world), world));
  }

  private Step onMarked(World world, java.util.function.Function<Flight, Step> act) {
    return marked(world).map(act).orElse(Step.stay(this));
  }

  Optional<Flight> marked(World world) {
    return cursor.current(PlanView.items(this, world)).flatMap(world.log()::flight);
  }

  private Step opening(Screen screen, World world) {
    return Step.stay(under(Optional.of(world.turn()))).open(screen);
  }

  private Step moved(Flight flight, boolean later, World world) {
    Map<RecordId, Integer> changed =
        plan(world).map(plan -> plan.moved(flight.id(), later)).orElse(Map.of());
    if (changed.isEmpty()) {
      return Step.stay(this);
    }
    List<Action.Change> changes = new ArrayList<>();
    changed.forEach(
        (id, place) ->
            changes.add(
                new Action.Change(
                    Kind.FLIGHT, Optional.of(id), Facts.none().with(Flight.PLACE, place))));
    Map<RecordId, Integer> more = new LinkedHashMap<>(places);
    more.putAll(changed);
    PlanScreen now =
        new PlanScreen(shown, cursor.on(flight.id()), asked, more, saves, checks, cover);
    return now.saving(new Action("re-order plan", changes));
  }

  private Step removing(Key key, World world) {
    PlanScreen back = about(Optional.empty());
    if (!PlanKeys.REMOVE.binding().has(key)) {
      return Step.stay(back);
    }
    return back.at(cursor.besides(PlanView.items(this, world)))
        .saving(Action.remove("take out of plan", Kind.FLIGHT, asked.orElseThrow()));
  }

  private Step saving(Action action) {
    Saves next = new Saves(saves.screen(), saves.sent() + 1, saves.answered());
    return Step.stay(new PlanScreen(shown, cursor, asked, places, next, checks, cover))
        .and(new Effect.Save(new Ticket(next.screen(), next.sent()), action));
  }

  /** Once all is answered the log has the places. */
  private PlanScreen answered(Ticket ticket) {
    if (!saves.has(ticket)) {
      return this;
    }
    Saves next = new Saves(saves.screen(), saves.sent(), ticket.serial());
    Map<RecordId, Integer> open = next.sent() == next.answered() ? Map.of() : places;
    return new PlanScreen(shown, cursor, asked, open, next, checks, cover);
  }

  /** Goes to the day or flight that the screen over this one has made. */
  private PlanScreen following(Event.Saved saved, World world) {
    if (!cover.equals(Optional.of(saved.ticket().screen())) || saved.records().isEmpty()) {
      return this;
    }
    RecordId first = saved.records().get(0);
    return world.log().day(first).isPresent() ? on(world.log().day(first)) : at(cursor.on(first));
  }

  private PlanScreen on(Optional<Day> day) {
    return new PlanScreen(
        day.map(Day::id).or(() -> shown), cursor, asked, places, saves, checks, cover);
  }

  private PlanScreen at(ListCursor to) {
    return new PlanScreen(shown, to, asked, places, saves, checks, cover);
  }

  private PlanScreen about(Optional<RecordId> flight) {
    return new PlanScreen(shown, cursor, flight, places, saves, checks, cover);
  }

  private PlanScreen with(PlanChecks other) {
    return new PlanScreen(shown, cursor, asked, places, saves, other, cover);
  }

  private PlanScreen under(Optional<Long> screen) {
    return new PlanScreen(shown, cursor, asked, places, saves, checks, screen);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    PlanView.draw(canvas, this, world);
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.PLAN).about(shown).at(cursor.at()));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new PlanScreen(
        mark.of(), mark.on(cursor), Optional.empty(), places, saves, checks, cover);
  }

  @Override
  public Screen covered(long screen) {
    return under(Optional.of(screen));
  }

  @Override
  public String title(World world) {
    return day(world).map(day -> "Plan · " + DayWords.of(day, world.log())).orElse("Plan");
  }

  @Override
  public String purpose() {
    return "The flights meant for a day, held against the range box while there is time to "
        + "buy. A planned flight becomes a card by one key.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_PLANS;
  }

  @Override
  public List<Binding> bindings() {
    return asked.isPresent() ? List.of(PlanKeys.REMOVE.binding(), KEEP) : PlanKeys.table();
  }

  @Override
  public boolean questions() {
    return asked.isPresent();
  }
}
