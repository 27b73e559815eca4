package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.RecoveryDevice;
import padside.units.Notations;

/** The parachutes and streamers in the range box. */
record DeviceShelf() implements Shelf {
  @Override
  public Kind kind() {
    return Kind.DEVICE;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.RECOVERY);
  }

  @Override
  public String title(World world) {
    return RangeBoxScreen.title();
  }

  @Override
  public String banner(World world) {
    return RangeBoxScreen.banner(RangeBoxScreen.Group.RECOVERY);
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Name"),
        ListPane.Heading.of("Shape"),
        ListPane.Heading.ofNumbers("Size"),
        ListPane.Heading.ofNumbers("Drag coeff.").orBriefly("Cd"),
        ListPane.Heading.ofNumbers("Flown"),
        ListPane.Heading.of("Last").spare(),
        ListPane.Heading.of("Note"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    return world.log().devices().stream().map(device -> item(device, world)).toList();
  }

  private static ListPane.Item item(RecoveryDevice device, World world) {
    Logbook.Used used = world.log().used(device.id());
    return new ListPane.Item(
        device.id(),
        List.of(
            device.name(),
            device.shape().map(RecoveryDevice.Shape::code).orElse("?"),
            RocketFields.size(device, world.settings().units()),
            device.dragCoefficient().map(Notations.number()::show).orElse(""),
            StockWords.times(used),
            StockWords.last(used),
            device.facts().get(RecoveryDevice.NOTE).orElse("")));
  }

  @Override
  public String purpose() {
    return "The parachutes and streamers in the range box. Their size and what they were "
        + "measured to fall at decide drift.";
  }

  @Override
  public String empty() {
    return "No parachutes or streamers yet. n adds one.";
  }

  @Override
  public Screen open(RecordId id, World world) {
    Facts facts = world.log().device(id).map(RecoveryDevice::facts).orElse(Facts.none());
    return RecordForm.of(RangeBoxFields.device(world), id, facts, world);
  }

  @Override
  public Optional<Screen> create(World world) {
    return Optional.of(RecordForm.ofNew(RangeBoxFields.device(world), Facts.none(), world));
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return world
        .log()
        .device(id)
        .map(
            device ->
                new Removal(
                    "Remove " + device.name() + "? Flights under it stay in the log.",
                    Action.remove("remove recovery device", Kind.DEVICE, id)));
  }

  @Override
  public List<Binding> ownBindings() {
    List<Binding> table = new ArrayList<>();
    table.add(RecordList.toAdd("a parachute or streamer"));
    table.addAll(RangeBoxScreen.BINDINGS);
    table.add(RecordList.toRemove("the device"));
    return List.copyOf(table);
  }

  @Override
  public Optional<Step> press(Key key, RecordList list, World world) {
    return RangeBoxScreen.press(key, RangeBoxScreen.Group.RECOVERY, list, world);
  }
}
