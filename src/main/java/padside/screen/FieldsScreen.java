package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Field;
import padside.flight.Kind;
import padside.form.Coordinate;
import padside.form.EdgesNotation;
import padside.form.FormField;
import padside.form.HazardsNotation;
import padside.form.Texts;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** The places to fly, with their edges as paced from the pad. */
record FieldsScreen() implements Shelf {
  static RecordList open(World world) {
    return RecordList.of(new FieldsScreen(), world);
  }

  @Override
  public Kind kind() {
    return Kind.FIELD;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.FIELDS);
  }

  @Override
  public String title(World world) {
    return "Fields";
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Field"),
        ListPane.Heading.ofNumbers("Elevation"),
        ListPane.Heading.ofNumbers("Smallest side").spare(),
        ListPane.Heading.of("Edges"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    UnitSystem units = world.settings().units();
    return world.log().fields().stream()
        .map(
            field ->
                new ListPane.Item(
                    field.id(),
                    List.of(
                        field.name(),
                        field.elevation().map(Notations.altitude(units)::show).orElse(""),
                        field.smallestSide().map(Notations.distance(units)::show).orElse(""),
                        edges(field, units))))
        .toList();
  }

  private static String edges(Field field, UnitSystem units) {
    return field.edges().isEmpty()
        ? field.facts().typed(Field.EDGES).map(text -> "cannot be read").orElse("none paced")
        : new EdgesNotation(units).show(field.edges());
  }

  @Override
  public String purpose() {
    return "The places to fly. The edges as paced from the pad are what the check holds the "
        + "landings against.";
  }

  @Override
  public String empty() {
    return "No fields yet. n adds one: without edges the check cannot tell whether a landing stays"
        + " inside.";
  }

  @Override
  public Screen open(RecordId id, World world) {
    Facts facts = world.log().field(id).map(Field::facts).orElse(Facts.none());
    return RecordForm.of(sheet(world), id, facts, world);
  }

  @Override
  public Optional<Screen> create(World world) {
    return Optional.of(RecordForm.ofNew(sheet(world), Facts.none(), world));
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return world
        .log()
        .field(id)
        .map(
            field ->
                new Removal(
                    "Remove " + field.name() + "? Its days and flights stay in the log.",
                    Action.remove("remove field", Kind.FIELD, id)));
  }

  @Override
  public List<Binding> ownBindings() {
    return List.of(RecordList.toAdd("a field"), RecordList.toRemove("the field"));
  }

  static RecordForm.Sheet sheet(World world) {
    UnitSystem units = world.settings().units();
    return new RecordForm.Sheet(
        Kind.FIELD,
        "field",
        List.of(
            FormField.of(Field.NAME, "Name", new Texts("North pasture"), "What you call it."),
            elevation(units),
            edges(units),
            hazards(units),
            smallestSide(units),
            FormField.of(
                Field.LATITUDE, "Latitude", Coordinate.LATITUDE, "Decimal degrees, south is -."),
            FormField.of(
                Field.LONGITUDE, "Longitude", Coordinate.LONGITUDE, "Decimal degrees, west is -."),
            FormField.of(
                Field.NOTE, "Note", new Texts(""), "Permission, access, anything worth knowing.")));
  }

  /** Nobody flies below the shore of the Dead Sea, about 430 m under the sea (from memory). */
  private static FormField<Length> elevation(UnitSystem units) {
    UnitNotation<Length> notation = Notations.altitude(units);
    return FormField.of(
            Field.ELEVATION,
            "Elevation",
            notation,
            "Above sea level, where the air is thinner: like " + notation.example() + ".")
        .doubtingOutside(Length::metres, new Length(-430), new Length(4500));
  }

  private static FormField<List<Field.Edge>> edges(UnitSystem units) {
    EdgesNotation notation = new EdgesNotation(units);
    return FormField.of(
        Field.EDGES,
        "Edges",
        notation,
        "From the pad, divided by ; and > before what lies beyond: " + notation.example());
  }

  private static FormField<List<Field.Hazard>> hazards(UnitSystem units) {
    HazardsNotation notation = new HazardsNotation(units);
    return FormField.of(
            Field.HAZARDS,
            "Hazards",
            notation,
            "Inside the edges: bearing and distance from the pad, radius, what it is: "
                + notation.example())
        .doubting(FieldsScreen::withoutRadius);
  }

  private static Optional<String> withoutRadius(List<Field.Hazard> hazards) {
    return hazards.stream().allMatch(hazard -> hazard.radius().metres() > 0)
        ? Optional.empty()
        : Optional.of(
            "A hazard has no radius, so nothing counts as landing in it; give how far to keep"
                + " clear of its middle.");
  }

  private static FormField<Length> smallestSide(UnitSystem units) {
    UnitNotation<Length> notation = Notations.distance(units);
    return FormField.of(
            Field.SMALLEST_SIDE,
            "Smallest side",
            notation,
            "Smallest side or diameter when measured; blank takes it from the edges.")
        .doubtingOutside(Length::metres, new Length(10), new Length(5000));
  }
}
