package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.units.Notations;

/** Every flight, the newest first. */
record LogScreen() implements Shelf {
  private static final Binding DETAILS =
      Binding.of("v", "view", "everything kept about the flight, whatever its state");

  static RecordList open(World world) {
    return RecordList.of(new LogScreen(), world);
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
        ListPane.Heading.of("Date"),
        ListPane.Heading.of("Rocket"),
        ListPane.Heading.of("Motor"),
        ListPane.Heading.of("Check"),
        ListPane.Heading.ofNumbers("Altitude"),
        ListPane.Heading.of("Outcome"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    return world.log().flights().stream().map(flight -> item(flight, world)).toList();
  }

  private static ListPane.Item item(Flight flight, World world) {
    return new ListPane.Item(
        flight.id(),
        List.of(
            FlightText.date(flight, world),
            FlightText.rocket(flight, world),
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
