package padside.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Lot;

/**
 * The motors in the range box by lot, with what is left of each.
 *
 * @param corrections as sent to be kept, while the log may not have them yet: the next key counts
 *     on from them
 */
record LotShelf(Map<RecordId, Integer> corrections) implements Shelf {
  private static final Binding MORE =
      Binding.of("+=", "-  count", "one more, or with - one less, than the count says");
  private static final Binding LESS = Binding.of("-", "", "one less than the count says");

  LotShelf {
    corrections = Map.copyOf(corrections);
  }

  static LotShelf counted() {
    return new LotShelf(Map.of());
  }

  @Override
  public Kind kind() {
    return Kind.LOT;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.MOTORS);
  }

  @Override
  public String title(World world) {
    return RangeBoxScreen.title();
  }

  @Override
  public String banner(World world) {
    return RangeBoxScreen.banner(RangeBoxScreen.Group.MOTORS);
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Motor").whole(),
        ListPane.Heading.of("Lot"),
        ListPane.Heading.ofNumbers("Left"),
        ListPane.Heading.of("of").whole(),
        ListPane.Heading.ofNumbers("Failed"),
        ListPane.Heading.of("Bought on").spare(),
        ListPane.Heading.of("Place"),
        ListPane.Heading.of("Note"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    StockWords words = StockWords.of(world);
    return world.log().lots().stream().map(lot -> item(lot, words, world)).toList();
  }

  private ListPane.Item item(Lot lot, StockWords words, World world) {
    Facts facts = lot.facts();
    return new ListPane.Item(
        lot.id(),
        List.of(
            facts.get(Lot.MOTOR).or(() -> facts.typed(Lot.MOTOR)).orElse("?"),
            lot.code(),
            StockWords.count(left(lot, world)),
            facts.get(Lot.BOUGHT).map(bought -> "" + bought).orElse("not counted"),
            words.failed(lot),
            facts.get(Lot.BOUGHT_ON).or(() -> facts.typed(Lot.BOUGHT_ON)).orElse(""),
            facts.get(Lot.PLACE).orElse(""),
            noted(words.record(lot), facts.get(Lot.NOTE).orElse(""))));
  }

  private static String noted(String record, String note) {
    return record.isEmpty() || note.isEmpty() ? record + note : record + "; " + note;
  }

  /** With the corrections on their way. */
  private Optional<Integer> left(Lot lot, World world) {
    int known = lot.facts().get(Lot.CORRECTION).orElse(0);
    return world.log().left(lot).map(left -> left - known + correction(lot));
  }

  private int correction(Lot lot) {
    return corrections.getOrDefault(lot.id(), lot.facts().get(Lot.CORRECTION).orElse(0));
  }

  @Override
  public String name(ListPane.Item item) {
    return item.cells().get(0) + " · " + item.cells().get(1);
  }

  @Override
  public String purpose() {
    return "The motors in the range box by lot: what is left counts down as cards are flown.";
  }

  @Override
  public String empty() {
    return "No motors yet. n adds a lot: the motors of one designation bought together.";
  }

  @Override
  public Screen open(RecordId id, World world) {
    Facts facts = world.log().lot(id).map(Lot::facts).orElse(Facts.none());
    return RecordForm.of(RangeBoxFields.lot(world), id, facts, world);
  }

  @Override
  public Optional<Screen> create(World world) {
    return Optional.of(RecordForm.ofNew(RangeBoxFields.lot(world), Facts.none(), world));
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return world
        .log()
        .lot(id)
        .map(
            lot ->
                new Removal(
                    "Remove " + lot.motor() + " lot " + lot.code() + "? Its flights stay.",
                    Action.remove("remove lot", Kind.LOT, id)));
  }

  @Override
  public List<Binding> ownBindings() {
    List<Binding> table = new ArrayList<>();
    table.add(RecordList.toAdd("a lot"));
    table.addAll(List.of(MORE, LESS));
    table.addAll(RangeBoxScreen.BINDINGS);
    table.add(RecordList.toRemove("the lot"));
    return List.copyOf(table);
  }

  @Override
  public Optional<Step> press(Key key, RecordList list, World world) {
    int change = MORE.has(key) ? 1 : LESS.has(key) ? -1 : 0;
    if (change == 0) {
      return RangeBoxScreen.press(key, RangeBoxScreen.Group.MOTORS, list, world);
    }
    return list.current(world)
        .flatMap(world.log()::lot)
        .filter(lot -> world.log().left(lot).isPresent())
        .map(lot -> corrected(lot, correction(lot) + change, list));
  }

  private Step corrected(Lot lot, int correction, RecordList list) {
    Map<RecordId, Integer> more = new LinkedHashMap<>(corrections);
    more.put(lot.id(), correction);
    return list.with(new LotShelf(more))
        .saving(
            Action.change(
                "correct count",
                Kind.LOT,
                lot.id(),
                Facts.none().with(Lot.CORRECTION, correction)));
  }

  @Override
  public Shelf settled() {
    return counted();
  }
}
