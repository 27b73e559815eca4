package padside.screen;

import java.util.List;
import java.util.Map;
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

  static final Binding GUIDE =
      Binding.of("<c-g>", "", "the guide through a card, step by step: on, or off for good");

  /** For help, in this order, below the screen's own. */
  static final List<Binding> TABLE = List.of(HELP, GUIDE, LOOKS, HANDS, QUIT, PUT_ASIDE, REPAINT);

  private Everywhere() {}

  /** Turns the guide on or off; off is kept, so that nobody is led at the next start. */
  static List<Effect> led(World world) {
    Guide guide = world.ease().guide().turned(world);
    Effect use = new Effect.Use(world.ease().with(guide));
    if (guide.wanted()) {
      return List.of(use);
    }
    Map<String, String> off = Map.of(Setting.GUIDE.name(), Setting.word(Setting.Led.OFF));
    return List.of(use, new Effect.KeepSettings(new Ticket(world.turn(), 0), off));
  }

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
