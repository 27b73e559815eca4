package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.form.FilePaths;
import padside.form.Form;
import padside.form.FormField;
import padside.insight.Traced;
import padside.trace.KeptTrace;

/**
 * The altimeter's line of one flight: the one kept, drawn; or a file asked for, read, shown beside
 * what the flight says, and taken.
 *
 * @param asking the path being typed
 * @param read what the file holds, once it was read
 * @param told what is under way or went wrong
 * @param serial of the last effect
 */
record TraceScreen(
    RecordId id, Optional<Form> asking, Optional<Event.TraceRead> read, String told, Ticket serial)
    implements Screen {
  static final Binding OPEN =
      Binding.of("t", "trace", "the altimeter's line; from its file, where none is kept yet");

  private static final Binding GO = Binding.of("<enter>", "read", "read the file");
  private static final Binding NOT = Binding.of("<esc>", "back", "back without a file");
  private static final Binding TAKE =
      Binding.of(
          "<enter>", "take", "put what was found into the flight; what you typed yourself stays");
  private static final Binding OVER =
      Binding.of("o", "take all", "the same, in place of what you typed too");
  private static final Binding PART =
      Binding.of("n", "next flight", "the next flight of a file that holds several");
  private static final Binding FILE = Binding.of("f", "file", "another file");
  private static final Binding BACK = Binding.of("<esc>q", "back", "back to the flight");

  private static final Column<String> PATH = Column.text("path", "an altimeter's file");
  private static final int LEFT = 2;
  private static final int LEAST_CHART = 7;

  static TraceScreen of(Flight flight, World world) {
    Ticket start = new Ticket(world.turn(), 0);
    boolean kept = flight.facts().get(Flight.TRACE).flatMap(KeptTrace::read).isPresent();
    Optional<Form> form = kept ? Optional.empty() : Optional.of(form(List.of(), ""));
    return new TraceScreen(flight.id(), form, Optional.empty(), "", start);
  }

  /** Asks for a file whatever is kept. */
  static TraceScreen asking(Flight flight, World world) {
    return of(flight, world).with(Optional.of(form(List.of(), "")), Optional.empty(), "");
  }

  private static Form form(List<String> listed, String typed) {
    FormField<String> path =
        FormField.of(
            PATH,
            "File",
            new FilePaths(listed),
            "The altimeter's CSV; Down picks of the newest, a folder with / behind lists it.");
    Form form = Form.of(List.of(path), Facts.none());
    return typed.isEmpty() ? form : form.type(typed);
  }

  private TraceScreen with(Optional<Form> form, Optional<Event.TraceRead> seen, String line) {
    return new TraceScreen(id, form, seen, line, serial);
  }

  private Ticket next() {
    return new Ticket(serial.screen(), serial.serial() + 1);
  }

  private TraceScreen sent(String line) {
    return new TraceScreen(id, asking, read, line, next());
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return asking.isPresent()
          ? typed(asking.get(), pressed.key(), world)
          : pressed(pressed.key(), world);
    }
    if (event instanceof Event.Opened && asking.isPresent()) {
      return listing("");
    }
    return heard(event);
  }

  private Step heard(Event event) {
    if (event instanceof Event.TracesListed list && list.ticket().equals(serial)) {
      String typed = asking.map(form -> form.entry().typed()).orElse("");
      return Step.stay(with(asking.map(any -> form(list.paths(), typed)), read, told));
    }
    if (event instanceof Event.TraceRead seen && seen.ticket().equals(serial)) {
      return Step.stay(with(Optional.empty(), Optional.of(seen), ""));
    }
    if (event instanceof Event.NotRead failed && failed.ticket().equals(serial)) {
      String said = failed.fault().sentence() + " " + failed.fault().nextStep();
      return Step.stay(with(asking, read, said.strip()));
    }
    if (event instanceof Event.NotSaved failed && failed.ticket().equals(serial)) {
      return Step.stay(with(asking, read, failed.fault().sentence()));
    }
    boolean saved = event instanceof Event.Saved kept && kept.ticket().equals(serial);
    return saved ? Step.close() : Step.stay(this);
  }

  private Step listing(String folder) {
    TraceScreen waits = sent(told);
    return Step.stay(waits).and(new Effect.ListTraces(waits.serial, folder));
  }

  private Step typed(Form form, Key key, World world) {
    if (NOT.has(key)) {
      boolean below = read.isPresent() || kept(world).isPresent();
      return below ? Step.stay(with(Optional.empty(), read, "")) : Step.close();
    }
    if (GO.has(key)) {
      String path = form.accepted().entry().typed().strip();
      return path.isEmpty() || path.endsWith("/")
          ? with(Optional.of(form.accepted()), read, told).listing(path)
          : with(Optional.of(form.accepted()), read, told).reading(path, 0, world);
    }
    Optional<Form> next = FormKeys.press(form, key).or(() -> asking);
    TraceScreen now = with(next, read, "");
    String text = next.map(each -> each.entry().typed()).orElse("");
    boolean folder = text.endsWith("/") && !text.equals(form.entry().typed());
    return folder ? now.listing(text) : Step.stay(now);
  }

  private Step reading(String path, int part, World world) {
    TraceScreen waits = sent("Reading …");
    return flight(world)
        .map(
            flight ->
                Step.stay(waits)
                    .and(
                        new Effect.ReadTrace(
                            waits.serial,
                            path,
                            part,
                            Traced.air(flight, world.log()),
                            world.settings().units())))
        .orElseGet(Step::close);
  }

  private Step pressed(Key key, World world) {
    if (BACK.has(key)) {
      return Step.close();
    }
    if (FILE.has(key)) {
      return with(Optional.of(form(List.of(), "")), read, "").listing("");
    }
    if (read.isPresent() && PART.has(key)) {
      Event.TraceRead seen = read.get();
      return reading(seen.path(), seen.part() % seen.of() + 1, world);
    }
    if (read.isPresent() && (TAKE.has(key) || OVER.has(key))) {
      return flight(world).map(flight -> taken(flight, OVER.has(key), world)).orElse(Step.close());
    }
    return Step.stay(this);
  }

  private Step taken(Flight flight, boolean all, World world) {
    Traced traced = traced(flight, world);
    Set<String> over =
        all ? traced.standing().stream().map(Column::name).collect(Collectors.toSet()) : Set.of();
    Facts changed = traced.taken(over).changedSince(flight.facts());
    if (changed.isEmpty()) {
      return Step.close();
    }
    TraceScreen waits = sent("Keeping …");
    return Step.stay(waits)
        .and(new Effect.Save(waits.serial, Action.change("take trace", Kind.FLIGHT, id, changed)));
  }

  private Traced traced(Flight flight, World world) {
    return Traced.of(read.orElseThrow().finding(), flight.facts(), world.log().motors());
  }

  private Optional<Flight> flight(World world) {
    return world.log().flight(id);
  }

  private Optional<KeptTrace> kept(World world) {
    return flight(world)
        .flatMap(flight -> flight.facts().get(Flight.TRACE))
        .flatMap(KeptTrace::read);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    Size size = canvas.size();
    int row = told.isEmpty() ? 2 : Paragraph.draw(canvas, 1, told, Style.STRONG) + 1;
    if (asking.isPresent()) {
      int rows = size.rows() - row - 3;
      FormPane.draw(canvas, asking.get(), new FormPane.Area(1, row, size.columns() - 3, rows));
      return;
    }
    if (read.isPresent()) {
      drawRead(canvas, row - 1, world);
      return;
    }
    kept(world).ifPresent(trace -> drawKept(canvas, row - 1, trace, world));
  }

  private void drawKept(Canvas canvas, int top, KeptTrace trace, World world) {
    Size size = canvas.size();
    String words =
        new TraceNotation(world.settings().units()).show(trace.text()) + " · " + trace.name();
    canvas.put(LEFT, top, Paragraph.cut(words, size.columns() - 2 * LEFT), Style.PLAIN);
    FormPane.Area area = new FormPane.Area(1, top + 1, size.columns() - 2, size.rows() - top - 2);
    TraceChart.draw(canvas, area, trace, world);
  }

  private void drawRead(Canvas canvas, int top, World world) {
    Size size = canvas.size();
    int width = size.columns() - 2 * LEFT;
    int end = size.rows() - 1;
    int row = top;
    for (Line line : lines(width, world)) {
      if (row < end - LEAST_CHART) {
        canvas.put(LEFT, row++, line.text(), line.style());
      }
    }
    FormPane.Area area = new FormPane.Area(1, row, size.columns() - 2, end - row);
    TraceChart.draw(canvas, area, read.orElseThrow().finding().kept(), world);
  }

  /** What was found beside what the flight says, then what is to be known of it. */
  private List<Line> lines(int width, World world) {
    Event.TraceRead seen = read.orElseThrow();
    List<Line> lines = new ArrayList<>();
    if (seen.of() > 1) {
      lines.add(Line.strong("Flight " + seen.part() + " of " + seen.of() + " in the file."));
    }
    flight(world)
        .ifPresent(
            flight ->
                TraceWords.rows(seen.finding(), traced(flight, world), world.settings().units())
                    .forEach(row -> lines.add(Line.plain(Paragraph.cut(row.line(), width)))));
    for (String remark : TraceWords.remarks(seen.finding(), world.settings().units())) {
      Paragraph.lines(remark, width).forEach(text -> lines.add(new Line(text, Style.LABEL)));
    }
    return lines;
  }

  /** With the path typed, or that of the file on show, which is asked for again. */
  @Override
  public Optional<Bookmark> bookmark() {
    Bookmark mark = Bookmark.of(Bookmarks.TRACE, id);
    return asking
        .map(form -> mark.in(form).withText(form.entry().typed()))
        .or(() -> read.map(seen -> mark.at(PATH.name()).withText(seen.path())))
        .or(() -> Optional.of(mark));
  }

  @Override
  public Screen at(Bookmark mark) {
    return mark.at().isPresent()
        ? with(Optional.of(mark.resumed(form(List.of(), mark.text()))), Optional.empty(), "")
        : this;
  }

  @Override
  public String title(World world) {
    return flight(world).map(flight -> "Trace · " + FlightText.name(flight, world)).orElse("Trace");
  }

  @Override
  public String purpose() {
    return "Takes an altimeter's file into the flight: apogee, ejection and descent as it "
        + "measured them, shown before they are kept.";
  }

  @Override
  public List<Binding> bindings() {
    if (asking.isPresent()) {
      return List.of(GO, NOT, FormKeys.CLEAR);
    }
    if (read.isPresent()) {
      List<Binding> table = new ArrayList<>(List.of(TAKE, OVER));
      if (read.get().of() > 1) {
        table.add(PART);
      }
      table.addAll(List.of(FILE, BACK));
      return List.copyOf(table);
    }
    return List.of(FILE, BACK);
  }

  /** What Enter has read Enter would take. */
  @Override
  public boolean questions() {
    return asking.isEmpty() && read.isPresent();
  }

  @Override
  public boolean takesText() {
    return asking.isPresent();
  }
}
