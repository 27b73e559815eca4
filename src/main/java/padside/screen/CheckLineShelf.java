package padside.screen;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.CheckLine;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.form.Choices;
import padside.form.FormField;
import padside.form.Texts;

/**
 * The lines of the checklist: those that come with the program, as the flier has changed them, and
 * the flier's own.
 *
 * @param rocket the rocket a new line is for unless told otherwise
 */
record CheckLineShelf(Optional<RecordId> rocket) implements Shelf {
  private static final Binding PUT_BACK =
      Binding.of("u", "put back", "a line that comes with the program is as it came");

  static RecordList of(Optional<RecordId> rocket, World world) {
    return RecordList.of(new CheckLineShelf(rocket), world);
  }

  @Override
  public Kind kind() {
    return Kind.CHECKLINE;
  }

  @Override
  public Bookmark bookmark() {
    return Bookmark.of(Bookmarks.CHECKLIST).about(rocket);
  }

  @Override
  public String title(World world) {
    return "Checklist";
  }

  @Override
  public List<ListPane.Heading> headings(World world) {
    return List.of(
        ListPane.Heading.of("Part"),
        ListPane.Heading.of("Line"),
        ListPane.Heading.of("For"),
        ListPane.Heading.of(""));
  }

  @Override
  public List<ListPane.Item> items(World world) {
    return lines(world)
        .sorted(Comparator.comparing(CheckLine::part))
        .map(
            line ->
                new ListPane.Item(
                    line.id(),
                    List.of(
                        line.part().words(), line.text(), who(line, world), state(line, world))))
        .toList();
  }

  private static Stream<CheckLine> lines(World world) {
    return world.checklist().with(world.log().checkLines()).lines().stream();
  }

  private static Optional<CheckLine> line(RecordId id, World world) {
    return lines(world).filter(line -> line.id().equals(id)).findFirst();
  }

  private static String who(CheckLine line, World world) {
    return line.rocket()
        .map(id -> world.log().rocket(id).map(Rocket::name).orElse("a removed rocket"))
        .orElse("every flight");
  }

  private static String state(CheckLine line, World world) {
    if (line.dropped()) {
      return "dropped";
    }
    return isShipped(line) ? (isOwnRecord(line, world) ? "changed" : "") : "own";
  }

  private static boolean isShipped(CheckLine line) {
    return line.facts().get(CheckLine.CODE).isPresent();
  }

  private static boolean isOwnRecord(CheckLine line, World world) {
    return world.log().checkLines().stream().anyMatch(own -> own.id().equals(line.id()));
  }

  @Override
  public String purpose() {
    return "The lines read at the pad: those that come with the program and your own. One "
        + "may belong to a single rocket.";
  }

  @Override
  public String empty() {
    return "No line yet. n adds one.";
  }

  @Override
  public Screen open(RecordId id, World world) {
    CheckLine line = line(id, world).orElseThrow();
    RecordForm.Sheet sheet = sheet(isShipped(line), world);
    return isOwnRecord(line, world)
        ? RecordForm.of(sheet, id, line.facts(), world)
        : RecordForm.ofNew(sheet, line.facts(), world);
  }

  @Override
  public Optional<Screen> create(World world) {
    Facts given =
        Facts.none().with(CheckLine.PART, CheckLine.Part.ROCKET).with(CheckLine.ROCKET, rocket);
    return Optional.of(RecordForm.ofNew(sheet(false, world), given, world));
  }

  /** A line that comes with the program is for every flight. */
  private static RecordForm.Sheet sheet(boolean shipped, World world) {
    FormField<String> text =
        FormField.of(CheckLine.TEXT, "Line", new Texts(""), "What is made sure of.");
    FormField<CheckLine.Part> part =
        FormField.choice(CheckLine.PART, "Part", parts(), "When it is read.");
    FormField<RecordId> rocket =
        FormField.choice(
            CheckLine.ROCKET,
            "Rocket",
            new CardChoices(world).rockets(),
            "Blank when it is read before every flight.");
    return new RecordForm.Sheet(
        Kind.CHECKLINE,
        "checklist line",
        shipped ? List.of(text, part) : List.of(text, part, rocket));
  }

  private static Choices<CheckLine.Part> parts() {
    return new Choices<>(
        "part",
        Stream.of(CheckLine.Part.values())
            .map(part -> new Choices.Option<>(part, part.words(), ""))
            .toList());
  }

  @Override
  public Optional<Removal> removal(RecordId id, World world) {
    return line(id, world).filter(line -> !line.dropped()).map(line -> removal(line, world));
  }

  private static Removal removal(CheckLine line, World world) {
    if (!isShipped(line)) {
      return new Removal(
          "Remove \"" + line.text() + "\"?",
          Action.remove("remove checklist line", Kind.CHECKLINE, line.id()));
    }
    String label = "drop checklist line";
    Facts dropped = Facts.none().with(CheckLine.DROPPED, true);
    return new Removal(
        "Drop \"" + line.text() + "\" from every flight's checklist? u puts it back.",
        isOwnRecord(line, world)
            ? Action.change(label, Kind.CHECKLINE, line.id(), dropped)
            : Action.create(label, Kind.CHECKLINE, line.facts().with(dropped)));
  }

  @Override
  public List<Binding> ownBindings() {
    return List.of(RecordList.toAdd("a line"), RecordList.toRemove("the line"), PUT_BACK);
  }

  @Override
  public Optional<Step> press(Key key, RecordList list, World world) {
    return list.current(world)
        .filter(id -> PUT_BACK.has(key))
        .flatMap(id -> line(id, world))
        .filter(line -> isShipped(line) && isOwnRecord(line, world))
        .map(
            line ->
                list.saving(Action.remove("put back checklist line", Kind.CHECKLINE, line.id())));
  }
}
