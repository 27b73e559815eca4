package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.units.TimeSpan;

/** One screen: a record that holds all it shows and what has been typed into it. */
interface Screen {
  /** What the screen becomes and wants done. */
  Step on(Event event, World world);

  /** Draws the inside; title bar and footer are drawn around it. */
  void draw(Canvas canvas, World world);

  /** The title bar's text. */
  String title(World world);

  /** How long what it shows stays true of the clock; absent where a minute does not matter. */
  default Optional<TimeSpan> untilTick(World world) {
    return Optional.empty();
  }

  /** What it is for, in one or two sentences, for the help page. */
  String purpose();

  /** The signs it shows that do not speak for themselves. */
  default List<Mark> marks() {
    return List.of();
  }

  /** What its keys do. */
  List<Binding> bindings();

  /** True while printable keys are typed into a field, so that they can't mean anything else. */
  default boolean takesText() {
    return false;
  }

  /** True while a question stands that the key that put it would answer. */
  default boolean questions() {
    return false;
  }

  /** What is to be opened to be here again; absent where the screen below will do. */
  default Optional<Bookmark> bookmark() {
    return Optional.empty();
  }

  /** This screen, opened by that bookmark, with the cursor where it was. */
  default Screen at(Bookmark mark) {
    return this;
  }

  /** This screen while another of that number stands over it. */
  default Screen covered(long screen) {
    return this;
  }

  /**
   * True once the flier has left it while its last save is still on the way: it is neither shown
   * nor given keys, and comes back should the save fail.
   */
  default boolean leaving() {
    return false;
  }
}
