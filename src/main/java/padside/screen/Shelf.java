package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;

/** What a {@link RecordList} lists and what its keys do. */
interface Shelf {
  /** What kind of record a line stands for. */
  Kind kind();

  /** What is to be opened to see it again. */
  Bookmark bookmark();

  /** The title bar's text. */
  String title(World world);

  /** What the list is for, in one or two sentences. */
  String purpose();

  /** One line above the headings, such as the groups of the range box. */
  default String banner(World world) {
    return "";
  }

  /** What all lines come to, below them; sentences. */
  default List<String> told(World world) {
    return List.of();
  }

  List<ListPane.Heading> headings(World world);

  List<ListPane.Item> items(World world);

  /** What the record of a line is called where it stands alone. */
  default String name(ListPane.Item item) {
    return item.cells().get(0);
  }

  /** What the line is told that begins to take words. */
  default Binding find() {
    return ListCursor.FIND;
  }

  /** What may be typed to find lines, shown until something is. */
  default String findable() {
    return "";
  }

  /** How many lines there are, where that is not to be counted from those there are. */
  default Optional<String> count(World world) {
    return Optional.empty();
  }

  /**
   * The shelf that asks the log for what is typed now and again; absent where only lines listed are
   * found.
   *
   * @param screen the list's number
   */
  default Optional<Asking> asking(String typed, long screen) {
    return Optional.empty();
  }

  /**
   * A shelf that has asked.
   *
   * @param question nothing where what is typed cannot be asked or asks for everything
   */
  record Asking(Shelf shelf, Optional<Effect> question) {}

  /** The shelf with an answer to what it asked. */
  default Shelf told(Event.FlightsFound found) {
    return this;
  }

  /** Where no line is found: what was looked for, and what to do. */
  default String nothingFound(String typed) {
    return "No line holds \"" + typed + "\". Esc shows all.";
  }

  /** What to do when there is nothing yet. */
  String empty();

  /** The screen a line opens into. */
  Screen open(RecordId id, World world);

  /** The screen a new record is made in. */
  default Optional<Screen> create(World world) {
    return Optional.empty();
  }

  /** The act that takes a line away; absent where nothing is to be removed. */
  default Optional<Removal> removal(RecordId id, World world) {
    return Optional.empty();
  }

  /**
   * A removal and the question before it.
   *
   * @param question what will be gone and what stays, ended by a question mark or full stop
   */
  record Removal(String question, Action action) {}

  /** Keys of its own, behind those of every list. */
  default List<Binding> ownBindings() {
    return List.of();
  }

  /** Whether and what becomes of the list by one of its own keys. */
  default Optional<Step> press(Key key, RecordList list, World world) {
    return Optional.empty();
  }

  /**
   * The shelf once everything sent to be kept is kept or has failed: the log is the truth again.
   */
  default Shelf settled() {
    return this;
  }
}
