package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Altimeter;
import padside.flight.Kind;
import padside.flight.Logbook;

/** The altimeters in the range box. */
record AltimeterShelf() implements Shelf {
  @Override
  public Kind kind() {
    return Kind.ALTIMETER;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.ALTIMETERS);
  }

  @Override
  public String title(World world) {
    return RangeBoxScreen.title();
  }

  @Override
  public String banner(World world) {
    return RangeBoxScreen.banner(RangeBoxScreen.Group.ALTIMETERS);
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Name"),
        ListPane.Heading.ofNumbers("Flown"),
        ListPane.Heading.of("Last").spare(),
        ListPane.Heading.of("Note"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    return world.log().altimeters().stream().map(each -> item(each, world)).toList();
  }

  private static ListPane.Item item(Altimeter altimeter, World world) {
    Logbook.Used used = world.log().used(altimeter.id());
    return new ListPane.Item(
        altimeter.id(),
        List.of(
            altimeter.name(),
            StockWords.times(used),
            StockWords.last(used),
            altimeter.facts().get(Altimeter.NOTE).orElse("")));
  }

  @Override
  public String purpose() {
    return "The altimeters that go along, with when each flew last.";
  }

  @Override
  public String empty() {
    return "No altimeters yet. n adds one.";
  }

  @Override
  public Screen open(RecordId id, World world) {
    Facts facts = world.log().altimeter(id).map(Altimeter::facts).orElse(Facts.none());
    return RecordForm.of(RangeBoxFields.altimeter(), id, facts, world);
  }

  @Override
  public Optional<Screen> create(World world) {
    return Optional.of(RecordForm.ofNew(RangeBoxFields.altimeter(), Facts.none(), world));
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return world
        .log()
        .altimeter(id)
        .map(
            altimeter ->
                new Removal(
                    "Remove " + altimeter.name() + "? Its flights stay in the log.",
                    Action.remove("remove altimeter", Kind.ALTIMETER, id)));
  }

  @Override
  public List<Binding> ownBindings() {
    List<Binding> table = new ArrayList<>();
    table.add(RecordList.toAdd("an altimeter"));
    table.addAll(RangeBoxScreen.BINDINGS);
    table.add(RecordList.toRemove("the altimeter"));
    return List.copyOf(table);
  }

  @Override
  public Optional<Step> press(Key key, RecordList list, World world) {
    return RangeBoxScreen.press(key, RangeBoxScreen.Group.ALTIMETERS, list, world);
  }
}
