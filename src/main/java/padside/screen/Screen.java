package padside.screen;

import java.util.List;

/** One screen: a record that holds all it shows and what has been typed into it. */
interface Screen {
  /** What the screen becomes and wants done. */
  Step on(Event event, World world);

  /** Draws the inside; title bar and footer are drawn around it. */
  void draw(Canvas canvas, World world);

  /** The title bar's text. */
  String title(World world);

  /** What its keys do. */
  List<Binding> bindings();

  /** True while printable keys are typed into a field, so that they can't mean anything else. */
  default boolean takesText() {
    return false;
  }

  /**
   * True once the flier has left it while its last save is still on the way: it is neither shown
   * nor given keys, and comes back should the save fail.
   */
  default boolean leaving() {
    return false;
  }
}
