package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.units.TimeSpan;

/**
 * The screens that are open, the uppermost last, and the world they see. Pure: the app feeds events
 * and does the effects.
 *
 * @param notice told once, such as that a draft was found; shown above the footer
 * @param held keys pressed while a screen that was left waits for its last save: the screen below
 *     would take them for a log that lacks it, so they follow once it is kept
 * @param typed when a key was pressed last, while what it typed may not have been sent to be kept
 * @param steady the key pressed last
 */
public record Session(
    List<Screen> stack,
    World world,
    Optional<String> notice,
    List<Event.Pressed> held,
    Optional<TimeSpan> typed,
    Steady steady) {
  private static final TimeSpan MINUTE = new TimeSpan(60);

  /** A pause in typing: short enough that all is on the medium a second after the last key. */
  private static final double PAUSE_S = 0.8;

  /** Waits are told in whole milliseconds. */
  private static final double CLOCK_STEP_S = 0.001;

  /** The session after an event and what is to be done outside. */
  public record Turn(Session session, List<Effect> effects) {
    public Turn {
      effects = List.copyOf(effects);
    }

    private Turn after(List<Effect> before) {
      List<Effect> both = new ArrayList<>(before);
      both.addAll(effects);
      return new Turn(session, both);
    }

    /** Tells the screen on top when those that stood over it, up to a height, have gone. */
    private Turn uncovering(int height) {
      if (session.topmost() >= height) {
        return this;
      }
      Turn turn = session.step(session.topmost(), new Event.Uncovered());
      List<Effect> both = new ArrayList<>(effects);
      both.addAll(turn.effects);
      return new Turn(turn.session, both);
    }
  }

  /** Keeps its own lists. */
  public Session {
    stack = List.copyOf(stack);
    held = List.copyOf(held);
  }

  /** Screens nobody pressed a key on. */
  Session(List<Screen> stack, World world) {
    this(stack, world, Optional.empty(), List.of(), Optional.empty(), Steady.none());
  }

  /**
   * The Day screen over a log, over it the question for the time where it is to be asked, and over
   * that what a flight in the air or a misfire asks for, which does not wait.
   */
  public static Session start(World world) {
    List<Screen> screens = new ArrayList<>(List.of(DayScreen.open(world)));
    ClockScreen.atStart(world).ifPresent(screens::add);
    PadReturn.screen(world).ifPresent(screens::add);
    return new Session(screens, world);
  }

  /** As {@link #start}, with the screens of bookmarks open again as far as they can be. */
  public static Turn resume(World world, List<Bookmark> marks) {
    return Resuming.at(marks, world);
  }

  /** What is open, the uppermost last, to be opened again. */
  public List<Bookmark> bookmarks() {
    return stack.stream()
        .filter(screen -> !screen.leaving())
        .flatMap(screen -> screen.bookmark().stream())
        .toList();
  }

  /** The session with a line to tell. */
  public Session telling(String line) {
    return new Session(stack, world, Optional.of(line), held, typed, steady);
  }

  /** The session with a fault shown over everything. */
  public Session failing(Fault fault) {
    return over(Alert.of(fault));
  }

  /** The session with what the medium refuses told first, where it does. */
  public Session tellingWhatIsRefused() {
    return world.refused().isPresent() ? over(RefusedScreen.of(world)) : this;
  }

  /** Takes one event. Before the program is left every screen may keep what it holds. */
  public Turn on(Event event) {
    Turn turn = taken(event).uncovering(topmost());
    if (turn.effects.stream().noneMatch(Effect.Quit.class::isInstance)) {
      return turn;
    }
    Turn leaving = turn.session.toEveryScreen(new Event.Leaving());
    List<Effect> effects = new ArrayList<>(leaving.effects);
    effects.addAll(turn.effects);
    return new Turn(leaving.session, effects);
  }

  private Turn taken(Event event) {
    if (event instanceof Event.Pressed pressed) {
      if (world.ease().cold() && steady.bounces(pressed, top())) {
        return new Turn(steady(steady.bounced(pressed)), List.of());
      }
      return waits() && !passes(pressed.key()) ? holding(pressed) : now(pressed);
    }
    if (event instanceof Event.Winded winded) {
      return new Turn(in(world.with(winded.wire())), List.of());
    }
    Session now = seeing(event);
    Turn turn = now.toEveryScreen(event);
    Optional<Fault> fault = failed(event);
    return fault.isPresent()
        ? new Turn(turn.session.holding(List.of()).failing(fault.get()), turn.effects)
        : turn.session.following(turn.effects);
  }

  private Session seeing(Event event) {
    if (event instanceof Event.Saved saved) {
      Session now = in(world.with(saved.log()));
      Guide guide = world.ease().guide();
      return guide.leads(world) && !guide.leads(now.world) ? now.telling(GuideText.END) : now;
    }
    if (event instanceof Event.Noticed noticed) {
      return telling(noticed.line());
    }
    if (event instanceof Event.Synced synced) {
      World then = world.with(synced.sync());
      Session now = in(synced.log().map(then::with).orElse(then));
      return synced.told().map(line -> now.telling(now.withConflicts(line))).orElse(now);
    }
    if (event instanceof Event.PastRead read) {
      return in(world.with(read.log()));
    }
    if (event instanceof Event.SettingsKept kept) {
      return in(world.with(kept.settings()));
    }
    if (event instanceof Event.FlightsFound found) {
      return in(world.with(found.log()));
    }
    if (event instanceof Event.Medium medium) {
      boolean mended = world.refused().isPresent() && medium.refused().isEmpty();
      Session now = in(world.with(medium.log()).with(medium.refused()));
      return mended ? now.telling("All is saved: the log's own medium takes it again.") : now;
    }
    return this;
  }

  private String withConflicts(String line) {
    return ConflictScreen.notice(world).map(open -> line + " " + open + ".").orElse(line);
  }

  private static Optional<Fault> failed(Event event) {
    if (event instanceof Event.NotSaved save) {
      return Optional.of(save.fault());
    }
    return event instanceof Event.NotRead read ? Optional.of(read.fault()) : Optional.empty();
  }

  /** True while a screen that was left waits for its last save. */
  private boolean waits() {
    return topmost() < stack.size() - 1;
  }

  private static boolean passes(Key key) {
    return Everywhere.QUIT.has(key) || Everywhere.REPAINT.has(key);
  }

  private Turn holding(Event.Pressed pressed) {
    List<Event.Pressed> more = new ArrayList<>(held);
    more.add(pressed);
    return new Turn(holding(more), List.of());
  }

  private Turn now(Event.Pressed pressed) {
    Session then =
        new Session(
            stack,
            world.next(pressed.at()),
            Optional.empty(),
            held,
            typed,
            steady.pressed(pressed, top()));
    Turn turn = watching(then.pressed(pressed).after(Due.by(pressed.at(), world)), pressed.at());
    boolean typing = turn.session.stack.stream().anyMatch(Screen::takesText);
    return new Turn(
        turn.session.typed(Optional.of(pressed.at().up()).filter(any -> typing)), turn.effects);
  }

  /** With what is to be told and done about a clock that was set since. */
  private Turn watching(Turn turn, Moment later) {
    Optional<ClockWatch> seen = ClockWatch.between(world, later);
    List<Effect> effects = new ArrayList<>(turn.effects);
    seen.flatMap(ClockWatch::effect).ifPresent(effects::add);
    return new Turn(
        seen.map(ClockWatch::line).map(turn.session::telling).orElse(turn.session), effects);
  }

  /** Takes the keys that were held, until a screen left by one of them waits in turn. */
  private Turn following(List<Effect> before) {
    List<Effect> effects = new ArrayList<>(before);
    Session session = this;
    while (!session.held.isEmpty() && !session.waits()) {
      Event.Pressed next = session.held.get(0);
      Turn turn = session.holding(session.held.subList(1, session.held.size())).now(next);
      session = turn.session;
      effects.addAll(turn.effects);
    }
    return new Turn(session, effects);
  }

  /** Draws the screen on top. */
  public Frame view(Size size) {
    return Chrome.draw(this, size);
  }

  /** Time has passed. */
  public Turn ticked(Moment now) {
    Session then = in(world.at(now));
    boolean paused = then.untilPause().filter(wait -> wait < CLOCK_STEP_S).isPresent();
    Turn turn =
        paused
            ? then.typed(Optional.empty()).toEveryScreen(new Event.Paused())
            : then.toEveryScreen(new Event.Ticked());
    return watching(turn.after(Due.by(now, world)), now);
  }

  /**
   * How long to wait for the next event before time is to be told with {@link #ticked}; nothing
   * where that is due by now.
   */
  public TimeSpan untilTick(Moment now) {
    double most = world.refused().isPresent() ? Due.TRYING_AGAIN.seconds() : MINUTE.seconds();
    double own = Math.min(most, top().untilTick(world).orElse(MINUTE).seconds());
    double wait =
        MisfireWait.running(world).stream()
            .mapToDouble(each -> each.left().seconds())
            .min()
            .orElse(own);
    double wire = world.wire().untilTick(world.machine().up()).map(TimeSpan::seconds).orElse(own);
    double first = Math.min(Math.min(own, wait), Math.min(wire, untilPause().orElse(own)));
    double gone = now.up().seconds() - world.moment().up().seconds();
    return new TimeSpan(Math.max(0, first - gone));
  }

  private Optional<Double> untilPause() {
    return typed.map(last -> last.seconds() + PAUSE_S - world.moment().up().seconds());
  }

  Screen top() {
    return stack.get(topmost());
  }

  /** The uppermost screen that is not on its way out. */
  private int topmost() {
    int index = stack.size() - 1;
    while (index > 0 && stack.get(index).leaving()) {
      index--;
    }
    return index;
  }

  private Turn pressed(Event.Pressed pressed) {
    Key key = pressed.key();
    if (Everywhere.REPAINT.has(key)) {
      return new Turn(this, List.of(new Effect.Repaint()));
    }
    if (Everywhere.PUT_ASIDE.has(key)) {
      Turn turn = toEveryScreen(new Event.Leaving());
      List<Effect> effects = new ArrayList<>(turn.effects);
      effects.add(new Effect.PutAside());
      return new Turn(turn.session, effects);
    }
    if (Everywhere.QUIT.has(key)) {
      return top() instanceof QuitQuestion ? step(topmost(), pressed) : askingToQuit();
    }
    if (key.equals(RefusedScreen.KEY)
        && world.refused().isPresent()
        && !(top() instanceof RefusedScreen)) {
      return new Turn(over(RefusedScreen.of(world)), List.of());
    }
    Optional<Ease> eased = Everywhere.eased(key, world.ease());
    if (eased.isPresent()) {
      return eased(eased.get());
    }
    if (Everywhere.GUIDE.has(key)) {
      return using(Everywhere.led(world));
    }
    boolean help = Everywhere.HELP.has(key) && (key.character().isEmpty() || !top().takesText());
    if (help && !(top() instanceof HelpScreen)) {
      return new Turn(over(HelpScreen.of(top(), world, Everywhere.TABLE)), List.of());
    }
    return step(topmost(), pressed);
  }

  private Turn eased(Ease ease) {
    return telling(ease.words()).using(List.of(new Effect.Use(ease)));
  }

  Turn using(List<Effect> effects) {
    return new Turn(Everywhere.used(effects).map(world::with).map(this::in).orElse(this), effects);
  }

  private Turn askingToQuit() {
    Turn turn = toEveryScreen(new Event.Leaving());
    return new Turn(turn.session.over(new QuitQuestion()), turn.effects);
  }

  private Turn toEveryScreen(Event event) {
    Session session = this;
    List<Effect> effects = new ArrayList<>();
    for (int i = stack.size() - 1; i >= 0; i--) {
      Turn turn = session.step(i, event);
      session = turn.session;
      effects.addAll(turn.effects);
    }
    return new Turn(session, effects);
  }

  private Turn step(int index, Event event) {
    Step step = stack.get(index).on(event, world);
    List<Screen> screens = new ArrayList<>(stack.subList(0, index));
    step.self().ifPresent(screens::add);
    screens.addAll(stack.subList(index + 1, stack.size()));
    List<Effect> effects = new ArrayList<>(step.effects());
    step.over().forEach(opened -> effects.addAll(opening(opened, screens)));
    if (screens.isEmpty()) {
      screens.add(stack.get(index));
      effects.add(new Effect.Quit());
    }
    Optional<String> told = told(effects);
    effects.removeIf(Effect.Tell.class::isInstance);
    return new Session(screens, world, told.or(() -> notice), held, typed, steady).using(effects);
  }

  private static Optional<String> told(List<Effect> effects) {
    return effects.stream()
        .filter(Effect.Tell.class::isInstance)
        .map(effect -> ((Effect.Tell) effect).line())
        .reduce((earlier, later) -> later);
  }

  /** Puts a screen on top, and over it what it opens at once. */
  List<Effect> opening(Screen opened, List<Screen> screens) {
    Step first = opened.on(new Event.Opened(), world);
    first.self().ifPresent(screens::add);
    List<Effect> effects = new ArrayList<>(first.effects());
    first.over().forEach(above -> effects.addAll(opening(above, screens)));
    return effects;
  }

  private Session in(World other) {
    return new Session(stack, other, notice, held, typed, steady);
  }

  private Session holding(List<Event.Pressed> keys) {
    return new Session(stack, world, notice, keys, typed, steady);
  }

  private Session steady(Steady now) {
    return new Session(stack, world, notice, held, typed, now);
  }

  private Session typed(Optional<TimeSpan> last) {
    return new Session(stack, world, notice, held, last, steady);
  }

  private Session over(Screen screen) {
    List<Screen> more = new ArrayList<>(stack);
    more.add(screen);
    return new Session(more, world, notice, held, typed, steady);
  }
}
