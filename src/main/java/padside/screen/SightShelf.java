package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Sighting;
import padside.form.Choices;
import padside.form.FormField;
import padside.form.Texts;
import padside.insight.Sights;
import padside.units.Notations;
import padside.units.UnitSystem;

/** The lines of sight to one flight: where to look for it, and how high it went. */
record SightShelf(RecordId flight) implements Shelf {
  static final String MEANING = "lines of sight: find it, or how high it went";

  private static final Binding ALTITUDE =
      Binding.of("a", "altitude", "put the height sighted into the flight as its altitude");

  static RecordList of(RecordId flight, World world) {
    return RecordList.of(new SightShelf(flight), world);
  }

  static RecordForm.Sheet sheet(World world) {
    return sheet(Optional.empty(), List.of(), world);
  }

  private static RecordForm.Sheet sheet(
      Optional<RecordId> flight, List<Sighting> others, World world) {
    UnitSystem units = world.settings().units();
    return new RecordForm.Sheet(
        Kind.SIGHTING,
        "sighting",
        List.of(
            FormField.choice(
                Sighting.TARGET,
                "Seen",
                targets(),
                "Where it went down, for a search; or its highest point, for an altitude."),
            FormField.of(
                Sighting.BEARING,
                "Toward",
                Notations.bearing(),
                "True bearing of the line of sight: NE or 45."),
            FormField.of(
                Sighting.STATION_DISTANCE,
                "From",
                Notations.distance(units),
                "How far from the pad you stood, like 45 paces; nothing at the pad itself."),
            FormField.of(
                Sighting.STATION_BEARING,
                "Which is",
                Notations.bearing(),
                "Where you stood as seen from the pad: NE or 45."),
            FormField.of(
                Sighting.ELEVATION,
                "Elevation",
                Notations.angle(),
                "Up from the horizon, for an altitude: like 40deg."),
            FormField.of(Sighting.NOTE, "Note", new Texts(""), "Who saw it, and what.")),
        (facts, now) -> flight.flatMap(id -> live(id, others, facts, world)));
  }

  private static Choices<Sighting.Target> targets() {
    return new Choices<>(
        "target",
        List.of(
            new Choices.Option<>(Sighting.Target.LANDING, "where it went down", ""),
            new Choices.Option<>(Sighting.Target.APOGEE, "highest point", "")));
  }

  private static Optional<String> live(
      RecordId flight, List<Sighting> others, Facts typed, World world) {
    Sighting filled = new Sighting(new RecordId("being filled"), typed);
    List<Sighting> same = new ArrayList<>(others);
    same.removeIf(each -> !each.target().equals(filled.target()));
    same.add(filled);
    boolean search = filled.target().equals(Optional.of(Sighting.Target.LANDING));
    Facts expected = search ? facts(flight, world) : Facts.none();
    return Optional.of(String.join(" ", told(expected, same, world)))
        .filter(text -> !text.isEmpty());
  }

  private static Facts facts(RecordId flight, World world) {
    return world.log().flight(flight).map(Flight::facts).orElse(Facts.none());
  }

  @Override
  public Kind kind() {
    return Kind.SIGHTING;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.SIGHTS, flight);
  }

  @Override
  public String title(World world) {
    return "Sights · "
        + world.log().flight(flight).map(each -> FlightText.name(each, world)).orElse("?");
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Seen"),
        ListPane.Heading.of("Toward").whole(),
        ListPane.Heading.of("From").whole(),
        ListPane.Heading.of("Elevation").whole(),
        ListPane.Heading.of("Note"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    return world.log().sightingsOf(flight).stream().map(each -> item(each, world)).toList();
  }

  private static ListPane.Item item(Sighting sighting, World world) {
    Facts facts = sighting.facts();
    String target =
        targets().options().stream()
            .filter(option -> Optional.of(option.value()).equals(sighting.target()))
            .map(Choices.Option::text)
            .findFirst()
            .orElse("?");
    UnitSystem units = world.settings().units();
    String from =
        facts
            .get(Sighting.STATION_DISTANCE)
            .map(
                far ->
                    Notations.distance(units).show(far)
                        + facts
                            .get(Sighting.STATION_BEARING)
                            .map(toward -> " " + Notations.bearing().show(toward))
                            .orElse(""))
            .orElse("the pad");
    return new ListPane.Item(
        sighting.id(),
        List.of(
            target,
            facts.get(Sighting.BEARING).map(Notations.bearing()::show).orElse("?"),
            from,
            facts.get(Sighting.ELEVATION).map(Notations.angle()::show).orElse(""),
            facts.get(Sighting.NOTE).orElse("")));
  }

  @Override
  public List<String> told(World world) {
    return told(facts(flight, world), world.log().sightingsOf(flight), world);
  }

  private static List<String> told(Facts flight, List<Sighting> sightings, World world) {
    Sights sights = Sights.of(sightings, flight, world.settings().confidence());
    List<String> lines = new ArrayList<>();
    sights.search().ifPresent(search -> lines.add(searched(search, world)));
    sights.height().ifPresent(height -> lines.add(high(height, world)));
    lines.addAll(sights.remarks());
    return lines;
  }

  private static String searched(Sights.Search search, World world) {
    UnitSystem units = world.settings().units();
    String by =
        (search.lines() == 0 ? "" : search.lines() == 1 ? "one line" : search.lines() + " lines")
            + (search.lines() > 0 && search.expectation() ? " and " : "")
            + (search.expectation() ? "the predicted landing" : "");
    return "Look "
        + Notations.distance(units).show(search.distance())
        + " from the pad toward "
        + Notations.bearing().show(search.toward())
        + search
            .fromLast()
            .map(
                way ->
                    ", "
                        + Notations.distance(units).show(way.distance())
                        + " toward "
                        + Notations.bearing().show(way.toward())
                        + " from the last spot")
            .orElse("")
        + "; "
        + world.settings().confidence().words()
        + " within "
        + within(search, units)
        + ", by "
        + by
        + ".";
  }

  private static String within(Sights.Search search, UnitSystem units) {
    String far = Notations.distance(units).show(search.longHalf());
    String near = Notations.distance(units).show(search.shortHalf());
    return far.equals(near)
        ? far + " all round"
        : far + " along " + Notations.bearing().show(search.along()) + " and " + near + " across";
  }

  private static String high(Sights.Height height, World world) {
    return "Height "
        + Notations.altitude(world.settings().units()).show(height.above())
        + height
            .closure()
            .map(closure -> ", the stations " + percent(closure) + " apart")
            .orElse("")
        + (height.counts()
            ? "."
            : ": more than the "
                + percent(Sights.Height.LARGEST_CLOSURE)
                + " contests allow (from memory, unconfirmed).");
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  @Override
  public String purpose() {
    return "Lines of sight to one flight, taken from places on the field: where to look for "
        + "it, or how high it went.";
  }

  @Override
  public String empty() {
    return "No line of sight yet. n adds one: where you stood, and where you saw it go down.";
  }

  @Override
  public Screen open(RecordId id, World world) {
    List<Sighting> all = world.log().sightingsOf(flight);
    List<Sighting> others = all.stream().filter(each -> !each.id().equals(id)).toList();
    Facts facts =
        all.stream()
            .filter(each -> each.id().equals(id))
            .map(Sighting::facts)
            .findFirst()
            .orElse(Facts.none());
    return RecordForm.of(sheet(Optional.of(flight), others, world), id, facts, world);
  }

  @Override
  public Optional<Screen> create(World world) {
    Facts given =
        Facts.none().with(Sighting.FLIGHT, flight).with(Sighting.TARGET, Sighting.Target.LANDING);
    List<Sighting> others = world.log().sightingsOf(flight);
    RecordForm form =
        RecordForm.ofNew(sheet(Optional.of(flight), others, world), given, world)
            .at(Sighting.BEARING.name());
    return Optional.of(form);
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return Optional.of(
        new Removal(
            "Remove this line of sight?", Action.remove("remove sighting", Kind.SIGHTING, id)));
  }

  @Override
  public List<Binding> ownBindings() {
    return List.of(
        RecordList.toAdd("a line of sight"), ALTITUDE, RecordList.toRemove("the line of sight"));
  }

  @Override
  public Optional<Step> press(Key key, RecordList list, World world) {
    if (!ALTITUDE.has(key)) {
      return Optional.empty();
    }
    return Sights.of(
            world.log().sightingsOf(flight), facts(flight, world), world.settings().confidence())
        .height()
        .map(
            height ->
                list.saving(
                    Action.change(
                        "altitude by sight",
                        Kind.FLIGHT,
                        flight,
                        Facts.none()
                            .with(Flight.ALTITUDE, height.above())
                            .with(Flight.ALTIMETER.name(), Facts.Cell.emptied()))));
  }
}
