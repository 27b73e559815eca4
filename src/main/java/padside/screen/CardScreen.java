package padside.screen;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.form.Form;
import padside.preflight.Card;

/**
 * A flight card being filled, the check following every change. Each finished field is kept at
 * once; keeping the card stores the check's answer with it, but only the answer to what stands on
 * the card then.
 *
 * @param finished the facts as they were when a field was last left
 */
record CardScreen(Form form, Facts finished, Draft draft, LiveCheck check, Phase phase)
    implements Screen {
  /** What the screen waits for. */
  enum Phase {
    /** The flier. */
    FILLING,
    /** The check, to keep the card with its answer. */
    CHECKING,
    /** The medium, to close with the card kept. */
    SAVING,
    /** As {@link #CHECKING}, to go on to the pad. */
    CHECKING_FOR_PAD,
    /** As {@link #SAVING}, to go on to the pad. */
    SAVING_FOR_PAD,
    /** The medium, the flier being gone already. */
    LEAVING
  }

  private static final Binding KEEP =
      Binding.of("<f2>", "keep card", "keep the card with the check's answer and go back");
  private static final Binding TO_PAD =
      Binding.of("<f5>", "pad", "keep the card and go on to the pad");
  private static final Binding KEEP_PLANNED =
      Binding.of("<f2>", "keep", "keep the flight in the plan and go back");
  private static final Binding LEAVE =
      Binding.of("<esc>", "leave", "go back; what was typed stays as a draft");
  private static final Binding LEAVE_PLANNED =
      Binding.of("<esc>", "leave", "go back; what was typed stays in the plan");

  /** What the keys of a card do that goes to the pad. */
  static final List<Binding> TABLE = table(false, true);

  /** A new card of a day. */
  static CardScreen create(World world, Day day) {
    return create(world, day, Flight.Status.DRAFT);
  }

  /** One more flight in the plan of a day: a card that asks for no wind. */
  static CardScreen plan(World world, Day day) {
    return create(world, day, Flight.Status.PLANNED);
  }

  private static CardScreen create(World world, Day day, Flight.Status status) {
    Form form = CardForm.ofNew(day.id(), status, world);
    Draft draft = Draft.ofNew(Kind.FLIGHT, world);
    LiveCheck check = LiveCheck.of(draft.screen());
    return new CardScreen(form, CardForm.facts(form), draft, check, Phase.FILLING);
  }

  /** The card of a flight, as far as it has come. */
  static CardScreen open(Flight flight, World world) {
    Form form = CardForm.of(flight, world);
    Draft draft = Draft.of(Kind.FLIGHT, flight.id(), flight.facts(), world);
    LiveCheck check = LiveCheck.of(draft.screen());
    return new CardScreen(form, flight.facts(), draft, check, Phase.FILLING);
  }

  /** The card that a planned flight becomes; it is begun in the log at once. */
  static CardScreen begin(Flight planned, World world) {
    Facts facts = CardStart.begun(planned, world);
    Form form = CardForm.of(new Flight(planned.id(), facts), world);
    Draft draft = Draft.of(Kind.FLIGHT, planned.id(), planned.facts(), world);
    return new CardScreen(form, facts, draft, LiveCheck.of(draft.screen()), Phase.FILLING);
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    if (event instanceof Event.Leaving) {
      return keptOn().settled(world);
    }
    if (event instanceof Event.Paused) {
      Turn turn = phase == Phase.FILLING ? keptTyping() : new Turn(this, List.of());
      return Step.stay(turn.screen).and(turn.effects);
    }
    CardScreen now = new CardScreen(form, finished, draft.on(event), check.on(event), phase);
    if (event instanceof Event.NotSaved failed && isOwn(failed.ticket())) {
      return Step.stay(now.in(Phase.FILLING));
    }
    // What was typed while the id of a new flight was awaited goes with its arrival.
    boolean saved = event instanceof Event.Saved own && isOwn(own.ticket());
    boolean due = event instanceof Event.Opened || (saved && draft.awaitsId());
    return (due ? now.keptOn() : new Turn(now, List.of())).settled(world);
  }

  private boolean isOwn(Ticket ticket) {
    return ticket.screen() == draft.screen();
  }

  private Step pressed(Key key, World world) {
    if (CheckScreen.CHECK.has(key)) {
      return Step.stay(this).open(CheckScreen.of(check));
    }
    if (ChartScreen.CHART.has(key)) {
      return Step.stay(this).open(ChartScreen.of(check));
    }
    boolean last = form.at() == form.fields().size() - 1;
    if (KEEP.has(key) || (last && key.equals(Key.ENTER))) {
      return keep(Phase.CHECKING, world);
    }
    if (TO_PAD.has(key) && asksCheck()) {
      return keep(Phase.CHECKING_FOR_PAD, world);
    }
    if (ByWire.TAKE.has(key) && asksCheck()) {
      return byWire(world);
    }
    if (LEAVE.has(key)) {
      return kept(CardForm.facts(form)).in(Phase.LEAVING).settled(world);
    }
    return FormKeys.press(form, key)
        .map(next -> edited(next, key, world).settled(world))
        .orElse(Step.stay(this));
  }

  private Step byWire(World world) {
    return ByWire.text(finished, world)
        .map(text -> form.set(CardFields.WIND, text).to(form.at()))
        .map(next -> with(next).in(Phase.FILLING).kept(CardForm.facts(next)).settled(world))
        .orElseGet(() -> Step.stay(this).and(new Effect.Tell(ByWire.refusal(finished, world))));
  }

  private Turn edited(Form next, Key key, World world) {
    boolean left = next.at() != form.at() || FormKeys.NEXT.has(key) || FormKeys.BACK.has(key);
    if (!left) {
      return new Turn(with(next).in(Phase.FILLING), List.of());
    }
    CardScreen now = with(CardForm.left(next, finished, draft.record(), world)).in(Phase.FILLING);
    return now.kept(CardForm.facts(now.form));
  }

  /** Keeps the card once the check has answered to what stands on it. */
  private Step keep(Phase next, World world) {
    Form accepted = CardForm.left(form.accepted(), finished, draft.record(), world);
    Facts facts = CardForm.facts(accepted);
    if (isNew() && with(accepted).isBlank()) {
      return Step.stay(this);
    }
    return accepted
        .firstObjection()
        .map(field -> with(accepted.to(field)).kept(facts).in(Phase.FILLING))
        .orElseGet(() -> with(accepted).kept(facts).in(next))
        .settled(world);
  }

  /** This screen with the facts sent to be kept, as far as they can be yet. */
  private Turn kept(Facts facts) {
    boolean nothing = isNew() && isBlank();
    Draft.Kept sent = nothing ? new Draft.Kept(draft, List.of()) : draft.keep(label(), facts);
    return new Turn(new CardScreen(form, facts, sent.draft(), check, phase), sent.effects());
  }

  /** What stands on the card sent to be kept; no field is left by that. */
  private Turn keptOn() {
    return kept(typed()).stillOn(finished);
  }

  private Turn keptTyping() {
    boolean nothing = isNew() && (isBlank() || !form.touched());
    Draft.Kept sent =
        nothing ? new Draft.Kept(draft, List.of()) : draft.keepTyping(label(), typed());
    return new Turn(new CardScreen(form, finished, sent.draft(), check, phase), sent.effects());
  }

  private Facts typed() {
    return form.asTyped(CardForm.facts(form));
  }

  private String label() {
    return isPlanned() ? "plan flight" : "fill in card";
  }

  private boolean isNew() {
    return draft.record().isEmpty() && draft.serial() == 0;
  }

  private boolean isPlanned() {
    return CardFields.isPlanned(finished);
  }

  private boolean isBlank() {
    return form.entries().stream().allMatch(entry -> entry.typed().isBlank());
  }

  private CardScreen with(Form next) {
    return new CardScreen(next, finished, draft, check, phase);
  }

  private CardScreen in(Phase next) {
    return new CardScreen(form, finished, draft, check, next);
  }

  /** The card as it stands, the option marked in an open list taken for chosen. */
  private Card card(World world) {
    Form shown = CardForm.left(form.accepted(), finished, draft.record(), world);
    RecordId id = draft.record().orElse(new RecordId("being filled"));
    Flight flight = new Flight(id, ByWire.standing(CardForm.facts(shown), world));
    Optional<Instant> now = Optional.of(world.now()).filter(any -> !isPlanned());
    return Card.of(flight, world.log(), world.outcomes(), now);
  }

  /** A screen and the effects it wants, on the way to a step. */
  private record Turn(CardScreen screen, List<Effect> effects) {
    Turn in(Phase phase) {
      return new Turn(screen.in(phase), effects);
    }

    Turn stillOn(Facts finished) {
      CardScreen same =
          new CardScreen(screen.form, finished, screen.draft, screen.check, screen.phase);
      return new Turn(same, effects);
    }

    /** Asks the check if the card has changed; keeps or closes if that is due. */
    Step settled(World world) {
      LiveCheck.Asked asked = screen.check.ask(screen.card(world));
      Turn stored =
          new CardScreen(screen.form, screen.finished, screen.draft, asked.check(), screen.phase)
              .stored(world);
      return (stored.screen.isDone() ? stored.screen.closed(world) : Step.stay(stored.screen))
          .and(effects)
          .and(asked.effects())
          .and(stored.effects);
    }
  }

  /** Stores the card with the answer; waits while that or the flight's id is outstanding. */
  private Turn stored(World world) {
    boolean asks = asksCheck();
    boolean waits = draft.awaitsId() || (check.current().isEmpty() && asks);
    boolean forPad = phase == Phase.CHECKING_FOR_PAD;
    if ((phase != Phase.CHECKING && !forPad) || waits) {
      return new Turn(this, List.of());
    }
    Facts blows = ByWire.standing(finished, world);
    Facts facts = asks ? blows.with(answered()) : finished;
    boolean wind = asks && (ByWire.isOn(finished, world) || form.touched(CardFields.WIND));
    List<Action.Change> reading = wind ? CardStart.reading(facts, world) : List.of();
    Draft.Kept sent = draft.keep("keep card", facts, reading);
    Phase saving = forPad ? Phase.SAVING_FOR_PAD : Phase.SAVING;
    CardScreen next = new CardScreen(form, facts, sent.draft(), check, saving);
    return new Turn(next, sent.effects());
  }

  /** A flight that has flown keeps the verdict it flew with; of a planned one none is kept. */
  boolean asksCheck() {
    boolean flown = finished.get(Flight.STATUS).equals(Optional.of(Flight.Status.FLOWN));
    return !flown && !isPlanned();
  }

  private Step closed(World world) {
    return phase == Phase.SAVING_FOR_PAD
        ? Step.close().open(PadScreen.of(draft.record().orElseThrow(), world))
        : Step.close();
  }

  private Facts answered() {
    return check.current().orElseThrow().facts().with(Flight.STATUS, Flight.Status.CARD);
  }

  private boolean isDone() {
    boolean nothing = isNew() && phase == Phase.LEAVING;
    boolean closing =
        phase == Phase.SAVING || phase == Phase.SAVING_FOR_PAD || phase == Phase.LEAVING;
    return nothing || (closing && draft.allKept(finished));
  }

  @Override
  public boolean leaving() {
    // On the way to the pad, too, so that keys pressed early are the checklist's.
    return phase == Phase.LEAVING || phase == Phase.SAVING_FOR_PAD;
  }

  @Override
  public void draw(Canvas canvas, World world) {
    CardView.draw(canvas, this, world);
  }

  /** Of a flight not begun in the log yet its day. */
  @Override
  public Optional<Bookmark> bookmark() {
    Optional<RecordId> day = finished.get(Flight.DAY);
    Bookmark mark =
        draft
            .record()
            .map(id -> Bookmark.of(Bookmarks.CARD, id))
            .orElse(
                Bookmark.of(isPlanned() ? Bookmarks.NEW_PLANNED : Bookmarks.NEW_CARD).about(day));
    return Optional.of(mark.in(form));
  }

  @Override
  public Screen at(Bookmark mark) {
    return with((isNew() ? mark.nothingTyped() : mark).resumed(form));
  }

  @Override
  public String title(World world) {
    Optional<Day> day = finished.get(Flight.DAY).flatMap(world.log()::day);
    return (isPlanned() ? "Plan " : "Card ")
        + number(world)
        + draft
            .record()
            .flatMap(world.log()::flight)
            .flatMap(flight -> MisfireText.attempt(flight, world))
            .map(", "::concat)
            .orElse("")
        + day.map(each -> " · " + DayWords.of(each, world.log())).orElse("");
  }

  /** Its place in the day's order or in the plan; a new one comes behind the others. */
  private int number(World world) {
    List<RecordId> ids =
        finished.get(Flight.DAY).map(world.log()::flightsOf).orElse(List.of()).stream()
            .filter(flight -> flight.isPlanned() == isPlanned())
            .map(Flight::id)
            .toList();
    return draft.record().filter(ids::contains).map(ids::indexOf).orElse(ids.size()) + 1;
  }

  @Override
  public String purpose() {
    return "The card of one flight: what flies, on which motor, under what, in which wind. "
        + "Every field is kept as it is left, and the check answers while you type.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_CARDS;
  }

  @Override
  public List<Binding> bindings() {
    return table(isPlanned(), asksCheck());
  }

  private static List<Binding> table(boolean planned, boolean asksCheck) {
    List<Binding> bindings = new ArrayList<>(List.of(planned ? KEEP_PLANNED : KEEP));
    bindings.addAll(List.of(CheckScreen.CHECK, ChartScreen.CHART));
    if (asksCheck) {
      bindings.addAll(List.of(TO_PAD, ByWire.TAKE));
    }
    bindings.add(planned ? LEAVE_PLANNED : LEAVE);
    bindings.addAll(FormKeys.TABLE);
    return bindings;
  }

  @Override
  public boolean takesText() {
    return true;
  }

  /** Whether what was typed is on the medium. */
  String state(World world) {
    return switch (phase) {
      case CHECKING, CHECKING_FOR_PAD -> "checking… kept with the answer";
      case SAVING, SAVING_FOR_PAD, LEAVING -> "saving…";
      case FILLING -> draftState(world);
    };
  }

  private String draftState(World world) {
    if (isNew()) {
      return isBlank() ? "" : "not kept yet";
    }
    if (!draft.allKept()) {
      return "saving…";
    }
    if (draft.lost()) {
      return "not kept: leave the field to try again";
    }
    boolean draftOnly = finished.get(Flight.STATUS).equals(Optional.of(Flight.Status.DRAFT));
    String kept = world.keptWords(draftOnly ? "draft kept" : "kept");
    Facts now = typed();
    return now.equals(finished) || draft.allKept(now) ? kept : kept + " but for this field";
  }
}
