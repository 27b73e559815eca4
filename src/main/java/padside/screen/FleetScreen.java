package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.report.PageKind;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitSystem;

/** The rockets, what they last flew on and what is to be mended. */
record FleetScreen() implements Shelf {
  private static final Binding FIXES =
      Binding.of("fm", "fixes", "what is to be mended on the rocket under the cursor");

  private static final Binding PAGE =
      Binding.of("v", "page", "all flights of the rocket under the cursor, on one page");

  static RecordList open(World world) {
    return RecordList.of(new FleetScreen(), world);
  }

  @Override
  public Kind kind() {
    return Kind.ROCKET;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.FLEET);
  }

  @Override
  public String title(World world) {
    return "Fleet";
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Rocket"),
        ListPane.Heading.ofNumbers("Mass"),
        ListPane.Heading.ofNumbers("Tube").spare(),
        ListPane.Heading.ofNumbers("Mount").spare(),
        ListPane.Heading.of("Last on").whole().orBriefly("Last"),
        ListPane.Heading.ofNumbers("Reached").orBriefly("Alt."),
        ListPane.Heading.of("Fixes"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    return world.log().rockets().stream().map(rocket -> item(rocket, world)).toList();
  }

  private static ListPane.Item item(Rocket rocket, World world) {
    UnitSystem units = world.settings().units();
    Optional<Flight> last = lastFlown(rocket, world);
    return new ListPane.Item(
        rocket.id(),
        List.of(
            rocket.name(),
            rocket.mass().map(Notations.mass(units)::show).orElse("?"),
            rocket.diameter().map(Notations.bodyLength(units)::show).orElse("?"),
            rocket.mount().map(FleetScreen::millimetres).orElse("?"),
            last.map(flight -> FlightText.motors(flight).orElse("?")).orElse("not flown"),
            last.flatMap(Flight::altitude).map(Notations.altitude(units)::show).orElse(""),
            fixes(world.log().openFixes(rocket.id()))));
  }

  private static Optional<Flight> lastFlown(Rocket rocket, World world) {
    return world.log().flights().stream()
        .filter(flight -> flight.rocket().equals(Optional.of(rocket.id())))
        .filter(flight -> flight.status() == Flight.Status.FLOWN)
        .findFirst();
  }

  /** Mounts and motors are named by their millimetres everywhere. */
  static String millimetres(Length length) {
    return Notations.bodyLength(UnitSystem.METRIC).show(length);
  }

  private static String fixes(List<Fix> open) {
    if (open.isEmpty()) {
      return "";
    }
    boolean grounded = open.stream().anyMatch(fix -> fix.severity() == Fix.Severity.GROUNDS_IT);
    return open.size() + (grounded ? " grounded" : "");
  }

  @Override
  public String purpose() {
    return "The rockets. Mass, diameter, fins and mount are what the flight model needs; "
        + "whatever is missing it says so on the card.";
  }

  @Override
  public String empty() {
    return "No rockets yet. n adds one.";
  }

  @Override
  public Screen open(RecordId id, World world) {
    Facts facts = world.log().rocket(id).map(Rocket::facts).orElse(Facts.none());
    return RecordForm.of(RocketFields.sheet(id, world), id, facts, world);
  }

  @Override
  public Optional<Screen> create(World world) {
    return Optional.of(RecordForm.ofNew(RocketFields.sheet(world), Facts.none(), world));
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return world
        .log()
        .rocket(id)
        .map(
            rocket ->
                new Removal(
                    "Remove " + rocket.name() + "? Its flights stay in the log.",
                    Action.remove("remove rocket", Kind.ROCKET, id)));
  }

  @Override
  public List<Binding> ownBindings() {
    return List.of(RecordList.toAdd("a rocket"), FIXES, PAGE, RecordList.toRemove("the rocket"));
  }

  @Override
  public Optional<Step> press(Key key, RecordList list, World world) {
    return list.current(world)
        .filter(rocket -> FIXES.has(key) || PAGE.has(key))
        .map(
            rocket ->
                list.opening(
                    PAGE.has(key)
                        ? PageScreen.of(PageKind.ROCKET, rocket.text(), world)
                        : FixShelf.of(rocket, world),
                    world));
  }
}
