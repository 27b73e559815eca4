package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Texts;

/**
 * Asks once, before something is done all the same, why; the reason stays with the flight.
 *
 * @param sent the act, once it is on its way
 * @param typed the reason as sent to be kept so far
 */
record AgainstScreen(Question question, Form form, Optional<Ticket> sent, Facts typed)
    implements Screen {
  /** What is to be done all the same. */
  interface Question {
    Flight flight();

    /** Where the reason is kept, a half typed one too. */
    Column<String> reason();

    /** What speaks against it, ended by a colon. */
    String text(World world);

    /** The act itself. */
    Action action(Facts reason, World world);

    /** What follows it. */
    Screen next(Flight kept, World world);

    /** What comes back when it is not done; absent where that lies below. */
    Optional<Screen> back(World world);

    String title();

    /** What {@link Bookmarks} call it. */
    String bookmark();

    Binding keep();

    Binding leave();
  }

  static AgainstScreen of(Question question) {
    FormField<String> why =
        FormField.of(
            question.reason(),
            "Why",
            new Texts(""),
            "A word is needed, one letter with cold fingers; it stays with the flight.");
    Form form = Form.of(List.of(why), question.flight().facts());
    return new AgainstScreen(question, form, Optional.empty(), Facts.none());
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Saved saved && sent.equals(Optional.of(saved.ticket()))) {
      Flight kept = world.log().flight(question.flight().id()).orElse(question.flight());
      return Step.close().open(question.next(kept, world));
    }
    if (event instanceof Event.NotSaved failed) {
      boolean act = sent.equals(Optional.of(failed.ticket()));
      return Step.stay(
          new AgainstScreen(question, form, act ? Optional.empty() : sent, Facts.none()));
    }
    if (event instanceof Event.Leaving || event instanceof Event.Paused) {
      List<Effect> effects = typed(world);
      Facts now = effects.isEmpty() ? typed : form.facts();
      return Step.stay(new AgainstScreen(question, form, sent, now)).and(effects);
    }
    return event instanceof Event.Pressed pressed ? pressed(pressed.key(), world) : Step.stay(this);
  }

  private Step pressed(Key key, World world) {
    if (question.leave().has(key)) {
      Step closed = Step.close().and(typed(world));
      return question.back(world).map(closed::open).orElse(closed);
    }
    if (question.keep().has(key)) {
      boolean waits = form.entry().typed().isBlank() || sent.isPresent();
      return waits ? Step.stay(this) : done(world);
    }
    return Step.stay(
        new AgainstScreen(question, FormKeys.press(form, key).orElse(form), sent, typed));
  }

  private Step done(World world) {
    Ticket ticket = new Ticket(world.turn(), 1);
    Action action = question.action(Facts.none().with(form.facts()), world);
    return Step.stay(new AgainstScreen(question, form, Optional.of(ticket), typed))
        .and(new Effect.Save(ticket, action));
  }

  /** A reason begun is there again when the question is asked anew. */
  private List<Effect> typed(World world) {
    if (!form.touched() || sent.isPresent() || form.facts().equals(typed)) {
      return List.of();
    }
    Action action = Action.change("why", Kind.FLIGHT, question.flight().id(), form.facts());
    return List.of(new Effect.Save(new Ticket(world.turn(), 0), action));
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int row = Paragraph.draw(canvas, 2, question.text(world), Style.STRONG);
    FormPane.draw(canvas, form, new FormPane.Area(0, row + 1, canvas.size().columns() - 2, 5));
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(question.bookmark(), question.flight().id()).in(form));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new AgainstScreen(question, mark.resumed(form), sent, typed);
  }

  @Override
  public String title(World world) {
    return question.title();
  }

  @Override
  public String purpose() {
    return "Asks in one sentence why this is done against an answer or with lines left "
        + "open; the log keeps the reason beside the flight.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_FORMS;
  }

  @Override
  public List<Binding> bindings() {
    return List.of(question.keep(), question.leave());
  }

  @Override
  public boolean takesText() {
    return true;
  }
}
