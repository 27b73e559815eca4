package padside.screen;

import java.util.List;

/** A screen that only waits for an answer, over the one that is seen meanwhile. */
interface Unseen extends Screen {
  @Override
  default void draw(Canvas canvas, World world) {}

  @Override
  default String purpose() {
    return "";
  }

  @Override
  default List<Binding> bindings() {
    return List.of();
  }

  @Override
  default boolean leaving() {
    return true;
  }
}
