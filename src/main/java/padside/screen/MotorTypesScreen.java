package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.motor.MotorType;
import padside.units.Notations;

/** The motor types known, each with where its numbers come from; the flier's own among them. */
record MotorTypesScreen() implements Shelf {
  private static final String OF_TABLE = "table.";

  static RecordList open(World world) {
    return RecordList.of(new MotorTypesScreen(), world);
  }

  @Override
  public Kind kind() {
    return Kind.MOTOR;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.TYPES);
  }

  @Override
  public String title(World world) {
    return "Motor types";
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Type"),
        ListPane.Heading.ofNumbers("Case"),
        ListPane.Heading.of("Delays"),
        ListPane.Heading.ofNumbers("Impulse"),
        ListPane.Heading.ofNumbers("Burn"),
        ListPane.Heading.of("Where the numbers come from").orBriefly("Source"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    return world.log().motors().types().stream().map(MotorTypesScreen::item).toList();
  }

  private static ListPane.Item item(MotorType type) {
    return new ListPane.Item(
        type.id(),
        List.of(
            type.designation(),
            type.diameter().map(FleetScreen::millimetres).orElse("?"),
            type.delays().isEmpty() ? "not sold" : String.join(";", type.delays()),
            type.totalImpulse().map(Notations.impulse()::show).orElse("?"),
            type.burnTime().map(Notations.timeSpan()::show).orElse("?"),
            (isOwn(type.id()) ? "your own: " : "") + type.provenance()));
  }

  private static boolean isOwn(RecordId id) {
    return !id.text().startsWith(OF_TABLE);
  }

  @Override
  public String purpose() {
    return "The motor types known, each with where its numbers come from. One that is "
        + "missing can be added by hand.";
  }

  @Override
  public String empty() {
    return "No motor types. n adds one.";
  }

  /** A type of the table opens as the start of the flier's own, which then stands before it. */
  @Override
  public Screen open(RecordId id, World world) {
    Facts facts =
        world.log().motors().types().stream()
            .filter(type -> type.id().equals(id))
            .findFirst()
            .map(MotorType::facts)
            .orElse(Facts.none());
    RecordForm.Sheet sheet = MotorFields.sheet(world);
    return isOwn(id)
        ? RecordForm.of(sheet, id, facts, world)
        : RecordForm.ofNew(sheet, started(facts), world);
  }

  /** What the flier changes no longer comes from where the table says. */
  private static Facts started(Facts facts) {
    String from = facts.get(MotorType.PROVENANCE).orElse("no source");
    return facts.with(MotorType.PROVENANCE, "changed from the table's: " + from);
  }

  @Override
  public Optional<Screen> create(World world) {
    return Optional.of(RecordForm.ofNew(MotorFields.sheet(world), Facts.none(), world));
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return isOwn(id)
        ? Optional.of(
            new Removal(
                "Remove your own motor type? What the motor table says counts again.",
                Action.remove("remove motor type", Kind.MOTOR, id)))
        : Optional.empty();
  }

  @Override
  public List<Binding> ownBindings() {
    return List.of(
        RecordList.toAdd("a motor type; Enter on one of the table starts your own from it"),
        RecordList.toRemove("a type of your own"));
  }
}
