package padside.screen;

import java.util.Optional;

/** What goes on by itself when the program is opened again. */
final class PadReturn {
  private PadReturn() {}

  /** The clock of a flight in the air, else the wait after a misfire. */
  static Optional<Screen> screen(World world) {
    return MarkScreen.inTheAir(world)
        .<Screen>map(flight -> MarkScreen.of(flight.id(), world))
        .or(() -> MisfireWait.longest(world).map(wait -> MisfireScreen.of(wait.attempt(), world)));
  }
}
