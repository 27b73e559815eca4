package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.form.Form;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.units.TimeSpan;

/**
 * A card at the pad: the verdict of the check always in sight, below it the checklist. Each tick is
 * kept at once.
 *
 * @param at key of the line under the cursor; the first open line while it was not moved
 * @param wind the wind being typed
 * @param mode what is shown, or is to follow
 */
record PadScreen(
    RecordId flight,
    Optional<String> at,
    Optional<Form> wind,
    Sending sending,
    LiveCheck check,
    Mode mode)
    implements Screen {
  private static final Binding BACK = Binding.of("<esc>", "checklist, as any key", "back");

  /** What the pad is about. */
  enum Mode {
    /** The checklist. */
    LIST,
    /** The checklist; the count is to follow as soon as the check has answered. */
    ARMING,
    /** Verdict, wind and limit in large figures. */
    LARGE
  }

  static PadScreen of(RecordId flight, World world) {
    return of(flight, Sending.of(world), world);
  }

  /** With what is on its way to be kept. */
  static PadScreen of(RecordId flight, Sending sending, World world) {
    LiveCheck check = LiveCheck.of(world.turn());
    return new PadScreen(flight, Optional.empty(), Optional.empty(), sending, check, Mode.LIST);
  }

  /** The flight with what is on its way to be kept, while it waits at the pad. */
  Optional<Flight> flight(World world) {
    return sending.flight(flight, world).filter(each -> each.status() == Flight.Status.CARD);
  }

  PadList list(Flight card, World world) {
    return PadList.of(card, check.answer(), world);
  }

  @Override
  public Step on(Event event, World world) {
    Optional<Flight> card = flight(world);
    if (card.isEmpty()) {
      return Step.close();
    }
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), card.get(), world);
    }
    if (event instanceof Event.Leaving) {
      return wind.filter(PadWind::isRead).map(form -> blown(form, world)).orElse(Step.stay(this));
    }
    return new PadScreen(flight, at, wind, sending.on(event), check.on(event), mode).settled(world);
  }

  /** Asks the check if anything changed; keeps its answer, or goes on, where that is due. */
  private Step settled(World world) {
    Optional<Flight> card = flight(world);
    if (card.isEmpty()) {
      return Step.close();
    }
    LiveCheck.Asked asked = asking(check, card.get(), world);
    PadScreen now = new PadScreen(flight, at, wind, sending, asked.check(), mode);
    Optional<Answer> answer = now.check.current();
    Step next =
        answer
            .filter(any -> mode == Mode.ARMING)
            .map(any -> now.goingOn(card.get(), any, world))
            .or(
                () ->
                    answer
                        .filter(a -> card.get().verdict().isEmpty())
                        .map(a -> now.answered(a, card.get(), world)))
            .orElse(Step.stay(now));
    return next.and(asked.effects());
  }

  /** The check asked about a card in the wind that stands for now. */
  static LiveCheck.Asked asking(LiveCheck check, Flight card, World world) {
    Flight blowing = blowing(card, world);
    return check.ask(Card.of(blowing, world.log(), world.outcomes(), Optional.of(world.now())));
  }

  /** Keeps what the check says to a wind read here. */
  private Step answered(Answer answer, Flight card, World world) {
    return keeping("check at the pad", answered(card, answer, world));
  }

  /** In the wind that stands for now, the card's own or the meter's. */
  private static Flight blowing(Flight card, World world) {
    return new Flight(card.id(), ByWire.standing(card.facts(), world));
  }

  /** What the check says, and the wind it says that of where that is the meter's. */
  private static Facts answered(Flight card, Answer answer, World world) {
    Facts blows = blowing(card, world).facts().changedSince(card.facts());
    return blows.with(answer.facts());
  }

  private Step keeping(String label, Facts facts) {
    Sending.Sent sent = sending.keep(label, flight, facts);
    return Step.stay(with(sent.sending())).and(sent.save());
  }

  private PadScreen in(Mode other) {
    return new PadScreen(flight, at, wind, sending, check, other);
  }

  private PadScreen with(Sending next) {
    return new PadScreen(flight, at, wind, next, check, mode);
  }

  private PadScreen to(String key) {
    return new PadScreen(flight, Optional.of(key), wind, sending, check, Mode.LIST);
  }

  private Step pressed(Key key, Flight card, World world) {
    if (wind.isPresent()) {
      return winding(wind.get(), key, world);
    }
    PadScreen now = in(Mode.LIST);
    if (mode == Mode.LARGE) {
      return Step.stay(now);
    }
    return PadKeys.find(key).map(does -> now.does(does, key, card, world)).orElse(Step.stay(now));
  }

  private Step does(PadKeys does, Key key, Flight card, World world) {
    return switch (does) {
      case TICK, PART, MOVE -> onLine(does, key, list(card, world));
      case ARM -> armed(world);
      case LARGE -> Step.stay(in(Mode.LARGE));
      case WIND -> Step.stay(typing(Optional.of(PadWind.of(card, world))));
      case WIRE -> byWire(card, world);
      case MISFIRE -> MisfireScreen.begin(flight, world);
      case CHECK -> Step.stay(this).open(CheckScreen.of(check));
      case CHART -> Step.stay(this).open(ChartScreen.of(check));
      case LIST -> Step.stay(this).open(CheckLineShelf.of(card.rocket(), world));
      case CARD -> Step.close().open(CardScreen.open(card, world));
      case DAY -> Step.close();
    };
  }

  private Step onLine(PadKeys does, Key key, PadList list) {
    if (list.lines().isEmpty()) {
      return Step.stay(this);
    }
    int index = list.index(at);
    PadLine line = list.lines().get(index);
    int last = list.lines().size() - 1;
    return switch (does) {
      case TICK -> {
        int next = list.isTicked(line) ? index : Math.min(index + 1, last);
        yield to(list.lines().get(next).key()).ticking(list.turned(line));
      }
      case PART -> to(list.behindPart(line).key()).ticking(list.withPart(line.part()));
      default -> Step.stay(to(list.lines().get(moved(key, index, last)).key()));
    };
  }

  private static int moved(Key key, int index, int last) {
    return switch (key.name()) {
      case "<down>" -> Math.min(index + 1, last);
      case "<up>" -> Math.max(index - 1, 0);
      case "<home>" -> 0;
      default -> last;
    };
  }

  private Step ticking(PadList list) {
    return keeping("tick", list.facts());
  }

  /** Not before a wait after a misfire is over. */
  private Step armed(World world) {
    return MisfireWait.of(flight, world)
        .map(wait -> Step.stay(this).and(new Effect.Tell(wait.words(world) + ".")))
        .orElseGet(() -> in(Mode.ARMING).settled(world));
  }

  private Step goingOn(Flight card, Answer answer, World world) {
    GoingOn on = GoingOn.of(card, list(card, world).open(), answer, answered(card, answer, world));
    if (on.asks()) {
      return Step.close().open(AgainstScreen.of(on));
    }
    Facts facts = on.facts("");
    if (facts.isEmpty()) {
      return Step.close().open(CountScreen.ready(flight, sending, CountCheck.of(check)));
    }
    Sending.Sent sent = sending.keep("arm", flight, facts);
    return Step.close()
        .open(CountScreen.ready(flight, sent.sending(), CountCheck.of(check)))
        .and(sent.save());
  }

  private PadScreen typing(Optional<Form> form) {
    return new PadScreen(flight, at, form, sending, check, Mode.LIST);
  }

  private Step winding(Form form, Key key, World world) {
    if (key.equals(Key.ESC)) {
      return Step.stay(typing(Optional.empty()));
    }
    if (!PadWind.KEEP.has(key)) {
      return Step.stay(typing(Optional.of(FormKeys.press(form, key).orElse(form))));
    }
    return PadWind.isRead(form) ? blown(form, world) : Step.stay(this);
  }

  private Step byWire(Flight card, World world) {
    return ByWire.taken(card.facts(), world)
        .map(wind -> blown(wind, world))
        .orElseGet(() -> Step.stay(this).and(new Effect.Tell(ByWire.refusal(card.facts(), world))));
  }

  private Step blown(Form form, World world) {
    return blown(form.facts(), world);
  }

  /** The wind as a reading of the day and on the card, which the check has not seen yet. */
  private Step blown(Facts wind, World world) {
    Flight card = flight(world).orElseThrow();
    Facts blows = Answer.noFacts().with(wind);
    Sending.Sent sent =
        sending.keep(
            "wind at the pad", flight, blows, CardStart.looked(card.facts().with(blows), world));
    Step step = typing(Optional.empty()).with(sent.sending()).settled(world);
    return new Step(step.self(), step.over(), List.of(sent.save())).and(step.effects());
  }

  @Override
  public Optional<TimeSpan> untilTick(World world) {
    return MisfireWait.of(flight, world).map(MisfireWait::untilNext);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    flight(world).ifPresent(card -> PadView.draw(canvas, this, card, world));
  }

  @Override
  public Optional<Bookmark> bookmark() {
    Bookmark mark = new Bookmark(Bookmarks.PAD, Optional.of(flight), at, wind.isPresent(), "");
    return Optional.of(wind.map(form -> mark.withText(form.entry().typed())).orElse(mark));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new PadScreen(flight, mark.at(), wind, sending, check, Mode.LIST);
  }

  /** With the wind being typed that was being typed. */
  PadScreen typing(String text, World world) {
    return flight(world)
        .map(card -> PadWind.of(card, world))
        .map(form -> typing(Optional.of(form.set(form.field().name(), text).end())))
        .orElse(this);
  }

  @Override
  public String title(World world) {
    return world.log().flight(flight).map(card -> title("Pad", card, world)).orElse("Pad");
  }

  /** {@code Pad 2 · Wren on A10T-3 · 2nd attempt}. */
  static String title(String what, Flight card, World world) {
    String pad = card.pad().map(number -> " " + number).orElse("");
    String attempt = MisfireText.attempt(card, world).map(" · "::concat).orElse("");
    return what + pad + " · " + FlightText.name(card, world) + attempt;
  }

  @Override
  public String purpose() {
    return "At the pad: the check stays on top, the checklist is read line by line, then "
        + "the count. Nothing here fires a motor.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_PADS;
  }

  @Override
  public List<Binding> bindings() {
    if (wind.isPresent()) {
      return PadWind.TABLE;
    }
    if (mode == Mode.LARGE) {
      return List.of(BACK);
    }
    List<Binding> table = new ArrayList<>();
    for (PadKeys key : PadKeys.values()) {
      table.add(key.binding());
    }
    return table;
  }

  @Override
  public boolean takesText() {
    return wind.isPresent();
  }
}
