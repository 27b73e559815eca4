package padside.screen;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Rocket;
import padside.search.Search;
import padside.units.Notations;
import padside.units.Reading;

/**
 * Every flight, the newest first; of a large log the newest, and those of all that are found.
 *
 * @param asked how often the log was asked: answers to earlier questions are passed over
 * @param search what is looked for, as far as it can be read
 * @param objection why what is typed cannot be read
 * @param found the answer to the newest question that has one
 */
record LogScreen(long asked, Search search, Optional<String> objection, Optional<Found> found)
    implements Shelf {
  private static final Binding DETAILS =
      Binding.of("v", "view", "everything kept about the flight, whatever its state");

  private static final Binding FIND =
      Binding.of(
          "/<f3>",
          "find",
          "type words, anywhere in what is told of a flight, or rocket: motor: lot: field: outcome:"
              + " on: from: to: with a part of it, or open for open fixes; all flights of the log are"
              + " looked through; Esc shows all again");

  private static final String FINDABLE = "words, " + Search.Part.list() + " " + Search.OPEN;

  /** As many as anybody goes through; further words bring up older ones. */
  private static final int MOST = 100;

  /**
   * What was found.
   *
   * @param answered the question
   * @param flights the newest
   * @param count of all
   * @param whole whether all flights were looked through
   */
  record Found(long answered, List<RecordId> flights, int count, boolean whole) {
    Found {
      flights = List.copyOf(flights);
    }
  }

  static RecordList open(World world) {
    return RecordList.of(new LogScreen(0, Search.ALL, Optional.empty(), Optional.empty()), world);
  }

  @Override
  public Binding find() {
    return FIND;
  }

  @Override
  public String findable() {
    return FINDABLE;
  }

  @Override
  public Optional<Asking> asking(String typed, long screen) {
    Reading<Search> read = Search.read(typed);
    long serial = asked + 1;
    if (read.objection().isPresent()) {
      return Optional.of(
          new Asking(new LogScreen(serial, search, read.objection(), found), Optional.empty()));
    }
    Search wanted = read.value().orElseThrow();
    LogScreen next =
        new LogScreen(serial, wanted, Optional.empty(), found.filter(any -> !wanted.isAll()));
    Effect question = new Effect.FindFlights(new Ticket(screen, serial), wanted, MOST);
    return Optional.of(new Asking(next, Optional.of(question).filter(any -> !wanted.isAll())));
  }

  @Override
  public Shelf told(Event.FlightsFound answer) {
    boolean late = answer.ticket().serial() != asked || search.isAll();
    return late
        ? this
        : new LogScreen(
            asked,
            search,
            objection,
            Optional.of(new Found(asked, answer.flights(), answer.count(), answer.whole())));
  }

  /** Whether the lines are the answer to what is typed now. */
  private boolean isAnswered() {
    return found.filter(answer -> answer.answered() == asked).isPresent();
  }

  @Override
  public Optional<String> count(World world) {
    if (!search.isAll()) {
      return Optional.of(
          isAnswered() || objection.isPresent()
              ? found.map(LogScreen::found).orElse("")
              : "looking ...");
    }
    return Optional.of("the newest " + world.log().flights().size())
        .filter(any -> world.log().isLarge());
  }

  private static String found(Found found) {
    int count = found.count();
    return (count > MOST ? "the newest " + MOST + " of " + count : count + " found")
        + (found.whole() ? "" : " so far");
  }

  /** The filters in words. */
  @Override
  public String banner(World world) {
    return search.filtersTold();
  }

  @Override
  public List<String> told(World world) {
    return objection.stream().toList();
  }

  @Override
  public String nothingFound(String typed) {
    return found.filter(answer -> isAnswered() && answer.whole()).isPresent()
        ? "No flight has all of that. Esc shows all."
        : "";
  }

  @Override
  public Kind kind() {
    return Kind.FLIGHT;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.LOG);
  }

  @Override
  public String title(World world) {
    return "Log";
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Date").whole(),
        ListPane.Heading.of("Rocket"),
        ListPane.Heading.of("Motor").whole(),
        ListPane.Heading.of("Check").spare(),
        ListPane.Heading.ofNumbers("Altitude").orBriefly("Alt."),
        ListPane.Heading.of("Outcome"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    Named named = Named.in(world.log());
    Stream<Flight> lines =
        search.isAll()
            ? world.log().flights().stream()
            : found.map(Found::flights).orElse(List.of()).stream()
                .flatMap(id -> Optional.ofNullable(named.flights.get(id)).stream());
    return lines.map(flight -> item(flight, named, world)).toList();
  }

  /**
   * What lines name, by its id: to look for it among thousands of days, line by line and key by
   * key, would keep the keys waiting.
   */
  private record Named(
      Map<RecordId, Flight> flights, Map<RecordId, Rocket> rockets, Map<RecordId, Day> days) {
    static Named in(Logbook log) {
      Named named = new Named(new HashMap<>(), new HashMap<>(), new HashMap<>());
      log.found().forEach(each -> named.flights.put(each.id(), each));
      log.flights().forEach(each -> named.flights.put(each.id(), each));
      log.rockets().forEach(each -> named.rockets.put(each.id(), each));
      log.days().forEach(each -> named.days.put(each.id(), each));
      return named;
    }
  }

  private static ListPane.Item item(Flight flight, Named named, World world) {
    return new ListPane.Item(
        flight.id(),
        List.of(
            FlightText.date(flight.day().map(named.days::get)),
            FlightText.rocket(flight, id -> Optional.ofNullable(named.rockets.get(id))),
            FlightText.motors(flight).orElse("?"),
            FlightText.verdict(flight),
            flight.altitude().map(Notations.altitude(world.settings().units())::show).orElse(""),
            FlightText.outcome(flight, world)));
  }

  @Override
  public String name(ListPane.Item item) {
    return item.cells().get(0) + " · " + item.cells().get(1);
  }

  @Override
  public String purpose() {
    return "Every flight, the newest first. Words, names, dates and filters such as "
        + "malfunction find them in all of the log.";
  }

  @Override
  public String empty() {
    return "No flights yet. A flight begins with its card, on the Day screen.";
  }

  /** A card opens into its form, a flight that waits for it into its debrief. */
  @Override
  public Screen open(RecordId id, World world) {
    return world.log().flight(id).map(flight -> open(flight, world)).orElse(FlightScreen.of(id));
  }

  private static Screen open(Flight flight, World world) {
    return switch (flight.status()) {
      case PLANNED, DRAFT, CARD -> CardScreen.open(flight, world);
      case FLOWN ->
          flight.awaitsDebrief() ? DebriefScreen.open(flight, world) : FlightScreen.of(flight.id());
      case SCRUBBED -> FlightScreen.of(flight.id());
    };
  }

  @Override
  public List<Binding> ownBindings() {
    return List.of(DETAILS, ForetoldScreen.OPEN);
  }

  @Override
  public Optional<Step> press(Key key, RecordList list, World world) {
    if (ForetoldScreen.OPEN.has(key)) {
      return Optional.of(list.opening(ForetoldScreen.open(), world));
    }
    return list.current(world)
        .filter(id -> DETAILS.has(key))
        .map(id -> list.opening(FlightScreen.of(id), world));
  }
}
