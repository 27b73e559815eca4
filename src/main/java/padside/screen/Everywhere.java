package padside.screen;

import java.util.List;
import java.util.Optional;

/** The keys that mean the same on every screen, typing or not. */
final class Everywhere {
  static final Binding HELP =
      Binding.of(
          "<f1>?", "", "what this screen is for and what its keys do; ? where nothing is typed");
  static final Binding QUIT =
      Binding.of("<c-c><f10>", "", "leave Padside, from anywhere; all that was typed is kept");
  static final Binding PUT_ASIDE =
      Binding.of("<c-z>", "", "to the shell for a while; its fg brings Padside back");
  static final Binding REPAINT = Binding.of("<c-l>", "", "paint the whole screen anew");
  static final Binding LOOKS =
      Binding.of("<f8>", "", "other looks: for the sun, for dusk, without colours");
  static final Binding HANDS =
      Binding.of("<f12>", "", "cold hands: lines apart, no key counts twice at once; again, warm");

  /** For help, in this order, below the screen's own. */
  static final List<Binding> TABLE = List.of(HELP, LOOKS, HANDS, QUIT, PUT_ASIDE, REPAINT);

  private Everywhere() {}

  /** The ease a key changes to. */
  static Optional<Ease> eased(Key key, Ease now) {
    if (LOOKS.has(key)) {
      return Optional.of(now.nextLooks());
    }
    return HANDS.has(key) ? Optional.of(now.otherHands()) : Optional.empty();
  }

  /** The ease asked for last. */
  static Optional<Ease> used(List<Effect> effects) {
    return effects.stream()
        .filter(Effect.Use.class::isInstance)
        .map(effect -> ((Effect.Use) effect).ease())
        .reduce((earlier, later) -> later);
  }
}
