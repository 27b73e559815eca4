package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Attempt;
import padside.flight.CheckLine;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.form.Choices;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Texts;
import padside.preflight.PadTimes;
import padside.units.Notations;
import padside.units.TimeSpan;

/**
 * A misfire: it is kept at once and waited for; meanwhile igniter and cause can be told. The wait
 * goes on when the screen is left.
 */
record MisfireScreen(RecordForm record) implements Screen {
  private static final Binding DONE =
      Binding.of(
          "<f2><esc>", "checklist", "back to the checklist; all is kept and the wait goes on");
  private static final Binding NEXT =
      Binding.of("<tab><enter>", "next", "accept the field and go on; Enter in the last is done");
  static final List<Binding> TABLE =
      List.of(DONE, NEXT, FormKeys.BACK, FormKeys.UP_DOWN, FormKeys.CLEAR);

  /** The key was pressed and the motor did not light: from now on everybody waits. */
  static Step begin(RecordId flight, World world) {
    Facts told =
        Facts.none()
            .with(Attempt.FLIGHT, flight)
            .with(Attempt.AT, world.now())
            .with(Attempt.UP, world.moment().up())
            .with(Attempt.BOOT, world.moment().boot());
    Facts unticked = PadList.unticked(flight, world, CheckLine.Part.PAD, CheckLine.Part.KEY);
    Action.Change anew = new Action.Change(Kind.FLIGHT, Optional.of(flight), unticked);
    Draft.Kept kept = Draft.ofNew(Kind.ATTEMPT, world).keep("misfire", told, List.of(anew));
    return Step.close().open(over(told, kept.draft(), world)).and(kept.effects());
  }

  /** Goes on with one that was kept. */
  static MisfireScreen of(Attempt attempt, World world) {
    Draft draft = Draft.of(Kind.ATTEMPT, attempt.id(), attempt.facts(), world);
    return over(attempt.facts(), draft, world);
  }

  private static MisfireScreen over(Facts told, Draft draft, World world) {
    List<FormField<?>> fields = fields(world);
    RecordForm.Sheet sheet = new RecordForm.Sheet(Kind.ATTEMPT, "misfire", fields);
    return new MisfireScreen(new RecordForm(sheet, Form.of(fields, told), draft, false));
  }

  private static List<FormField<?>> fields(World world) {
    List<Choices.Option<String>> causes =
        world.outcomes().of(Attempt.CAUSE.name()).stream()
            .map(cause -> new Choices.Option<>(cause.code(), cause.words(), ""))
            .toList();
    return List.of(
        FormField.choice(
            Attempt.CAUSE,
            "Cause",
            new Choices<>("cause", causes).orElse(new Texts("")),
            "Why it did not light: Down opens the list; own words do too."),
        FormField.of(Attempt.IGNITER, "Igniter", new Texts(""), "Which igniter it was."),
        FormField.of(Attempt.NOTE, "Note", new Texts(""), "Anything worth knowing."));
  }

  private RecordId flight() {
    return facts().get(Attempt.FLIGHT).orElseThrow();
  }

  private Facts facts() {
    return record.form().opened();
  }

  private Optional<MisfireWait> waiting(World world) {
    return MisfireWait.of(new Attempt(flight(), facts()), world);
  }

  @Override
  public Step on(Event event, World world) {
    Step step = record.on(event, world);
    Optional<Screen> self = step.self().map(screen -> new MisfireScreen((RecordForm) screen));
    return self.isPresent()
        ? new Step(self, step.over(), step.effects())
        : Step.close().open(PadScreen.of(flight(), world)).and(step.effects());
  }

  @Override
  public Optional<TimeSpan> untilTick(World world) {
    return waiting(world).map(MisfireWait::untilNext);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    PadTimes times = PadTimes.of(world.settings());
    String wait = Notations.timeSpan().show(times.misfire());
    Optional<MisfireWait> running = waiting(world);
    String rule =
        running.isPresent()
            ? "KEY OUT. Nobody goes near the pad for " + wait + " (" + times.source() + ")."
            : "The " + wait + " are over. Key still out; then one person goes to the pad.";
    int row = Paragraph.draw(canvas, 1, rule, Style.STRONG);
    String seconds = running.map(MisfireWait::seconds).orElse("0");
    int below = Figures.draw(canvas, Math.max(row, 4), seconds, Style.STRONG);
    record.drawFrom(below + 1, canvas, world);
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return record.draft().record().map(id -> Bookmark.of(Bookmarks.MISFIRE, id).in(record.form()));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new MisfireScreen(record.at(mark));
  }

  @Override
  public String title(World world) {
    return world
        .log()
        .flight(flight())
        .map(card -> "Misfire · " + FlightText.name(card, world) + number(card, world))
        .orElse("Misfire");
  }

  /** {@code , 2 so far}, from the second on. */
  private static String number(Flight card, World world) {
    int all = world.log().attemptsOf(card.id()).size();
    return all < 2 ? "" : ", " + all + " so far";
  }

  @Override
  public String purpose() {
    return "Nothing fired. It waits with you until anybody may go near, keeps what was "
        + "found, and goes back to the pad or scrubs the card.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_FORMS;
  }

  @Override
  public List<Binding> bindings() {
    return TABLE;
  }

  @Override
  public boolean takesText() {
    return true;
  }

  @Override
  public boolean leaving() {
    return record.leaving();
  }
}
