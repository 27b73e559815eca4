package padside.screen;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.units.TimeSpan;

/**
 * The clock of a flight and its marks, all by one key that is found without looking. Each mark is
 * kept at once.
 *
 * @param unseen the ejection was not seen; the next mark is the touchdown
 * @param bound where to go once all marks are kept
 */
record MarkScreen(
    RecordId flight, Sending sending, boolean unseen, HeldKey space, Optional<To> bound)
    implements Screen {
  /** Where it is left to. */
  enum To {
    DEBRIEF,
    DAY
  }

  /** A flight that is marked no further is over by then (common practice, no source). */
  private static final double LONGEST_S = 600;

  /** Whoever tells one of these has seen the end of the flight. */
  private static final List<Column<?>> TOLD =
      List.of(
          Flight.TOUCHDOWN_MARK,
          Flight.ALTITUDE,
          Flight.BOOST,
          Flight.BURN,
          Flight.EJECTION,
          Flight.RECOVERY,
          Flight.LANDING,
          Flight.LANDED_ON,
          Flight.LANDING_BEARING,
          Flight.LANDING_DISTANCE,
          Flight.CONDITION,
          Flight.TO_MEND);

  private static final TimeSpan TENTH = new TimeSpan(0.1);

  private static final Binding MARK =
      Binding.of(" ", "mark", "the ejection, and after it the touchdown");
  private static final Binding UNSEEN =
      Binding.of("n", "no ejection", "the ejection was not seen; Space then marks the touchdown");
  private static final Binding BACK =
      Binding.of("<backspace>", "take back", "take the last mark back, in the end the lift-off");
  private static final Binding DEBRIEF =
      Binding.of("<enter>", "debrief", "what came of it; marks left out stay out");
  private static final Binding DAY = Binding.of("<esc>", "day", "back to the day; marks stay");
  static final List<Binding> TABLE = List.of(MARK, UNSEEN, BACK, DEBRIEF, DAY);

  /**
   * The rocket leaves the rod at this moment.
   *
   * @param says the check's answer to the wind of this moment, where it has one of its own
   */
  static Step liftOff(RecordId flight, Sending sending, Facts says, World world) {
    Facts facts =
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.LIFTOFF_AT, world.now())
            .with(Flight.LIFTOFF_UP, world.moment().up())
            .with(Flight.LIFTOFF_BOOT, world.moment().boot());
    Facts card = sending.flight(flight, world).map(Flight::facts).orElse(Facts.none());
    Facts blows = ByWire.atLiftOff(card, world);
    Sending.Sent sent =
        sending.keep("lift-off", flight, says.with(blows).with(facts), ByWire.reading(card, world));
    HeldKey pressed = HeldKey.none().pressed(world);
    return Step.close()
        .open(new MarkScreen(flight, sent.sending(), false, pressed, Optional.empty()))
        .and(sent.save());
  }

  /** Goes on with the marks of a flight that is in the air. */
  static MarkScreen of(RecordId flight, World world) {
    return new MarkScreen(flight, Sending.of(world), false, HeldKey.none(), Optional.empty());
  }

  /** The flight that left the pad a short while ago and was not marked to its end. */
  static Optional<Flight> inTheAir(World world) {
    return world.log().flights().stream().filter(each -> isInTheAir(each, world)).findFirst();
  }

  static boolean isInTheAir(Flight flight, World world) {
    Facts facts = flight.facts();
    return flight.status() == Flight.Status.FLOWN
        && facts.get(Flight.LIFTOFF_UP).isPresent()
        && TOLD.stream().allMatch(column -> facts.get(column).isEmpty())
        && Since.liftOff(facts)
            .ago(world.moment())
            .filter(ago -> ago.seconds() <= LONGEST_S)
            .isPresent();
  }

  /** A flight that has not left the pad. */
  static Facts noMarks() {
    return Facts.emptied(
        List.of(
            Flight.LIFTOFF_AT,
            Flight.LIFTOFF_UP,
            Flight.LIFTOFF_BOOT,
            Flight.EJECTION_MARK,
            Flight.TOUCHDOWN_MARK));
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    Sending heard = sending.on(event);
    boolean failed = heard.failed() && !sending.failed();
    MarkScreen now =
        new MarkScreen(flight, heard, unseen, space, failed ? Optional.empty() : bound);
    return now.bound.isPresent() && heard.allKept() ? now.left(world) : Step.stay(now);
  }

  private Step pressed(Key key, World world) {
    if (MARK.has(key)) {
      return space(world);
    }
    if (UNSEEN.has(key)) {
      boolean wanted = marks(world).get(Flight.TOUCHDOWN_MARK).isEmpty();
      boolean open = wanted && marks(world).get(Flight.EJECTION_MARK).isEmpty();
      return Step.stay(new MarkScreen(flight, sending, unseen || open, space, bound));
    }
    if (BACK.has(key)) {
      return takenBack(world);
    }
    if (DEBRIEF.has(key) || DAY.has(key)) {
      return bound(DEBRIEF.has(key) ? To.DEBRIEF : To.DAY, world);
    }
    return Step.stay(this);
  }

  private Step space(World world) {
    MarkScreen now = new MarkScreen(flight, sending, unseen, space.pressed(world), bound);
    Optional<TimeSpan> time = clock(world).filter(any -> !space.repeats(world));
    Facts marks = marks(world);
    boolean touchdown = unseen || marks.get(Flight.EJECTION_MARK).isPresent();
    double before = marks.get(Flight.EJECTION_MARK).map(TimeSpan::seconds).orElse(0.0);
    return time.filter(any -> marks.get(Flight.TOUCHDOWN_MARK).isEmpty())
        .map(MarkScreen::hundredths)
        .filter(at -> at.seconds() - before >= HeldKey.LEAST_APART_S)
        .map(
            at ->
                touchdown
                    ? now.keeping("touchdown", Facts.none().with(Flight.TOUCHDOWN_MARK, at))
                    : now.keeping("ejection", Facts.none().with(Flight.EJECTION_MARK, at)))
        .orElse(Step.stay(now));
  }

  /** As fine as the machine's clock tells it. */
  private static TimeSpan hundredths(TimeSpan time) {
    return new TimeSpan(Math.round(time.seconds() * 100) / 100.0);
  }

  private Step keeping(String label, Facts facts) {
    Sending.Sent sent = sending.keep(label, flight, facts);
    return Step.stay(new MarkScreen(flight, sent.sending(), unseen, space, bound)).and(sent.save());
  }

  private Step takenBack(World world) {
    Facts marks = marks(world);
    if (marks.get(Flight.TOUCHDOWN_MARK).isPresent()) {
      return keeping("take back touchdown", Facts.emptied(List.of(Flight.TOUCHDOWN_MARK)));
    }
    if (unseen) {
      return Step.stay(new MarkScreen(flight, sending, false, space, bound));
    }
    if (marks.get(Flight.EJECTION_MARK).isPresent()) {
      return keeping("take back ejection", Facts.emptied(List.of(Flight.EJECTION_MARK)));
    }
    Facts waits = noMarks().with(Flight.STATUS, Flight.Status.CARD);
    Sending.Sent sent = sending.keep("take back lift-off", flight, waits);
    return Step.close()
        .open(CountScreen.held(flight, sent.sending(), CountCheck.of(world)))
        .and(sent.save());
  }

  /** Not before all marks are kept: what failed goes out once more. */
  private Step bound(To to, World world) {
    MarkScreen now = new MarkScreen(flight, sending, unseen, space, Optional.of(to));
    if (sending.allKept()) {
      return now.left(world);
    }
    return sending.failed() ? now.keeping("marks", Facts.none()) : Step.stay(now);
  }

  private Step left(World world) {
    boolean debrief = bound.equals(Optional.of(To.DEBRIEF));
    return world
        .log()
        .flight(flight)
        .filter(any -> debrief)
        .map(flown -> Step.close().open(DebriefScreen.open(flown, world)))
        .orElse(Step.close());
  }

  /** The flight's facts with the marks on their way. */
  Facts marks(World world) {
    return sending.flight(flight, world).map(Flight::facts).orElse(Facts.none());
  }

  /** Time since lift-off. */
  Optional<TimeSpan> clock(World world) {
    return Since.liftOff(marks(world)).ago(world.moment());
  }

  @Override
  public Optional<TimeSpan> untilTick(World world) {
    boolean runs =
        marks(world).get(Flight.TOUCHDOWN_MARK).isEmpty()
            && clock(world).filter(time -> time.seconds() <= LONGEST_S).isPresent();
    return Optional.of(TENTH).filter(any -> runs);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    MarkView.draw(canvas, this, world);
  }

  @Override
  public Optional<Bookmark> bookmark() {
    Bookmark mark = Bookmark.of(Bookmarks.MARKS, flight);
    return Optional.of(unseen ? mark.at(UNSEEN.label()) : mark);
  }

  @Override
  public Screen at(Bookmark mark) {
    boolean without = mark.at().equals(Optional.of(UNSEEN.label()));
    return new MarkScreen(flight, sending, without, space, bound);
  }

  @Override
  public String title(World world) {
    return world
        .log()
        .flight(flight)
        .map(flown -> PadScreen.title("Marks", flown, world))
        .orElse("Marks");
  }

  @Override
  public String purpose() {
    return "The flight in the air: Space marks lift-off, ejection and touchdown, each give "
        + "or take 0.2 s of a hand.";
  }

  @Override
  public List<Binding> bindings() {
    return TABLE;
  }

  @Override
  public boolean leaving() {
    return bound.isPresent();
  }

  /** {@code 12.3}: seconds and tenths, rounded down as a clock does. */
  static String shown(TimeSpan time) {
    return String.format(Locale.ROOT, "%.1f", Math.floor(time.seconds() * 10 + 1e-6) / 10);
  }
}
