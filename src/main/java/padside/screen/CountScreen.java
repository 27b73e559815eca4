package padside.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.CheckLine;
import padside.flight.Flight;
import padside.preflight.PadTimes;
import padside.units.TimeSpan;

/**
 * The count before lift-off. It can be held at any moment; after a hold it begins anew, since
 * whoever came near meanwhile has to hear all of it (common practice, no source).
 *
 * @param time while it runs the uptime at which it ends, else what was left of it
 * @param live the check, which goes on looking at the wind
 */
record CountScreen(
    RecordId flight, Phase phase, TimeSpan time, Sending sending, HeldKey space, CountCheck live)
    implements Screen {
  /** How far it has come. */
  enum Phase {
    /** Nothing was counted yet. */
    READY,
    /** It runs. */
    COUNTING,
    /** It has come to its end: the rocket leaves when the button is pressed. */
    LAUNCH,
    /** It was stopped. */
    HELD
  }

  private static final Binding COUNT =
      Binding.of(" ", "count", "begin to count aloud; after a hold all of it anew");
  private static final Binding HOLD =
      Binding.of("h", "hold", "stop the count at once; any other key does too");
  private static final Binding LIFT_OFF =
      Binding.of(" ", "LIFT-OFF", "it leaves the rod: starts the clock of the flight");
  private static final Binding LAUNCH_HOLD =
      Binding.of("h", "hold", "stop: key out; Space then counts anew");
  private static final Binding LEFT =
      Binding.of("g", "it left", "it left all the same: starts the clock of the flight");
  private static final Binding MISFIRE =
      Binding.of("m", "misfire", "the motor did not light: everybody waits");
  private static final Binding SCRUB =
      Binding.of("<esc>", "scrub", "key out, back to the checklist");

  /** Armed: nothing is counted until the flier says so. */
  static CountScreen ready(RecordId flight, Sending sending, CountCheck live) {
    return new CountScreen(flight, Phase.READY, new TimeSpan(0), sending, HeldKey.none(), live);
  }

  /** As after a hold: a lift-off was taken back. */
  static CountScreen held(RecordId flight, Sending sending, CountCheck live) {
    return new CountScreen(flight, Phase.HELD, new TimeSpan(0), sending, HeldKey.none(), live);
  }

  @Override
  public Step on(Event event, World world) {
    boolean over = phase == Phase.COUNTING && left(world).seconds() <= 0;
    Phase now = over ? Phase.LAUNCH : phase;
    Optional<CountCheck.Seen> seen = card(world).map(card -> live.on(event, card, world));
    CountScreen screen =
        new CountScreen(
            flight,
            now,
            time,
            sending.on(event),
            space,
            seen.map(each -> each.check()).orElse(live));
    return screen.done(event, world).and(seen.map(each -> each.effects()).orElse(List.of()));
  }

  /** The card with what is on its way to be kept. */
  private Optional<Flight> card(World world) {
    return sending.flight(flight, world);
  }

  private Step done(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    // A count nobody sees is none.
    boolean unseen = event instanceof Event.Uncovered || event instanceof Event.Leaving;
    boolean runs = phase == Phase.COUNTING || phase == Phase.LAUNCH;
    return Step.stay(unseen && runs ? held(world) : this);
  }

  private Step pressed(Key key, World world) {
    CountScreen now =
        COUNT.has(key)
            ? new CountScreen(flight, phase, time, sending, space.pressed(world), live)
            : this;
    if (MISFIRE.has(key)) {
      return MisfireScreen.begin(flight, world);
    }
    if (SCRUB.has(key)) {
      return scrubbed(world);
    }
    if (COUNT.has(key) && space.repeats(world)) {
      return Step.stay(now);
    }
    return switch (phase) {
      case READY, HELD -> now.waiting(key, world);
      case COUNTING -> now.counting(key, world);
      case LAUNCH -> now.launching(key, world);
    };
  }

  private Step waiting(Key key, World world) {
    if (COUNT.has(key)) {
      return Step.stay(counting(world));
    }
    boolean left = phase == Phase.HELD && LEFT.has(key);
    return left ? liftOff(world) : Step.stay(this);
  }

  private Step liftOff(World world) {
    Facts says = card(world).map(card -> live.atLiftOff(card, world)).orElse(Facts.none());
    return MarkScreen.liftOff(flight, sending, says, world);
  }

  private CountScreen counting(World world) {
    double end = world.moment().up().seconds() + whole(world);
    return new CountScreen(flight, Phase.COUNTING, new TimeSpan(end), sending, space, live);
  }

  private Step counting(Key key, World world) {
    boolean justBegun = whole(world) - left(world).seconds() < HeldKey.LEAST_APART_S;
    return Step.stay(COUNT.has(key) && justBegun ? this : held(world));
  }

  private Step launching(Key key, World world) {
    if (LIFT_OFF.has(key)) {
      return liftOff(world);
    }
    // Other keys beside it may be hit without looking: the rocket may be leaving just now.
    return Step.stay(LAUNCH_HOLD.has(key) ? held(world) : this);
  }

  private CountScreen held(World world) {
    return new CountScreen(flight, Phase.HELD, left(world), sending, space, live);
  }

  /** The key is out again: what comes last on the checklist is read anew. */
  private Step scrubbed(World world) {
    if (phase == Phase.READY) {
      return Step.close().open(PadScreen.of(flight, sending, world));
    }
    Sending.Sent sent =
        sending.keep(
            "scrub the count", flight, PadList.unticked(flight, world, CheckLine.Part.KEY));
    return Step.close().open(PadScreen.of(flight, sent.sending(), world)).and(sent.save());
  }

  private static double whole(World world) {
    return PadTimes.of(world.settings()).count().seconds();
  }

  /** What is left of the count, nothing once it is over. */
  private TimeSpan left(World world) {
    return switch (phase) {
      case READY -> new TimeSpan(whole(world));
      case HELD -> time;
      case LAUNCH -> new TimeSpan(0);
      case COUNTING -> new TimeSpan(Math.max(0, time.seconds() - world.moment().up().seconds()));
    };
  }

  @Override
  public Optional<TimeSpan> untilTick(World world) {
    return phase == Phase.COUNTING
        ? Optional.of(MisfireWait.untilNext(left(world)))
        : Optional.empty();
  }

  @Override
  public void draw(Canvas canvas, World world) {
    CountView.draw(canvas, this, left(world), world);
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.COUNT, flight));
  }

  @Override
  public String title(World world) {
    return world
        .log()
        .flight(flight)
        .map(card -> PadScreen.title("Count", card, world))
        .orElse("Count");
  }

  @Override
  public String purpose() {
    return "The count before the key: five seconds that any key holds, the wind and its limit "
        + "going on above and below. After lift-off the same key marks what happens.";
  }

  @Override
  public List<Binding> bindings() {
    return table(phase);
  }

  /** What its keys do in whatever phase. */
  static List<Binding> table() {
    return Stream.of(Phase.values()).flatMap(phase -> table(phase).stream()).distinct().toList();
  }

  private static List<Binding> table(Phase phase) {
    return switch (phase) {
      case READY -> List.of(COUNT, MISFIRE, SCRUB);
      case HELD -> List.of(COUNT, LEFT, MISFIRE, SCRUB);
      case COUNTING -> List.of(HOLD, MISFIRE, SCRUB);
      case LAUNCH -> List.of(LIFT_OFF, LAUNCH_HOLD, MISFIRE, SCRUB);
    };
  }

  /** While it counts the key for help holds like any other. */
  @Override
  public boolean takesText() {
    return phase == Phase.COUNTING;
  }
}
