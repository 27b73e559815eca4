package padside.screen;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Fix;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.form.Choices;
import padside.form.Dates;
import padside.form.FormField;
import padside.form.Texts;

/** What is to be mended on one rocket, and below it what has been. */
record FixShelf(RecordId rocket) implements Shelf {
  private static final Binding DONE =
      Binding.of("d", "mended", "mark as mended and note what was done; again takes it back");

  static RecordList of(RecordId rocket, World world) {
    return RecordList.of(new FixShelf(rocket), world);
  }

  /** How much a fix matters, for forms. */
  static Choices<Fix.Severity> severities() {
    return new Choices<>(
        "severity",
        List.of(
            new Choices.Option<>(
                Fix.Severity.LOOK_AT, Fix.Severity.LOOK_AT.words(), "before the next flight"),
            new Choices.Option<>(
                Fix.Severity.GROUNDS_IT,
                Fix.Severity.GROUNDS_IT.words(),
                "no flight until it is mended")));
  }

  static RecordForm.Sheet sheet() {
    return new RecordForm.Sheet(
        Kind.FIX,
        "fix",
        List.of(
            FormField.of(Fix.TEXT, "To mend", new Texts("reglue fin 2"), "What is to be done."),
            FormField.choice(
                Fix.SEVERITY,
                "Severity",
                severities(),
                "look at before the next flight, or grounds it until mended."),
            FormField.of(
                Fix.DONE_ON,
                "Mended on",
                new Dates(),
                "The day of the mark, or another: 2026-05-02."),
            FormField.of(
                Fix.DONE_NOTE,
                "What was done",
                new Texts(""),
                "Told once it is mended; d in the list marks it.")));
  }

  @Override
  public Kind kind() {
    return Kind.FIX;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.FIXES, rocket);
  }

  @Override
  public String title(World world) {
    return "Fixes: " + name(world);
  }

  private String name(World world) {
    return world.log().rocket(rocket).map(Rocket::name).orElse("a removed rocket");
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("State"),
        ListPane.Heading.of("To mend"),
        ListPane.Heading.of("What was done"));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    return world.log().fixes().stream()
        .filter(fix -> fix.rocket().equals(Optional.of(rocket)))
        .sorted(Comparator.comparing(fix -> !fix.open()))
        .map(
            fix ->
                new ListPane.Item(
                    fix.id(),
                    List.of(state(fix), fix.text(), fix.facts().get(Fix.DONE_NOTE).orElse(""))))
        .toList();
  }

  /** How much it matters, or that and when it was mended. */
  static String state(Fix fix) {
    String date = fix.facts().get(Fix.DONE_ON).map(on -> " " + on).orElse("");
    return fix.open() ? fix.severity().words() : "mended" + date;
  }

  @Override
  public String name(ListPane.Item item) {
    return item.cells().get(1);
  }

  @Override
  public String purpose() {
    return "What is to be mended on this rocket before it flies; an open fix is a line of "
        + "its checklist.";
  }

  @Override
  public String empty() {
    return "Nothing to mend. n notes something.";
  }

  @Override
  public Screen open(RecordId id, World world) {
    return form(id, world);
  }

  private static RecordForm form(RecordId id, World world) {
    Facts facts = fix(id, world).map(Fix::facts).orElse(Facts.none());
    return RecordForm.of(sheet(), id, facts, world);
  }

  private static Optional<Fix> fix(RecordId id, World world) {
    return world.log().fixes().stream().filter(fix -> fix.id().equals(id)).findFirst();
  }

  @Override
  public Optional<Screen> create(World world) {
    Facts given = Facts.none().with(Fix.ROCKET, rocket).with(Fix.SEVERITY, Fix.Severity.LOOK_AT);
    return Optional.of(RecordForm.ofNew(sheet(), given, world));
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return fix(id, world)
        .map(
            fix ->
                new Removal(
                    "Remove \"" + fix.text() + "\"? If it is mended, d says so and keeps it.",
                    Action.remove("remove fix", Kind.FIX, id)));
  }

  @Override
  public List<Binding> ownBindings() {
    return List.of(RecordList.toAdd("something to mend"), DONE, RecordList.toRemove("the fix"));
  }

  @Override
  public Optional<Step> press(Key key, RecordList list, World world) {
    return list.current(world)
        .filter(id -> DONE.has(key))
        .flatMap(id -> fix(id, world))
        .map(fix -> fix.open() ? mended(fix, list, world) : list.saving(reopened(fix)));
  }

  private static Step mended(Fix fix, RecordList list, World world) {
    Facts done = Facts.none().with(Fix.DONE, true).with(Fix.DONE_ON, DayScreen.today(world));
    Step saved = list.saving(Action.change("mark as mended", Kind.FIX, fix.id(), done));
    RecordForm form = RecordForm.of(sheet(), fix.id(), fix.facts().with(done), world);
    return saved.open(form.at(Fix.DONE_NOTE.name()));
  }

  private static Action reopened(Fix fix) {
    return Action.change(
        "mark as not mended",
        Kind.FIX,
        fix.id(),
        Facts.none().with(Fix.DONE, false).with(Fix.DONE_ON.name(), Facts.Cell.emptied()));
  }
}
