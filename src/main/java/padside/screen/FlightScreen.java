package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.report.PageKind;

/**
 * Everything kept about one flight: its card, the check as it stood, prediction beside measurement,
 * outcome.
 *
 * @param first the first line shown
 */
record FlightScreen(RecordId id, int first) implements Screen {
  private static final int LABEL_COLUMN = 2;
  private static final int TEXT_COLUMN = 16;
  private static final int PAGE = 10;

  private static final Binding DEBRIEF =
      Binding.of(
          "d<enter>",
          "debrief",
          "tell what came of the flight, or correct it; the card while it has not flown");
  private static final Binding CARD = Binding.of("c", "card", "the card in its form");
  private static final Binding SIGHTS = Binding.of("i", "sights", SightShelf.MEANING);
  private static final Binding HISTORY = Binding.of("h", "history", HistoryScreen.OPEN.meaning());
  private static final Binding REPORT =
      Binding.of(
          "v", "report", "a page about its motor, for who made or tested it, where it failed");
  private static final Binding BACK = Binding.of("<esc>", "back", "back to the screen before");
  private static final Binding DOWN = Binding.of("<down><pagedown>", "", "further down");
  private static final Binding UP = Binding.of("<up><pageup><home>", "", "further up");

  static FlightScreen of(RecordId id) {
    return new FlightScreen(id, 0);
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(this);
    }
    Key key = pressed.key();
    if (BACK.has(key)) {
      return Step.close();
    }
    if (DEBRIEF.has(key)) {
      return opening(world, flight -> DayScreen.inside(flight, world));
    }
    if (CARD.has(key)) {
      return opening(world, flight -> CardScreen.open(flight, world));
    }
    if (SIGHTS.has(key)) {
      return opening(world, flight -> SightShelf.of(flight.id(), world));
    }
    if (TraceScreen.OPEN.has(key)) {
      return opening(world, flight -> TraceScreen.of(flight, world));
    }
    if (HISTORY.has(key)) {
      return opening(world, flight -> history(flight, world));
    }
    if (REPORT.has(key)) {
      return opening(world, flight -> PageScreen.of(PageKind.FAILURE, flight.id().text(), world));
    }
    if (ConflictScreen.OPEN.has(key)) {
      return Step.stay(this).open(ConflictScreen.of(id, world));
    }
    return Step.stay(new FlightScreen(id, Math.max(0, scrolled(key, world))));
  }

  static Screen history(Flight flight, World world) {
    String name = FlightText.date(flight, world) + " " + FlightText.name(flight, world);
    return HistoryScreen.of(new HistoryScreen.Subject(Kind.FLIGHT, flight.id(), name), world);
  }

  private Step opening(World world, Function<Flight, Screen> screen) {
    return flight(world)
        .map(flight -> Step.stay(this).open(screen.apply(flight)))
        .orElse(Step.stay(this));
  }

  private int scrolled(Key key, World world) {
    int last = flight(world).map(flight -> FlightFacts.of(flight, world).size() - 1).orElse(0);
    return switch (key.name()) {
      case "<down>" -> Math.min(last, first + 1);
      case "<pagedown>" -> Math.min(last, first + PAGE);
      case "<up>" -> first - 1;
      case "<pageup>" -> first - PAGE;
      case "<home>" -> 0;
      default -> first;
    };
  }

  private Optional<Flight> flight(World world) {
    return world.log().flight(id);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    List<FlightFacts.Fact> facts =
        flight(world).map(flight -> FlightFacts.of(flight, world)).orElse(List.of());
    int width = canvas.size().columns() - TEXT_COLUMN - 2;
    int row = 2;
    int end = canvas.size().rows() - 2;
    for (FlightFacts.Fact fact : facts.subList(Math.min(first, facts.size()), facts.size())) {
      List<String> lines = new ArrayList<>(Paragraph.lines(fact.text(), width));
      if (row < end) {
        canvas.put(LABEL_COLUMN, row, fact.label(), fact.heading() ? Style.STRONG : Style.LABEL);
      }
      for (String line : lines) {
        if (row < end) {
          canvas.put(TEXT_COLUMN, row, line, Style.PLAIN);
        }
        row++;
      }
    }
    if (row > end) {
      canvas.put(LABEL_COLUMN, end, Line.more("Down"));
    }
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.FLIGHT, id).at("" + first));
  }

  @Override
  public Screen at(Bookmark mark) {
    boolean line = mark.at().filter(text -> text.matches("[0-9]{1,4}")).isPresent();
    return line ? new FlightScreen(id, Integer.parseInt(mark.at().orElseThrow())) : this;
  }

  @Override
  public String title(World world) {
    return flight(world)
        .map(flight -> FlightText.date(flight, world) + " " + FlightText.name(flight, world))
        .orElse("A removed flight");
  }

  @Override
  public String purpose() {
    return "All that the log has of one flight, and the keys to go on with any part of it.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(
        DEBRIEF,
        CARD,
        SIGHTS,
        HISTORY,
        BACK,
        TraceScreen.OPEN,
        REPORT,
        ConflictScreen.OPEN,
        DOWN,
        UP);
  }
}
