package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Texts;

/** Asks why a flight was flown against NO-GO, before it is marked as flown. */
record AgainstScreen(Flight flight, Form form, Optional<Ticket> sent) implements Screen {
  private static final FormField<String> WHY =
      FormField.of(
          Flight.AGAINST,
          "Why",
          new Texts(""),
          "A word or more is needed; it stays with the flight.");
  private static final Binding GONE =
      Binding.of("<enter><f2>", "it flew", "marks it flown with this reason");
  private static final Binding BACK = Binding.of("<esc>", "back", "it has not flown");

  static AgainstScreen of(Flight flight, World world) {
    return new AgainstScreen(flight, Form.of(List.of(WHY), flight.facts()), Optional.empty());
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Saved saved && sent.equals(Optional.of(saved.ticket()))) {
      RecordId id = flight.id();
      Flight flown = world.log().flight(id).orElse(flight);
      return Step.close().open(DebriefScreen.open(flown, world));
    }
    if (event instanceof Event.NotSaved failed && sent.equals(Optional.of(failed.ticket()))) {
      return Step.stay(new AgainstScreen(flight, form, Optional.empty()));
    }
    if (event instanceof Event.Leaving) {
      return Step.stay(this).and(typed(world));
    }
    return event instanceof Event.Pressed pressed ? pressed(pressed.key(), world) : Step.stay(this);
  }

  private Step pressed(Key key, World world) {
    if (BACK.has(key)) {
      return Step.close().and(typed(world));
    }
    if (GONE.has(key)) {
      return form.entry().typed().isBlank() || sent.isPresent() ? Step.stay(this) : gone(world);
    }
    return Step.stay(new AgainstScreen(flight, FormKeys.press(form, key).orElse(form), sent));
  }

  private Step gone(World world) {
    Ticket ticket = new Ticket(world.turn(), 1);
    Facts why = Facts.none().with(form.facts());
    Action action = DayScreen.goneAction(flight, why, world);
    return Step.stay(new AgainstScreen(flight, form, Optional.of(ticket)))
        .and(new Effect.Save(ticket, action));
  }

  /** A reason begun is there again when the question is asked anew. */
  private List<Effect> typed(World world) {
    if (!form.touched() || sent.isPresent()) {
      return List.of();
    }
    Action action = Action.change("why flown", Kind.FLIGHT, flight.id(), form.facts());
    return List.of(new Effect.Save(new Ticket(world.turn(), 1), action));
  }

  @Override
  public void draw(Canvas canvas, World world) {
    String reason = flight.facts().get(Flight.REASON).map(r -> ": " + r).orElse("");
    String rocket =
        flight.rocket().flatMap(world.log()::rocket).map(Rocket::name).orElse("This flight");
    int row =
        Paragraph.draw(
            canvas,
            2,
            "The check said NO-GO to " + rocket + reason + ". If it flew, say why:",
            Style.STRONG);
    FormPane.draw(canvas, form, new FormPane.Area(0, row + 1, canvas.size().columns() - 2, 5));
  }

  @Override
  public String title(World world) {
    return "Flown against NO-GO";
  }

  @Override
  public List<Binding> bindings() {
    return new ArrayList<>(List.of(GONE, BACK));
  }

  @Override
  public boolean takesText() {
    return true;
  }
}
