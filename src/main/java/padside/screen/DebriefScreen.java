package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.form.Form;

/**
 * What came of a flight. It opens with the nominal outcome filled in, which counts only once the
 * debrief is kept; what is typed before that is kept like everything else.
 */
record DebriefScreen(Flight flight, RecordForm record) implements Screen {
  private static final Binding KEEP =
      Binding.of("<f2>", "keep", "keep the debrief; Enter in the last field does too");
  private static final Binding NEXT = Binding.of("<tab><enter>", "next", FormKeys.NEXT.meaning());
  private static final Binding LEAVE =
      Binding.of("<esc>", "leave", "leave it for later; all that was typed is kept");

  static DebriefScreen open(Flight flight, World world) {
    RecordForm.Sheet sheet =
        new RecordForm.Sheet(Kind.FLIGHT, "debrief", DebriefFields.of(flight, world));
    Facts filled = DebriefFields.nominal(world.outcomes()).with(known(flight.facts()));
    Form form = Form.of(sheet.fields(), filled);
    Draft draft = Draft.of(Kind.FLIGHT, flight.id(), flight.facts(), world);
    return new DebriefScreen(flight, new RecordForm(sheet, form, draft, false));
  }

  /** Without emptied cells, which would empty the nominal ones. */
  private static Facts known(Facts facts) {
    Facts known = facts;
    for (var cell : facts.cells().entrySet()) {
      known = cell.getValue().equals(Facts.Cell.emptied()) ? known.without(cell.getKey()) : known;
    }
    return known;
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      boolean last = record.form().at() == record.form().fields().size() - 1;
      if (KEEP.has(pressed.key()) || (pressed.key().equals(Key.ENTER) && last)) {
        return kept(record.form().accepted());
      }
    }
    Step step = record.on(event, world);
    return new Step(
        step.self().map(screen -> new DebriefScreen(flight, (RecordForm) screen)),
        step.over(),
        step.effects());
  }

  /** The whole outcome, filled in or typed, the flight flown, and the fix: one act. */
  private Step kept(Form form) {
    List<Action.Change> fix = fix(form.facts());
    Form rest =
        fix.isEmpty()
            ? form
            : form.set(Flight.TO_MEND.name(), "").set(Flight.TO_MEND_SEVERITY.name(), "");
    Facts outcome =
        record.draft().sent().with(rest.facts()).with(Flight.STATUS, Flight.Status.FLOWN);
    Draft.Kept kept = record.draft().keep("keep debrief", outcome, fix);
    boolean nothingUnderWay = kept.effects().isEmpty() && kept.draft().allKept();
    RecordForm leaving = new RecordForm(record.sheet(), rest, kept.draft(), true);
    return nothingUnderWay
        ? Step.close()
        : Step.stay(new DebriefScreen(flight, leaving)).and(kept.effects());
  }

  /** What is to be mended, as a record of its own; nothing where no rocket is named. */
  private List<Action.Change> fix(Facts facts) {
    Optional<String> text = facts.get(Flight.TO_MEND).filter(typed -> !typed.isBlank());
    Optional<RecordId> rocket = flight.rocket();
    if (text.isEmpty() || rocket.isEmpty()) {
      return List.of();
    }
    Fix.Severity severity = facts.get(Flight.TO_MEND_SEVERITY).orElse(Fix.Severity.LOOK_AT);
    return List.of(
        new Action.Change(
            Kind.FIX,
            Optional.empty(),
            Facts.none()
                .with(Fix.ROCKET, rocket.get())
                .with(Fix.TEXT, text.get(), text.get())
                .with(Fix.SEVERITY, severity)
                .with(Fix.FLIGHT, flight.id())));
  }

  @Override
  public void draw(Canvas canvas, World world) {
    Paragraph.draw(canvas, 1, FlightText.predicted(flight, world), Style.PLAIN);
    record.drawFrom(3, canvas);
  }

  @Override
  public String title(World world) {
    return "Debrief: " + FlightText.name(flight, world);
  }

  @Override
  public List<Binding> bindings() {
    List<Binding> table = new ArrayList<>(List.of(KEEP, NEXT));
    table.addAll(FormKeys.TABLE.subList(1, FormKeys.TABLE.size()));
    table.add(LEAVE);
    return List.copyOf(table);
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
