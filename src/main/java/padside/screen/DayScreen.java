package padside.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Ruling;
import padside.units.TimeSpan;

/**
 * The day at the field: weather, cards in their order, the tally. Shows today's day, or the latest
 * one while none is open today.
 *
 * @param cursor in the list of cards
 * @param gone the save that marks a flight as flown, its debrief to be opened once it is kept
 */
record DayScreen(ListCursor cursor, Optional<Ticket> gone) implements Screen {
  static DayScreen open(World world) {
    return new DayScreen(ListCursor.start(), Optional.empty());
  }

  /**
   * Today's day, the last opened one of several; else the latest there was; else the latest of all.
   */
  static Optional<Day> day(World world) {
    LocalDate today = today(world);
    return world.log().days().stream()
        .filter(day -> day.date().equals(Optional.of(today)))
        .reduce((first, second) -> second)
        .or(() -> world.log().latestDay(day -> !isAhead(day, world)))
        .or(() -> world.log().latestDay());
  }

  /** True of a day on which nothing has happened yet and something may: to come, or planned. */
  static boolean isAhead(Day day, World world) {
    boolean toCome = day.date().filter(date -> date.isAfter(today(world))).isPresent();
    List<Flight> flights = world.log().flightsOf(day.id());
    boolean planned = flights.stream().anyMatch(Flight::isPlanned);
    return flights.stream().allMatch(Flight::isPlanned)
        && world.log().weatherOf(day.id()).isEmpty()
        && (toCome || planned);
  }

  static LocalDate today(World world) {
    return LocalDate.ofInstant(world.now(), world.zone());
  }

  /** The planned flight whose turn it is. */
  static Optional<Flight> next(World world) {
    return flights(world).stream().filter(Flight::isPlanned).findFirst();
  }

  /** The day's cards in their order, behind them what is planned. */
  static List<Flight> flights(World world) {
    return day(world).map(day -> world.log().flightsOf(day.id())).orElse(List.of());
  }

  /**
   * The card under the cursor; before it was moved the next one to fly, else the one being filled,
   * else the next planned, else the last.
   */
  Optional<Flight> marked(World world) {
    List<Flight> flights = flights(world);
    Optional<Flight> chosen =
        flights.stream().filter(flight -> cursor.at().equals(Optional.of(flight.id()))).findFirst();
    return chosen
        .or(() -> flights.stream().filter(f -> f.status() == Flight.Status.CARD).findFirst())
        .or(() -> flights.stream().filter(f -> f.status() == Flight.Status.DRAFT).findFirst())
        .or(() -> next(world))
        .or(() -> flights.stream().reduce((first, second) -> second));
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    if (event instanceof Event.Saved saved) {
      return saved(saved, world);
    }
    return Step.stay(this);
  }

  private Step saved(Event.Saved saved, World world) {
    Optional<Flight> flight =
        flights(world).stream().filter(each -> saved.records().contains(each.id())).findFirst();
    DayScreen now = flight.map(each -> new DayScreen(behind(each, world), gone)).orElse(this);
    if (flight.isPresent() && gone.equals(Optional.of(saved.ticket()))) {
      return Step.stay(new DayScreen(now.cursor, Optional.empty()))
          .open(DebriefScreen.open(flight.get(), world));
    }
    return Step.stay(now);
  }

  /** On what was saved; once that is done with, on the flight planned next. */
  private ListCursor behind(Flight saved, World world) {
    boolean done =
        saved.status() == Flight.Status.SCRUBBED
            || (saved.status() == Flight.Status.FLOWN && !saved.awaitsDebrief());
    return done && next(world).isPresent() ? ListCursor.start() : cursor.on(saved.id());
  }

  private Step pressed(Key key, World world) {
    List<ListPane.Item> items = DayView.items(world);
    ListCursor placed = marked(world).map(flight -> cursor.on(flight.id())).orElse(cursor);
    Optional<ListCursor> moved = placed.press(key, items);
    if (moved.isPresent()) {
      return Step.stay(new DayScreen(moved.get(), gone));
    }
    return DayKeys.find(key).map(does -> does(does, world)).orElse(Step.stay(this));
  }

  private Step does(DayKeys key, World world) {
    return switch (key) {
      case NEW -> onDay(world, day -> opening(CardScreen.create(world, day)));
      case OPEN -> onMarked(world, flight -> opening(atPad(flight, world)));
      case WEATHER -> onDay(world, day -> opening(WeatherScreen.create(day, world)));
      case WIRE -> onDay(world, day -> byWire(day, world));
      case GONE -> onMarked(world, flight -> leavesThePad(flight, world));
      case DEBRIEF -> debrief(world);
      case SIGHTS -> onMarked(world, flight -> opening(SightShelf.of(flight.id(), world)));
      case SCRUB -> onMarked(world, flight -> scrubbed(flight, world));
      case UNDO -> onMarked(world, flight -> opening(QuickUndo.of(flight, world)));
      case HISTORY -> onMarked(world, flight -> opening(FlightScreen.history(flight, world)));
      case CARD -> onMarked(world, flight -> opening(CardScreen.open(flight, world)));
      case MEND ->
          onMarked(
              world,
              flight ->
                  flight
                      .rocket()
                      .map(rocket -> opening(FixShelf.of(rocket, world)))
                      .orElse(Step.stay(this)));
      case PLAN -> opening(PlanScreen.open(world));
      case LOG -> opening(LogScreen.open(world));
      case FLEET -> opening(FleetScreen.open(world));
      case RANGE_BOX -> opening(RangeBoxScreen.open(world));
      case FIELDS -> opening(FieldsScreen.open(world));
      case OPEN_DAY -> opening(DayForm.create(world));
      case EDIT_DAY -> onDay(world, day -> opening(DayForm.open(day, world)));
      case SYNC -> opening(SyncScreen.open());
      case CONFLICTS -> opening(ConflictScreen.open());
      case PAGES -> opening(PagesScreen.of(day(world)));
      case CLOCK -> opening(ClockScreen.of(ClockScreen.Then.BACK, world));
      case SETTINGS -> opening(SettingsScreen.open(world));
      case QUIT -> opening(new QuitQuestion());
    };
  }

  private Step opening(Screen screen) {
    return Step.stay(this).open(screen);
  }

  private Step onDay(World world, java.util.function.Function<Day, Step> act) {
    return day(world).map(act).orElseGet(() -> opening(DayForm.create(world)));
  }

  private Step onMarked(World world, java.util.function.Function<Flight, Step> act) {
    return marked(world).map(act).orElse(Step.stay(this));
  }

  /** The debrief of a flight that has flown, else its card, begun if it was only planned. */
  static Screen inside(Flight flight, World world) {
    return switch (flight.status()) {
      case FLOWN -> DebriefScreen.open(flight, world);
      case PLANNED -> CardScreen.begin(flight, world);
      case DRAFT, CARD, SCRUBBED -> CardScreen.open(flight, world);
    };
  }

  /** A kept card at the pad, a flight in the air with its clock; else {@link #inside}. */
  private static Screen atPad(Flight flight, World world) {
    if (flight.status() == Flight.Status.CARD) {
      return PadScreen.of(flight.id(), world);
    }
    return MarkScreen.isInTheAir(flight, world)
        ? MarkScreen.of(flight.id(), world)
        : inside(flight, world);
  }

  /** The meter's wind as a reading of the day, which cards begun from now on go by. */
  private Step byWire(Day day, World world) {
    Facts of = Facts.none().with(Flight.DAY, day.id());
    return ByWire.taken(of, world)
        .map(wind -> CardStart.looked(wind.with(of), world))
        .map(
            reading ->
                Step.stay(this)
                    .and(
                        new Effect.Save(
                            new Ticket(world.turn(), 1), new Action("wind by wire", reading))))
        .orElseGet(() -> Step.stay(this).and(new Effect.Tell(ByWire.refusal(of, world))));
  }

  /** The newest flight without a debrief, else the newest flown. */
  private Step debrief(World world) {
    List<Flight> flown =
        flights(world).stream().filter(f -> f.status() == Flight.Status.FLOWN).toList();
    return flown.stream()
        .filter(Flight::awaitsDebrief)
        .reduce((first, second) -> second)
        .or(() -> flown.stream().reduce((first, second) -> second))
        .map(flight -> opening(DebriefScreen.open(flight, world)))
        .orElse(Step.stay(this));
  }

  private Step leavesThePad(Flight flight, World world) {
    if (flight.status() == Flight.Status.FLOWN || flight.isPlanned()) {
      return opening(atPad(flight, world));
    }
    boolean against =
        flight.status() == Flight.Status.CARD
            && flight.verdict().equals(Optional.of(Ruling.Verdict.NO_GO));
    if (against) {
      return opening(AgainstScreen.of(new FlownAgainst(flight)));
    }
    Ticket ticket = new Ticket(world.turn(), 1);
    return Step.stay(new DayScreen(cursor.on(flight.id()), Optional.of(ticket)))
        .and(new Effect.Save(ticket, goneAction(flight, Facts.none(), world)));
  }

  /** The flight has left the pad. */
  static Action goneAction(Flight flight, Facts more, World world) {
    Facts facts =
        more.with(Flight.STATUS, Flight.Status.FLOWN).with(Flight.LIFTOFF_AT, world.now());
    Facts blows = ByWire.atLiftOff(flight.facts(), world);
    return Action.change("gone", Kind.FLIGHT, flight.id(), blows.with(facts))
        .and(new Action("gone", ByWire.reading(flight.facts(), world)));
  }

  private Step scrubbed(Flight flight, World world) {
    return flight.status() == Flight.Status.CARD || flight.status() == Flight.Status.DRAFT
        ? changing("scrub", flight, Facts.none().with(Flight.STATUS, Flight.Status.SCRUBBED), world)
        : Step.stay(this);
  }

  private Step changing(String label, Flight flight, Facts facts, World world) {
    Action action = Action.change(label, Kind.FLIGHT, flight.id(), facts);
    return Step.stay(new DayScreen(cursor.on(flight.id()), gone))
        .and(new Effect.Save(new Ticket(world.turn(), 1), action));
  }

  @Override
  public Optional<TimeSpan> untilTick(World world) {
    return MisfireWait.longest(world).map(MisfireWait::untilNext);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    DayView.draw(canvas, this, world);
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.DAY).at(cursor.at()));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new DayScreen(mark.on(cursor), gone);
  }

  @Override
  public String title(World world) {
    return day(world)
        .map(day -> "Day · " + DayWords.of(day, world.log()))
        .orElse("Day · " + DayWords.of(today(world)));
  }

  @Override
  public String purpose() {
    return "One day at one field: its wind, its cards in the order they were begun, what "
        + "the check said and what came of each. Everything begins here.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_DAYS;
  }

  @Override
  public List<Binding> bindings() {
    List<Binding> table = new ArrayList<>();
    for (DayKeys key : DayKeys.values()) {
      table.add(key.binding());
    }
    return table;
  }
}
