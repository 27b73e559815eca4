package padside.screen;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;

/**
 * The screens that are open, the uppermost last, and the world they see. Pure: the app feeds events
 * and does the effects.
 *
 * @param notice one line told once, such as that a draft was found; shown above the footer
 */
public record Session(List<Screen> stack, World world, Optional<String> notice) {
  private static final Key QUIT = Key.control('c');
  private static final Key REPAINT = Key.control('l');
  private static final Key HELP = Key.function(1);
  private static final Key HELP_TOO = new Key("?");

  /** The session after an event and what is to be done outside. */
  public record Turn(Session session, List<Effect> effects) {
    public Turn {
      effects = List.copyOf(effects);
    }
  }

  /** Keeps its own stack. */
  public Session {
    stack = List.copyOf(stack);
  }

  /** The Day screen over a log. */
  public static Session start(World world) {
    return new Session(List.of(DayScreen.open(world)), world, Optional.empty());
  }

  /** The session with a line to tell. */
  public Session telling(String line) {
    return new Session(stack, world, Optional.of(line));
  }

  /** The session with a fault shown over everything. */
  public Session failing(Fault fault) {
    List<Screen> more = new ArrayList<>(stack);
    more.add(Alert.of(fault));
    return new Session(more, world, notice);
  }

  /** Takes one event. Before the program is left every screen may keep what it holds. */
  public Turn on(Event event) {
    Turn turn = taken(event);
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
      Session now = new Session(stack, world.next(pressed.at()), Optional.empty());
      return now.pressed(pressed);
    }
    Session now = event instanceof Event.Saved saved ? seeing(saved) : this;
    Turn turn = now.toEveryScreen(event);
    return event instanceof Event.NotSaved failed
        ? new Turn(turn.session.failing(failed.fault()), turn.effects)
        : turn;
  }

  /** Draws the screen on top. */
  public Frame view(Size size) {
    return Chrome.draw(this, size);
  }

  /** The world with the log as another screen or program left it. */
  public Session at(Instant now) {
    return new Session(stack, world.at(now), notice);
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
    if (key.equals(REPAINT)) {
      return new Turn(this, List.of(new Effect.Repaint()));
    }
    if (key.equals(QUIT)) {
      return top() instanceof QuitQuestion ? step(topmost(), pressed) : askingToQuit();
    }
    boolean help = key.equals(HELP) || (key.equals(HELP_TOO) && !top().takesText());
    if (help && !(top() instanceof HelpScreen)) {
      return new Turn(over(new HelpScreen(top().title(world), top().bindings())), List.of());
    }
    return step(topmost(), pressed);
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
    for (Screen opened : step.over()) {
      Step first = opened.on(new Event.Opened(), world);
      first.self().ifPresent(screens::add);
      effects.addAll(first.effects());
    }
    if (screens.isEmpty()) {
      screens.add(stack.get(index));
      effects.add(new Effect.Quit());
    }
    return new Turn(new Session(screens, world, notice), effects);
  }

  private Session seeing(Event.Saved saved) {
    return new Session(stack, world.with(saved.log()), notice);
  }

  private Session over(Screen screen) {
    List<Screen> more = new ArrayList<>(stack);
    more.add(screen);
    return new Session(more, world, notice);
  }
}
