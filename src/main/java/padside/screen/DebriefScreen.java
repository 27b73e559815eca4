package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.OutcomeTable;
import padside.form.Form;
import padside.report.Comparison;

/**
 * What came of a flight. It opens with the nominal outcome filled in, which counts only once the
 * debrief is kept; what is typed before that is kept like everything else.
 */
record DebriefScreen(Flight flight, RecordForm record) implements Screen {
  private static final int LEFT = 2;
  private static final int STATE_WIDTH = 24;

  private static final Binding KEEP =
      Binding.of("<f2>", "keep", "keep the debrief; Enter in the last field does too");
  private static final Binding NEXT = Binding.of("<tab><enter>", "next", FormKeys.NEXT.meaning());
  private static final Binding FIND =
      Binding.of("<f6>", "find it", "lines of sight to where it went down: where to look for it");
  private static final Binding TRACE =
      Binding.of("<f7>", "trace", "fill in what the altimeter's file tells: asks for the file");
  private static final Binding LEAVE =
      Binding.of("<esc>", "leave", "leave it for later; all that was typed is kept");

  static DebriefScreen open(Flight flight, World world) {
    Form form = DebriefForm.of(flight, world);
    RecordForm.Sheet sheet = new RecordForm.Sheet(Kind.FLIGHT, "debrief", form.fields());
    Draft draft = Draft.of(Kind.FLIGHT, flight.id(), flight.facts(), world);
    return new DebriefScreen(flight, new RecordForm(sheet, form, draft, false));
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      boolean last = record.form().at() == record.form().fields().size() - 1;
      if (KEEP.has(pressed.key()) || (pressed.key().equals(Key.ENTER) && last)) {
        return kept(record.form().accepted());
      }
    }
    if (event instanceof Event.Pressed pressed && FIND.has(pressed.key()) && lost()) {
      return sent(world).open(SightShelf.of(flight.id(), world));
    }
    if (event instanceof Event.Pressed pressed && TRACE.has(pressed.key())) {
      return sent(world).open(TraceScreen.asking(flight, world));
    }
    if (event instanceof Event.Uncovered && record.draft().allKept()) {
      return Step.stay(withTrace(world));
    }
    return told(record.on(event, world), world);
  }

  /** Opened anew where a trace was taken meanwhile; all that was typed is in the log. */
  private DebriefScreen withTrace(World world) {
    return world
        .log()
        .flight(flight.id())
        .filter(now -> !now.facts().get(Flight.TRACE).equals(flight.facts().get(Flight.TRACE)))
        .map(now -> open(now, world))
        .orElse(this);
  }

  /** The field is left by that: what is picked in it goes out now. */
  private Step sent(World world) {
    return told(record.keeping(record.form().accepted()), world);
  }

  private Step told(Step step, World world) {
    return new Step(
        step.self().map(screen -> new DebriefScreen(flight, fitted((RecordForm) screen, world))),
        step.over(),
        step.effects());
  }

  /** Told so, or picked in the list and not left yet. */
  private boolean lost() {
    return record
        .form()
        .accepted()
        .facts()
        .get(Flight.LANDED_ON)
        .filter(OutcomeTable.LOST::equals)
        .isPresent();
  }

  /** With the fields that what was typed asks for. */
  private RecordForm fitted(RecordForm now, World world) {
    Form form = DebriefForm.fitted(record.form(), now.form(), flight, world);
    RecordForm.Sheet sheet = new RecordForm.Sheet(Kind.FLIGHT, "debrief", form.fields());
    return new RecordForm(sheet, form, now.draft(), now.leaving());
  }

  /** The whole outcome, filled in or typed, the flight flown, and the fix: one act. */
  private Step kept(Form form) {
    List<Action.Change> fixes = fixes(form.facts());
    Form rest =
        fixes.isEmpty()
            ? form
            : form.set(Flight.TO_MEND.name(), "").set(Flight.TO_MEND_SEVERITY.name(), "");
    Facts outcome =
        record.draft().sent().with(rest.facts()).with(Flight.STATUS, Flight.Status.FLOWN);
    Draft.Kept kept = record.draft().keep("keep debrief", outcome, fixes);
    boolean nothingUnderWay = kept.effects().isEmpty() && kept.draft().allKept();
    RecordForm leaving = new RecordForm(record.sheet(), rest, kept.draft(), true);
    return nothingUnderWay
        ? Step.close()
        : Step.stay(new DebriefScreen(flight, leaving)).and(kept.effects());
  }

  /** What is to be mended, as records of their own; nothing where no rocket is named. */
  private List<Action.Change> fixes(Facts facts) {
    return flight.rocket().stream()
        .flatMap(rocket -> ToMend.in(facts).stream().map(each -> each.fix(rocket, flight.id())))
        .toList();
  }

  @Override
  public void draw(Canvas canvas, World world) {
    Size size = canvas.size();
    Facts now = flight.facts().with(record.form().facts());
    line(canvas, 1, FlightText.predicted(flight, world), size.columns() - 2 * LEFT);
    Comparison.line(FlightText.compared(now, world), size.columns() - 2 * LEFT)
        .ifPresent(told -> line(canvas, 2, told, size.columns() - 2 * LEFT));
    record.drawFrom(3, canvas, world);
    ToMend.told(now)
        .ifPresent(told -> line(canvas, size.rows() - 2, told, size.columns() - STATE_WIDTH));
  }

  private static void line(Canvas canvas, int row, String text, int width) {
    canvas.put(LEFT, row, Paragraph.cut(text, width), Style.PLAIN);
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.DEBRIEF, flight.id()).in(record.form()));
  }

  @Override
  public Screen at(Bookmark mark) {
    return new DebriefScreen(flight, record.at(mark));
  }

  @Override
  public String title(World world) {
    return "Debrief: " + FlightText.name(flight, world);
  }

  @Override
  public String purpose() {
    return "What came of the flight, while it is remembered: outcome, altitude, condition, "
        + "what to mend. Fields may stay empty.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_FORMS;
  }

  @Override
  public List<Binding> bindings() {
    return table(lost());
  }

  static List<Binding> table(boolean lost) {
    List<Binding> table = new ArrayList<>(lost ? List.of(KEEP, FIND, NEXT) : List.of(KEEP, NEXT));
    table.addAll(FormKeys.TABLE.subList(1, FormKeys.TABLE.size()));
    table.add(LEAVE);
    table.add(TRACE);
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
